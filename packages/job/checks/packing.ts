import type { Chamber } from '@fettle/engine/families/layout.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { amountFields, amountsGiven, bedDepths, type DraftBed, isMassInRoom } from '../beds.ts';
import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import type { FieldPath } from '../fieldPath.ts';
import { packedStateFields } from '../packedStates.ts';
import { type Problem, problem } from '../problems.ts';
import { checkLaying } from './laying.ts';
import { checkChamber, checkMedium } from './names.ts';

/** Beds that lie on one another without play may be this share too deep: foam gives way. */
const fullTolerance = 1e-6;

/** Chambers, media and room for every bed. */
export function checkPacking(draft: Draft, context: Context): readonly Problem[] {
  return [
    ...checkBeds(draft.packing, ['packing'], context),
    ...packedStateFields.flatMap((field) => checkBeds(draft[field]?.packing, [field, 'packing'], context)),
  ];
}

function checkBeds(packing: Draft['packing'], at: FieldPath, context: Context): readonly Problem[] {
  return Object.entries(packing ?? {}).flatMap(([id, beds]) => {
    const path = [...at, id];
    const chamber = context.layout?.chambers.find((each) => each.id === id);
    const listed = (beds ?? []).map((bed, index) => ({ bed: bed ?? {}, path: [...path, index] }));
    return [
      ...checkChamber(id, path, context),
      ...listed.flatMap((each) => checkBed(each.bed, each.path, context)),
      ...(chamber === undefined ? [] : checkRoom(listed, { chamber, path, context })),
      ...checkLayings(listed, chamber, context),
    ];
  });
}

function checkBed(bed: DraftBed, path: FieldPath, context: Context): readonly Problem[] {
  const given = amountsGiven(bed);
  const isRight = given.length === 1 || isMassInRoom(bed, mediumOf(bed, context));
  const fields = amountFields.join(', ');
  const amount =
    isRight || bed.medium === undefined
      ? []
      : [
          problem('one-of-fields', path, {
            facts: { fields, found: given.length === 0 ? 'none' : given.join(' and ') },
            allowed: fields,
          }),
        ];
  return [...checkMedium(bed.medium, [...path, 'medium'], context), ...amount];
}

/** How each bed of a chamber lies. */
function checkLayings(
  listed: readonly { readonly bed: DraftBed; readonly path: FieldPath }[],
  chamber: Chamber | undefined,
  context: Context,
): readonly Problem[] {
  const beds = listed.map((one) => ({ ...one, medium: mediumOf(one.bed, context) }));
  const depths = chamber === undefined ? [] : bedDepths(beds, chamber);
  return beds.flatMap((one, index) =>
    checkLaying({ ...one, chamber, depthM: depths[index]?.depthM }, context),
  );
}

interface Room {
  readonly chamber: Chamber;
  readonly path: FieldPath;
  readonly context: Context;
}

function checkRoom(
  listed: readonly { readonly bed: DraftBed; readonly path: FieldPath }[],
  { chamber, path, context }: Room,
): readonly Problem[] {
  const beds = listed.map((one) => ({ ...one, medium: mediumOf(one.bed, context) }));
  const problems = beds.flatMap(({ medium, path: bedPath }) =>
    medium === undefined ? [] : checkPiece(medium, chamber, bedPath),
  );
  const depthM = bedDepths(beds, chamber).reduce((sum, depth) => sum + (depth?.depthM ?? 0), 0);
  if (depthM <= chamber.depthM * (1 + fullTolerance)) return problems;
  const facts = {
    beds: length(depthM),
    chamber: length(chamber.depthM),
    over: length(depthM - chamber.depthM),
  };
  return [
    ...problems,
    problem('chamber-overfull', path, { facts, allowed: `at most ${facts.chamber} in all` }),
  ];
}

function mediumOf(bed: DraftBed, { media }: Context): Medium | undefined {
  return bed.medium !== undefined && Object.hasOwn(media, bed.medium) ? media[bed.medium] : undefined;
}

function checkPiece(medium: Medium, chamber: Chamber, path: FieldPath): readonly Problem[] {
  const { resistance } = medium;
  if (resistance.law !== 'grains' && resistance.law !== 'hollow') return [];
  const widest = Math.min(chamber.widthM, chamber.depthM);
  if (resistance.sizeM.value <= widest) return [];
  const facts = { medium: medium.name, piece: length(resistance.sizeM.value), chamber: length(widest) };
  return [
    problem('piece-too-large', [...path, 'medium'], { facts, allowed: `pieces of at most ${facts.chamber}` }),
  ];
}

function length(metres: number): string {
  return printQuantity({ value: metres, dimension: 'length', system: 'metric' });
}
