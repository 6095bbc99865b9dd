import type { Chamber } from '../families/layout.ts';
import { inWaterOrder } from '../families/waterOrder.ts';
import type { Bed, Packing } from '../model/model.ts';

/** An amount of one medium on its way into a filter. */
export interface Portion {
  readonly id: string;
  readonly medium: string;
  readonly volumeM3: number;
}

/** A rest of a bed thinner than this is not worth a layer of its own, m. */
const THINNEST_LAYER_M = 0.01;
const ROUNDING = 1e-9;

/** Beds of a packing in the order in which the water meets them, as portions. */
export const portionsInWaterOrder = (chambers: readonly Chamber[], packing: Packing): Portion[] =>
  chambers.flatMap((chamber) => {
    const beds = inWaterOrder(chamber, packing[chamber.id] ?? []);
    return beds.map((bed) => ({ id: bed.id, medium: bed.medium, volumeM3: bed.depthM * chamber.areaM2 }));
  });

interface Filling {
  readonly beds: Map<string, Bed[]>;
  readonly roomM: number[];
}

const place = (filling: Filling, chamber: Chamber, bed: Bed): void => {
  const beds = filling.beds.get(chamber.id) ?? [];
  const last = beds.at(-1);
  if (last && last.medium === bed.medium)
    beds[beds.length - 1] = { ...last, depthM: last.depthM + bed.depthM };
  else beds.push(bed);
  filling.beds.set(chamber.id, beds);
};

/** Fills chambers in water order; `splitting` lets a bed run over into the next chamber. */
const fill = (
  chambers: readonly Chamber[],
  portions: readonly Portion[],
  splitting: boolean,
): Packing | undefined => {
  const filling: Filling = { beds: new Map(), roomM: chambers.map((chamber) => chamber.depthM) };
  let at = 0;
  for (const portion of portions) {
    let leftM3 = portion.volumeM3;
    for (let part = 1; leftM3 > ROUNDING * portion.volumeM3; ) {
      const chamber = chambers[at];
      if (!chamber) return undefined;
      const room = filling.roomM[at]!;
      const wanted = leftM3 / chamber.areaM2;
      const fits = wanted <= room * (1 + ROUNDING);
      if (!fits && (!splitting || room < THINNEST_LAYER_M)) {
        at += 1;
        continue;
      }
      const depthM = fits ? wanted : room;
      const id = part === 1 ? portion.id : `${portion.id}-part-${part}`;
      place(filling, chamber, { id, medium: portion.medium, depthM });
      filling.roomM[at] = room - depthM;
      leftM3 = fits ? 0 : leftM3 - depthM * chamber.areaM2;
      part += 1;
    }
  }
  const listed = chambers.map((chamber) => {
    const beds = filling.beds.get(chamber.id) ?? [];
    return [chamber.id, inWaterOrder(chamber, beds)] as const;
  });
  return Object.fromEntries(listed);
};

/**
 * Puts portions into chambers in water order: each whole in one chamber where that fits, else cut where a
 * chamber ends.
 * @param chambers in water order
 * @returns the packing, or undefined where the portions need more room than there is
 */
export const arrange = (chambers: readonly Chamber[], portions: readonly Portion[]): Packing | undefined =>
  fill(chambers, portions, false) ?? fill(chambers, portions, true);
