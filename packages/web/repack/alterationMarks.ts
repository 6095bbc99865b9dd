import { sizes } from '@fettle/drawing/tokens.ts';
import type { Point } from '@fettle/engine/families/layout.ts';
import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { type DrawnSection, type Spots, spotsOf } from '../findings/spots.ts';

/** A mark on the drawing by which an alteration is switched on and off. */
export interface AlterationMark {
  readonly id: string;
  readonly says: string;
  /** Letter in the mark, which the list beside the drawing has too. */
  readonly letter: string;
  /** Millimetres of the sheet. */
  readonly at: Point;
}

/** Radius of a mark, mm of the sheet. */
export const markMm = 4.2;

/** Radius within which a finger meets a mark: 44 pixels across on a phone, mm of the sheet. */
export const reachMm = 6.2;

/** Where a mark stands that points at something: under the words at a point, or on the right edge of a box. */
const besideOf = ({ points, boxes }: Spots): Point | undefined => {
  const [point] = points;
  if (point !== undefined) return { x: point.x, y: point.y + 2 * markMm };
  const [box] = boxes;
  return box && { x: box.x + box.width, y: box.y + box.height / 2 };
};

const isClear = (at: Point, others: readonly AlterationMark[]): boolean =>
  others.every((other) => Math.hypot(other.at.x - at.x, other.at.y - at.y) >= 2 * reachMm);

/** The nearest place beside or under a point that no other mark has taken, on the sheet. */
const clearOf = (wanted: Point, others: readonly AlterationMark[]): Point => {
  const onSheet = ({ x, y }: Point): Point => ({
    x: Math.min(Math.max(x, reachMm), sizes.sheetWidth - reachMm),
    y: Math.max(y, reachMm),
  });
  const step = 2 * reachMm + 0.1;
  const tries = [0, 1, 2, 3].flatMap((row) =>
    [0, 1, -1, 2, -2].map((column) => onSheet({ x: wanted.x + column * step, y: wanted.y + row * step })),
  );
  return tries.find((at) => isClear(at, others)) ?? onSheet(wanted);
};

/** `A`, `B`, … in the order in which the alterations are listed. */
export const letterOf = (index: number): string => String.fromCharCode('A'.charCodeAt(0) + index);

/**
 * Marks for alterations, each where hands make it; none for what this filter has nothing of, such as slots to cover.
 * @param ids as they are listed beside the drawing
 */
export const alterationMarks = (ids: readonly string[], section: DrawnSection): readonly AlterationMark[] => {
  const marks: AlterationMark[] = [];
  for (const [index, id] of ids.entries()) {
    const kind = alterationKinds[id];
    const spots = kind?.where(section.layout).map((place) => besideOf(spotsOf(section, place))) ?? [];
    const wanted = spots.find((spot) => spot !== undefined);
    if (kind !== undefined && wanted !== undefined)
      marks.push({ id, says: kind.says, letter: letterOf(index), at: clearOf(wanted, marks) });
  }
  return marks;
};
