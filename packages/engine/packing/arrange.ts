import { bedShapes, chamberVolume, depthsOfVolumes } from '../families/bedShape.ts';
import type { Chamber } from '../families/layout.ts';
import { inWaterOrder } from '../families/waterOrder.ts';
import type { Medium } from '../model/medium.ts';
import type { Laying, Packing } from '../model/model.ts';
import { exchangeGroups, isMadeFor } from './holding.ts';

/** An amount of one medium on its way into a filter. */
export interface Portion {
  readonly id: string;
  readonly medium: string;
  readonly volumeM3: number;
  /** How it lies, and will lie again elsewhere. */
  readonly laying?: Laying;
}

/** A rest of a bed thinner than this is not worth a layer of its own, m. */
const THINNEST_LAYER_M = 0.01;
const ROUNDING = 1e-9;

/** Beds of a packing in the order in which the water meets them, as portions. */
export const portionsInWaterOrder = (chambers: readonly Chamber[], packing: Packing): Portion[] =>
  chambers.flatMap((chamber) => {
    const beds = inWaterOrder(chamber, packing[chamber.id] ?? []);
    const shapes = bedShapes(chamber, beds);
    return beds.map(({ depthM: _, ...bed }, place) => ({ ...bed, volumeM3: shapes[place]!.volumeM3 }));
  });

/** The same by the chambers between which they can change places. */
export const exchangeablePortions = (chambers: readonly Chamber[], packing: Packing): readonly Portion[][] =>
  exchangeGroups(chambers).map((group) => portionsInWaterOrder(group, packing));

interface Filling {
  /** What each chamber holds, in water order. */
  readonly held: Map<string, Portion[]>;
  readonly roomM3: number[];
}

const place = (filling: Filling, chamber: Chamber, portion: Portion): void => {
  const held = filling.held.get(chamber.id) ?? [];
  const last = held.at(-1);
  if (last && last.medium === portion.medium && !last.laying && !portion.laying)
    held[held.length - 1] = { ...last, volumeM3: last.volumeM3 + portion.volumeM3 };
  else held.push(portion);
  filling.held.set(chamber.id, held);
};

const bedsOf = (chamber: Chamber, held: readonly Portion[]) => {
  const depths = depthsOfVolumes(
    chamber,
    held.map(({ volumeM3 }) => volumeM3),
  );
  return held.map(({ volumeM3: _, ...portion }, bed) => ({ ...portion, depthM: depths[bed]! }));
};

/** An amount of media, and which chambers it may lie in. */
interface Placed {
  readonly portion: Portion;
  may(chamber: Chamber): boolean;
}

/** Fills chambers in water order; `splitting` lets a bed run over into the next chamber. */
const fill = (
  chambers: readonly Chamber[],
  placed: readonly Placed[],
  splitting: boolean,
): Packing | undefined => {
  const filling: Filling = { held: new Map(), roomM3: chambers.map(chamberVolume) };
  let at = 0;
  for (const { portion, may } of placed) {
    let leftM3 = portion.volumeM3;
    for (let part = 1; leftM3 > ROUNDING * portion.volumeM3; ) {
      const chamber = chambers[at];
      if (!chamber) return undefined;
      const room = filling.roomM3[at]!;
      const fits = leftM3 <= room * (1 + ROUNDING);
      const isTooLittle = !fits && (!splitting || room < THINNEST_LAYER_M * chamber.areaM2);
      if (isTooLittle || !may(chamber)) {
        at += 1;
        continue;
      }
      const volumeM3 = fits ? leftM3 : room;
      const id = part === 1 ? portion.id : `${portion.id}-part-${part}`;
      place(filling, chamber, { ...portion, id, volumeM3 });
      filling.roomM3[at] = room - volumeM3;
      leftM3 = fits ? 0 : leftM3 - volumeM3;
      part += 1;
    }
  }
  const listed = chambers.map((chamber) => {
    const beds = bedsOf(chamber, filling.held.get(chamber.id) ?? []);
    return [chamber.id, inWaterOrder(chamber, beds)] as const;
  });
  return Object.fromEntries(listed);
};

/**
 * Puts portions into chambers in water order: each whole in one chamber where that fits, else cut where a
 * chamber ends. Where a sock or a pad hangs apart from the other chambers, each part is filled with what it is made
 * for, in the order of its own portions; what no chamber is made for goes to the last part.
 * @param chambers in water order
 * @returns the packing, or undefined where the portions need more room than there is
 */
export const arrange = (
  chambers: readonly Chamber[],
  portions: readonly Portion[],
  media: Readonly<Record<string, Medium>>,
): Packing | undefined => {
  const groups = exchangeGroups(chambers);
  const isMade = (portion: Portion) => (chamber: Chamber) => isMadeFor(chamber, portion, media);
  const groupOf = (portion: Portion): number => {
    const found = groups.findIndex((group) => group.some(isMade(portion)));
    return found < 0 ? groups.length - 1 : found;
  };
  const placed = portions.map((portion) => ({
    portion,
    group: groupOf(portion),
    may: chambers.some(isMade(portion)) ? isMade(portion) : () => true,
  }));
  if (placed.length > 0 && groups.length === 0) return undefined;
  const packings = groups.map((group, at) => {
    const own = placed.filter((one) => one.group === at);
    return fill(group, own, false) ?? fill(group, own, true);
  });
  return packings.every((packing) => packing !== undefined) ? Object.assign({}, ...packings) : undefined;
};
