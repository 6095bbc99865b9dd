import type { Chamber } from '@fettle/engine/families/layout.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import { isOfPieces } from '@fettle/engine/packing/mediumInBed.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { type DraftBed, isMassInRoom, isPressable } from '../beds.ts';
import type { Context } from '../context.ts';
import type { FieldPath } from '../fieldPath.ts';
import { type Problem, problem } from '../problems.ts';
import { readField } from '../schema/fields.ts';
import { bedSchema } from '../schema/packing.ts';
import { checkMedium } from './names.ts';

/** A bed that is checked, as far as it is known. */
export interface LaidBed {
  readonly bed: DraftBed;
  readonly path: FieldPath;
  readonly medium: Medium | undefined;
  readonly chamber: Chamber | undefined;
  readonly depthM: number | undefined;
}

/** A piece keeps at least a tenth of its chamber's width. */
const LEAST_LEFT = 0.1;

/** How a bed lies, against its medium and its chamber. */
export function checkLaying(laid: LaidBed, context: Context): readonly Problem[] {
  return [...checkPressed(laid), ...checkMixed(laid, context), ...checkSides(laid)];
}

function checkPressed({ bed, path, medium, depthM }: LaidBed): readonly Problem[] {
  const fields = (['oversize', 'pressedFrom'] as const).filter((field) => bed[field] !== undefined);
  if (medium === undefined || fields.length === 0) return [];
  if (!isPressable(medium)) {
    const allowed = 'foam and floss';
    return fields.map((field) =>
      problem('does-not-give-way', [...path, field], { facts: { medium: medium.name }, allowed }),
    );
  }
  if (isMassInRoom(bed, medium))
    return fields.map((field) =>
      problem('said-two-ways', [...path, field], {
        facts: { other: 'mass', what: 'how far it is pressed' },
        allowed: `mass with its room, or ${field}`,
      }),
    );
  const from = readField(bedSchema.shape.pressedFrom, bed.pressedFrom);
  if (!from.ok || depthM === undefined || from.value >= depthM) return [];
  const facts = { found: from.written, depth: length(depthM) };
  return [
    problem('pressed-from-less', [...path, 'pressedFrom'], { facts, allowed: `${facts.depth} or more` }),
  ];
}

function checkMixed({ bed, path, medium }: LaidBed, context: Context): readonly Problem[] {
  if (bed.mixed === undefined) return [];
  const at = [...path, 'mixed', 'medium'];
  const { medium: id } = bed.mixed;
  const unknown = checkMedium(id, at, context);
  if (unknown.length > 0 || id === undefined || medium === undefined) return unknown;
  const soft = [medium, context.media[id]].find((one) => one && !isOfPieces(one.resistance));
  const allowed = 'grains, rings and other pieces';
  return soft ? [problem('cannot-be-mixed', at, { facts: { medium: soft.name }, allowed })] : [];
}

/** Gaps, larger cuts and bags against the walls of the chamber. */
function checkSides({ bed, path, chamber }: LaidBed): readonly Problem[] {
  const gap = readField(bedSchema.shape.cutGap, bed.cutGap);
  const both =
    bed.cutGap !== undefined && bed.oversize !== undefined
      ? [
          problem('said-two-ways', [...path, 'oversize'], {
            facts: { other: 'cutGap', what: 'how large the piece was cut' },
            allowed: 'one of the two',
          }),
        ]
      : [];
  if (chamber === undefined) return both;
  const sideways = (['cutGap', 'oversize', 'bag'] as const).filter((field) => bed[field] !== undefined);
  if (chamber.ring !== undefined)
    return sideways.map((field) =>
      problem('flat-walls-only', [...path, field], { facts: { chamber: chamber.label } }),
    );
  const most = ((1 - LEAST_LEFT) / 2) * Math.min(chamber.widthM, chamber.areaM2 / chamber.widthM);
  if (!gap.ok || gap.value <= most) return both;
  const facts = {
    found: gap.written,
    chamber: length(Math.min(chamber.widthM, chamber.areaM2 / chamber.widthM)),
  };
  return [
    ...both,
    problem('gap-leaves-nothing', [...path, 'cutGap'], { facts, allowed: `at most ${length(most)}` }),
  ];
}

function length(metres: number): string {
  return printQuantity({ value: metres, dimension: 'length', system: 'metric' });
}
