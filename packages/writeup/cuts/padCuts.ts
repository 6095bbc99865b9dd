import { type BedShape, bedShapes } from '@fettle/engine/families/bedShape.ts';
import type { Chamber } from '@fettle/engine/families/layout.ts';
import { chambersInWaterOrder, inWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import { isUsedUp, type Medium } from '@fettle/engine/model/medium.ts';
import type { Bed } from '@fettle/engine/model/model.ts';
import { isSewn } from '@fettle/engine/packing/holding.ts';
import { looseDepthM } from '@fettle/engine/packing/pressing.ts';
import type { AssessedState } from '../source.ts';
import type { CutFrom, PadCut } from './cut.ts';

/** Foam is cut this much longer and wider than its chamber, so that it holds itself against the walls, m
 * (3 mm to 5 mm; common practice, no source). */
export const FOAM_OVERSIZE_M = 0.004;

/** Pieces that differ by less than this are the same piece to a knife, m (common practice, no source). */
const ALIKE_M = 0.001;

/**
 * The outline that a chamber gives a piece, m: across it, and the other way. About a tube a piece is a strip, as long as
 * its own middle is round and as wide as the media are long.
 */
export const clearOutline = (
  { flow, areaM2, box }: Chamber,
  ring?: BedShape['ring'],
): { readonly acrossM: number; readonly otherM: number } => {
  if (ring !== undefined)
    return { acrossM: Math.PI * (ring.outerRadiusM + ring.innerRadiusM), otherM: ring.lengthM };
  if (flow === 'up' || flow === 'down') return { acrossM: box.width, otherM: areaM2 / box.width };
  return { acrossM: areaM2 / box.height, otherM: box.height };
};

/** How much longer and wider than its chamber a piece is cut, m: as the job says, else foam by the usual measure. */
const overOf = ({ medium: { form }, bed: { laying } }: Piece): number => {
  if (laying?.cutGapM !== undefined) return -2 * laying.cutGapM;
  if (laying?.cutLargerM !== undefined) return 2 * laying.cutLargerM;
  return form === 'foam' ? FOAM_OVERSIZE_M : 0;
};

/** A piece as it is cut; one for a slot not larger upwards, where it would stand above the outlet. */
const sizeOf = (piece: Piece) => {
  const { chamber, ring } = piece;
  const { acrossM, otherM } = clearOutline(chamber, ring);
  const over = overOf(piece);
  const isSlot = ring === undefined && chamber.flow !== 'up' && chamber.flow !== 'down';
  return {
    acrossM: acrossM + over,
    otherM: otherM + (isSlot ? Math.min(over, 0) : over),
    thicknessM: looseDepthM(chamber, piece.bed),
  };
};

/** A piece that lies in a filter. */
interface Piece {
  readonly chamber: Chamber;
  readonly medium: Medium;
  readonly bed: Bed;
  /** Where it lies about a tube. */
  readonly ring?: BedShape['ring'];
}

/** Foam, pads and floss, as the water meets them; a sock comes sewn. */
const piecesOf = ({ model, assessment }: AssessedState): readonly Piece[] =>
  chambersInWaterOrder(assessment.layout).flatMap((chamber) => {
    const beds = inWaterOrder(chamber, model.packing[chamber.id] ?? []);
    const shapes = bedShapes(chamber, beds);
    return beds.flatMap((bed, at) => {
      const medium = model.media[bed.medium]!;
      const { ring } = shapes[at]!;
      return (medium.form === 'foam' || medium.form === 'fibre') && !isSewn(chamber)
        ? [{ chamber, medium, bed, ...(ring === undefined ? {} : { ring }) }]
        : [];
    });
  });

/** Whether pieces are cut alike; what a job does not say is taken to be cut as usual. */
const alike = (one: Piece, other: Piece): boolean => {
  const [first, second] = [sizeOf(one), sizeOf(other)];
  return (
    one.medium.id === other.medium.id &&
    Math.abs(first.acrossM - second.acrossM) < ALIKE_M &&
    Math.abs(first.otherM - second.otherM) < ALIKE_M &&
    Math.abs(first.thicknessM - second.thicknessM) < ALIKE_M
  );
};

/** Pieces that are in the filter and still good: what is used up is cut anew. */
const goodPieces = (found: AssessedState): readonly Piece[] =>
  piecesOf(found).filter(({ medium }) => !isUsedUp(medium));

/** The pieces of a re-pack that are not in the filter already with that size. */
const newPieces = (found: AssessedState, after: AssessedState): readonly Piece[] => {
  const left = [...goodPieces(found)];
  return piecesOf(after).filter((piece) => {
    const at = left.findIndex((one) => alike(one, piece));
    if (at < 0) return true;
    left.splice(at, 1);
    return false;
  });
};

/** Whether a job says how a piece is cut. */
const isCutAsStated = ({ laying }: Bed): boolean =>
  laying?.cutGapM !== undefined || laying?.cutLargerM !== undefined || laying?.pressedRatio !== undefined;

/** Cuts of one size from one medium are one line of the list. */
const gathered = (cuts: readonly PadCut[]): readonly PadCut[] => {
  const lines: PadCut[] = [];
  for (const cut of cuts) {
    const at = lines.findIndex(
      (one) =>
        one.medium.id === cut.medium.id &&
        Math.abs(one.acrossM - cut.acrossM) < ALIKE_M / 10 &&
        Math.abs(one.otherM - cut.otherM) < ALIKE_M / 10 &&
        Math.abs(one.thicknessM - cut.thicknessM) < ALIKE_M / 10 &&
        Math.abs(one.liesM - cut.liesM) < ALIKE_M / 10,
    );
    const line = lines[at];
    if (line === undefined) lines.push(cut);
    else
      lines[at] = { ...line, count: line.count + cut.count, chambers: [...line.chambers, ...cut.chambers] };
  }
  return lines;
};

/**
 * Pieces of foam, pad and floss that a re-pack needs cut, each with the outline of its chamber and as thick as its
 * bed, or as much larger as it is pressed: without those that lie in the filter already with that size.
 *
 * @param bought media of which some is bought, by id
 */
export const padCuts = (
  found: AssessedState,
  after: AssessedState,
  bought: ReadonlySet<string>,
): readonly PadCut[] => {
  const there = new Set(goodPieces(found).map(({ medium }) => medium.id));
  const fromOf = (medium: string): CutFrom =>
    bought.has(medium) ? (there.has(medium) ? 'both' : 'bought') : 'there';
  return gathered(
    newPieces(found, after).map((piece) => ({
      kind: 'pad',
      medium: piece.medium,
      ...sizeOf(piece),
      chamber: clearOutline(piece.chamber, piece.ring),
      liesM: piece.bed.depthM,
      asStated: isCutAsStated(piece.bed),
      from: fromOf(piece.medium.id),
      count: 1,
      chambers: [piece.chamber.label],
    })),
  );
};
