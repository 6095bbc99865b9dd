import type { SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import type { Family } from '@fettle/engine/families/layout.ts';
import { type KeyboardEvent, memo, useId } from 'react';
import type { QuickFigures } from '../computing/assessed.ts';
import { viewBoxOf } from '../drawing/viewBox.ts';
import { goToField } from '../forms/goToField.ts';

const roomMm = 0.8;

const goToMeasurement = (key: string): void => {
  const field = document.querySelector(`[data-path=${CSS.escape(`filter.measurements.${key}`)}]`);
  if (field === null) return;
  goToField(field);
  field.scrollIntoView({ block: 'center' });
};

const onKey =
  (key: string) =>
  (event: KeyboardEvent): void => {
    if (event.key !== 'Enter' && event.key !== ' ') return;
    event.preventDefault();
    goToMeasurement(key);
  };

interface DimensionsProps extends Pick<QuickFigures, 'drawing'>, Pick<SectionPlaces, 'dimensions'> {
  readonly family: Family | undefined;
}

/** The dimensions of the drawing as ways to the fields that they are typed into. */
export const DimensionsOverlay = memo(({ drawing, dimensions, family }: DimensionsProps) => {
  const names = new Map(family?.measurements.map(({ key, label }) => [key, label]));
  const id = useId();
  return (
    // Groups of a drawing can be no fieldset.
    // biome-ignore lint/a11y/useSemanticElements: see above
    <svg
      className="overlay dimensions noprint"
      viewBox={viewBoxOf(drawing)}
      role="group"
      aria-label="Dimensions on the drawing"
    >
      {dimensions.map(({ measurement, box }) => (
        // biome-ignore lint/a11y/useSemanticElements: a shape of a drawing can be no button element
        <rect
          key={measurement}
          x={box.x - roomMm}
          y={box.y - roomMm}
          width={box.width + 2 * roomMm}
          height={box.height + 2 * roomMm}
          role="button"
          tabIndex={0}
          aria-label={`Change the ${names.get(measurement) ?? measurement}`}
          aria-describedby={id}
          onClick={() => goToMeasurement(measurement)}
          onKeyDown={onKey(measurement)}
        />
      ))}
      <desc id={id}>Goes to the field of this measurement.</desc>
    </svg>
  );
});
