import { bedShapes } from '@fettle/engine/families/bedShape.ts';
import type { Chamber, Layout } from '@fettle/engine/families/layout.ts';
import { inWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Bed, Packing } from '@fettle/engine/model/model.ts';
import { bedDepths } from '../beds.ts';
import { layingOf } from '../laying.ts';
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
      const { depthM, doubt } = depth;
      setting.taker.note(place, { value: depthM, doubt });
      return { id: `${chamber.id}:${index + 1}`, medium: bed.medium, depthM };
    });
    const laid = bedsLaid(beds, listed, { chamber, media: setting.media });
    return [chamber.id, laid] as const;
  });
  return Object.fromEntries(chambers);
}

/** The beds of a chamber with how each of them lies. */
function bedsLaid(
  beds: readonly Bed[],
  listed: NonNullable<JobDocument['packing']>[string],
  at: { readonly chamber: Chamber; readonly media: Setting['media'] },
): readonly Bed[] {
  const { chamber, media } = at;
  const inOrder = inWaterOrder(chamber, beds);
  const shapes = bedShapes(chamber, inOrder);
  return beds.map((bed, index) => {
    const { depthM } = bed;
    const { volumeM3: roomM3 } = shapes[inOrder.indexOf(bed)]!;
    const laying = layingOf({ bed: listed[index]!, chamber, medium: media[bed.medium]!, depthM, roomM3 });
    return laying === undefined ? bed : { ...bed, laying };
  });
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
