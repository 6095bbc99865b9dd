import type { SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import type { Medium, Stage } from '@fettle/engine/model/medium.ts';
import { stages } from '@fettle/engine/model/medium.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { useState } from 'react';
import type { Repacking } from './useRepacking.ts';

interface MediaProps {
  readonly model: Model;
  readonly places: SectionPlaces;
  readonly repacking: Repacking;
}

/** Media that lie in the filter or on the job's shelf, which are at hand, before all others. */
const atHand = ({ packing, shelf }: Model): ReadonlySet<string> =>
  new Set([
    ...Object.values(packing).flatMap((beds) => beds.map(({ medium }) => medium)),
    ...shelf.map(({ medium }) => medium),
  ]);

/** So few media at hand pack no filter: all others are shown with them from the start. */
const FEW = 3;

const price = ({ money }: Model, { id }: Medium): string =>
  `${((money.mediumPricePerM3[id] ?? 0) / 1000).toFixed(2)} ${money.currency}/L`;

interface MediumProps extends Omit<MediaProps, 'places'> {
  readonly medium: Medium;
  /** Whether no chamber is made for it. */
  readonly isOdd: boolean;
  /** Whether it lies neither in the filter nor on the shelf. */
  readonly isElsewhere: boolean;
}

function MediumButton({ medium, model, repacking, isOdd, isElsewhere }: MediumProps) {
  const isInHand = repacking.hand === medium.id;
  return (
    <li>
      <button
        type="button"
        aria-pressed={isInHand}
        onClick={() => repacking.take(isInHand ? undefined : medium.id)}
      >
        <span className="letter" aria-hidden="true">
          {medium.stage.charAt(0).toUpperCase()}
        </span>
        <span>
          {medium.name} <small>{price(model, medium)}</small>
          {isElsewhere ? <small> · not on the shelf</small> : null}
          {isOdd ? <small> · no chamber here is made for it</small> : null}
        </span>
      </button>
    </li>
  );
}

/** The shelf beside the drawing: a medium is taken in hand here, then put into a chamber. */
export function MediaToTake({ model, places, repacking }: MediaProps) {
  const near = atHand(model);
  const shownAll = near.size <= FEW;
  const [chosen, setAll] = useState<boolean>();
  const all = chosen ?? shownAll;
  const shown = Object.values(model.media).filter(({ id }) => all || near.has(id));
  const inHand = repacking.hand === undefined ? undefined : model.media[repacking.hand];
  return (
    <section aria-labelledby="media-to-take" className="media noprint">
      <h3 id="media-to-take">Media</h3>
      <p role="status">
        {inHand === undefined
          ? 'Take a medium in hand, then choose a chamber for it.'
          : `In hand: ${inHand.name}. Choose a chamber, or take it again to put it back.`}
      </p>
      {stages.map((stage: Stage) => {
        const media = shown.filter((medium) => medium.stage === stage);
        return media.length === 0 ? null : (
          <div key={stage}>
            <h4>{stage}</h4>
            <ul>
              {media.map((medium) => (
                <MediumButton
                  key={medium.id}
                  medium={medium}
                  model={model}
                  repacking={repacking}
                  isOdd={places.chambers.every(({ chamber }) => repacking.isOdd(medium.id, chamber))}
                  isElsewhere={!near.has(medium.id)}
                />
              ))}
            </ul>
          </div>
        );
      })}
      <button type="button" className="quiet" aria-expanded={all} onClick={() => setAll(!all)}>
        {all ? 'Only media at hand' : 'All media of the catalogue'}
      </button>
    </section>
  );
}
