import { type KeyboardEvent, memo } from 'react';
import type { QuickFigures } from '../computing/assessed.ts';
import { viewBoxOf } from '../drawing/viewBox.ts';
import { type AlterationMark, alterationMarks, markMm, reachMm } from './alterationMarks.ts';
import { useAlterations } from './useAlterations.ts';

function Mark({
  mark: { at, letter, says },
  isMade,
  onTurn,
}: {
  readonly mark: AlterationMark;
  readonly isMade: boolean;
  readonly onTurn: () => void;
}) {
  const press = (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    onTurn();
  };
  return (
    // A shape of a drawing can be no button element.
    // biome-ignore lint/a11y/useSemanticElements: see above
    <g
      className="mark"
      role="button"
      tabIndex={0}
      aria-pressed={isMade}
      aria-label={`${letter}: ${says}`}
      transform={`translate(${at.x} ${at.y})`}
      onClick={onTurn}
      onKeyDown={press}
    >
      <title>
        {says}
        {isMade ? ', to be made' : ''}
      </title>
      <circle className="reach" r={reachMm} />
      <circle r={markMm} />
      <text y={1.25}>{letter}</text>
      {isMade ? <path d="M-2 2.4h4" /> : null}
    </g>
  );
}

/** Alterations as marks on the drawing, each where it is made: pressed, it goes with the packing. */
export const AlterationsOverlay = memo(
  ({
    field,
    figures: { drawing, places, assessment },
  }: {
    readonly field: 'planned' | 'asLeft';
    readonly figures: Pick<QuickFigures, 'drawing' | 'places' | 'assessment'>;
  }) => {
    const { ids, isMade, turn } = useAlterations(field);
    const marks = alterationMarks(ids, { places, layout: assessment.layout });
    return (
      // Groups of a drawing can be no fieldset.
      // biome-ignore lint/a11y/useSemanticElements: see above
      <svg
        className="overlay marks noprint"
        viewBox={viewBoxOf(drawing)}
        role="group"
        aria-label="Alterations on the drawing"
      >
        {marks.map((mark) => (
          <Mark
            key={mark.id}
            mark={mark}
            isMade={isMade(mark.id)}
            onTurn={() => turn(mark.id, !isMade(mark.id))}
          />
        ))}
      </svg>
    );
  },
);
