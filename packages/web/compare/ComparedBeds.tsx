import { printLength } from '@fettle/drawing/lengths.ts';
import { placedBeds } from '@fettle/drawing/placedBeds.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { ComparedFigures } from '../computing/assessed.ts';

interface Two {
  readonly names: readonly [string, string];
  readonly figures: readonly [ComparedFigures, ComparedFigures];
  readonly system: System;
}

/** The beds of a chamber in the order in which the water meets them. */
const bedsOf = ({ model, assessment }: ComparedFigures, chamber: string, units: System): string =>
  placedBeds({ layout: assessment.layout, packing: model.packing, media: model.media })
    .filter((placed) => placed.chamber.id === chamber)
    .map(({ name, bed }) => `${name} ${printLength({ lengthM: bed.depthM, units })}`)
    .join(', then ') || 'empty';

/** What lies in each chamber, side by side: where both are the same, it is said once. */
export function ComparedBeds({ names, figures, system }: Two) {
  const [first, second] = figures;
  const chambers = new Map(
    [second, first]
      .flatMap(({ assessment }) => assessment.layout.chambers)
      .map(({ id, label }) => [id, label]),
  );
  return (
    <table className="figures packings">
      <caption>What the water meets in each chamber, in its order.</caption>
      <thead>
        <tr>
          <td />
          <th scope="col">{names[0]}</th>
          <th scope="col">{names[1]}</th>
        </tr>
      </thead>
      <tbody>
        {[...chambers].map(([id, label]) => {
          const [one, other] = [bedsOf(first, id, system), bedsOf(second, id, system)];
          return (
            <tr key={id} className={one === other ? '' : 'differs'}>
              <th scope="row">{label}</th>
              <td>{one}</td>
              <td>{one === other ? 'the same' : other}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
