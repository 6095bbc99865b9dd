import { chamberGap, SEALED_GAP_M } from '@fettle/engine/packing/seal.ts';
import { changeCost, madeAlterations } from '../parts/changes.ts';
import type { WriteUpSource } from '../source.ts';
import { coverCuts } from './coverCuts.ts';
import type { Cut, HoseCut, StripCut } from './cut.ts';
import { padCuts } from './padCuts.ts';

/** Usual width of a strip beside media, m (common practice, no source). */
export const STRIP_WIDTH_M = 0.01;

/** One strip for each gap past a chamber and each leaking edge that is to be sealed. */
const stripCuts = (source: WriteUpSource): readonly StripCut[] => {
  if (!madeAlterations(source).some(({ id }) => id === 'seal-gaps')) return [];
  const { model, assessment } = source.found;
  const { chambers, leaks } = assessment.layout;
  const gaps = [
    ...chambers.map((chamber) => ({
      lengthM: chamber.gap.widthM,
      gapM: chamberGap(model, chamber),
      place: chamber.label,
    })),
    ...leaks.map(({ widthM, thicknessM, label }) => ({ lengthM: widthM, gapM: thicknessM, place: label })),
  ].filter(({ gapM }) => gapM > SEALED_GAP_M);
  const lines = new Map<string, StripCut>();
  for (const { lengthM, gapM, place } of gaps) {
    const key = `${lengthM.toFixed(4)} ${gapM.toFixed(5)}`;
    const line = lines.get(key);
    lines.set(key, {
      kind: 'strip',
      lengthM,
      widthM: STRIP_WIDTH_M,
      gapM,
      count: (line?.count ?? 0) + 1,
      places: [...(line?.places ?? []), place],
    });
  }
  return [...lines.values()];
};

/** Hoses that are shortened or replaced, at the length and bore that they get. */
const hoseCuts = ({ found, after, ...source }: WriteUpSource): readonly HoseCut[] => {
  if (after === undefined) return [];
  const isNew = madeAlterations({ ...source, found, after }).some(({ id }) => id === 'hose-bore');
  return (['intake', 'outlet'] as const).flatMap((side) => {
    const [before, now] = [found.model.filter[side], after.model.filter[side]];
    if (before === undefined || now === undefined) return [];
    if (!isNew && now.lengthM >= before.lengthM) return [];
    const { lengthM, boreM } = now;
    return [{ kind: 'hose', side, lengthM, boreM, from: isNew ? 'bought' : 'there' } as const];
  });
};

/** Everything that is cut for the change of a job: pieces for the chambers, strips for the gaps, covers for slots, hoses. */
export const cutList = (source: WriteUpSource): readonly Cut[] => {
  const { found, after } = source;
  if (after === undefined) return [];
  const bought = new Set(changeCost(source).purchases.map(({ medium }) => medium));
  return [...padCuts(found, after, bought), ...stripCuts(source), ...coverCuts(source), ...hoseCuts(source)];
};

/**
 * Whether the foam sleeve that is there is cut to fit between its end caps: its length is tried on the filter, so no list
 * has it. A foam sleeve that is on the list is cut longer already.
 */
export const cutsSleeve = (source: WriteUpSource): boolean => {
  const aboutTubes = new Set(
    source.found.assessment.layout.chambers
      .filter(({ ring }) => ring !== undefined)
      .map(({ label }) => label),
  );
  const isListed = cutList(source).some(
    (cut) =>
      cut.kind === 'pad' && cut.medium.form === 'foam' && cut.chambers.some((label) => aboutTubes.has(label)),
  );
  return !isListed && madeAlterations(source).some(({ id }) => id === 'trim-sleeve');
};

/** Whether a knife is taken to anything at all. */
export const cutsAnything = (source: WriteUpSource): boolean =>
  cutsSleeve(source) || cutList(source).length > 0;
