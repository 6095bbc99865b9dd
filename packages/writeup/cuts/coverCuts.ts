import { isSlotPast } from '@fettle/engine/planning/alterations.ts';
import { madeAlterations } from '../parts/changes.ts';
import type { WriteUpSource } from '../source.ts';
import type { CoverCut } from './cut.ts';

/** A cover laps so far over its slots on every side, m (common practice, no source). */
export const COVER_LAP_M = 0.005;

/**
 * A cover for each group of slots past the media that is to be closed. Of slots only the area is known: the outline is
 * that of slots side by side over the narrowest inside of the filter, and so the least that covers them.
 */
export const coverCuts = (source: WriteUpSource): readonly CoverCut[] => {
  if (!madeAlterations(source).some(({ id }) => id === 'close-upper-slots')) return [];
  const { chambers, openings } = source.found.assessment.layout;
  const lengthM = Math.min(...chambers.map(({ widthM }) => widthM));
  const acrossM = lengthM - 2 * COVER_LAP_M;
  return openings.filter(isSlotPast).map(({ areaM2, label }) => ({
    kind: 'cover',
    lengthM,
    widthM: areaM2 / acrossM + 2 * COVER_LAP_M,
    slots: { acrossM, otherM: areaM2 / acrossM },
    count: 1,
    places: [label],
  }));
};
