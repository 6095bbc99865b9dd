import type { Layout } from '@fettle/engine/families/layout.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Bed, Packing } from '@fettle/engine/model/model.ts';
import { bedDepths } from '../beds.ts';
import { type Note, note } from '../notes.ts';
import type { JobDocument } from '../schema/job.ts';
import { byName, type Taker } from './givens.ts';

interface Setting {
  readonly layout: Layout;
  readonly media: Readonly<Record<string, Medium>>;
  readonly taker: Taker;
}

/** The beds of every chamber of the layout, in the layout's order; empty chambers have none. */
export function packingOf(packing: JobDocument['packing'], setting: Setting): Packing {
  const chambers = setting.layout.chambers.map((chamber) => {
    const listed = packing?.[chamber.id] ?? [];
    const depths = bedDepths(
      listed.map((bed) => ({ bed, medium: setting.media[bed.medium] })),
      chamber,
    );
    const beds = listed.map((bed, index): Bed => {
      const depth = depths[index];
      if (depth === undefined) throw new TypeError(`unchecked bed in ${chamber.id}`);
      const place = {
        path: ['packing', chamber.id, index, depth.field],
        modelPath: `packing.${chamber.id}[${index}].depthM`,
        unit: 'm',
      };
      setting.taker.note(place, { value: depth.depthM, doubt: depth.doubt });
      return { id: `${chamber.id}:${index + 1}`, medium: bed.medium, depthM: depth.depthM };
    });
    return [chamber.id, beds] as const;
  });
  return Object.fromEntries(chambers);
}

/** Beds that lie on one of the same medium, which may be meant or may be a slip. */
export function packingNotes(packing: JobDocument['packing']): readonly Note[] {
  return Object.entries(packing ?? {})
    .toSorted(byName)
    .flatMap(([chamber, beds]) =>
      beds.flatMap(({ medium }, index) =>
        beds[index - 1]?.medium === medium
          ? [note('beds-alike', ['packing', chamber, index], { medium })]
          : [],
      ),
    );
}
