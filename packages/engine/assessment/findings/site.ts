import { quantity } from '../../wording/facts.ts';
import type { Spill } from '../site/site.ts';
import { type FindingRule, type Sighting, saysAndCure } from './rule.ts';

/** Water on the floor from which a word is worth it, m³ (our own choice). */
const SPILL_M3 = 1e-3;
/** Water on the floor that ruins one, m³ (our own choice). */
const FLOOD_M3 = 1e-2;

const spillFinding = (spill: Spill): Sighting[] => {
  const over = spill.volumeM3 - (spill.spareM3 ?? 0);
  if (over < SPILL_M3) return [];
  const { cause, flowM3PerS, timeS } = spill;
  const timed = flowM3PerS !== undefined && timeS !== undefined;
  const evidence = {
    volume: quantity(spill.volumeM3, 'volume'),
    fall: quantity(spill.fallM, 'length'),
    ...(cause === 'power-fails' ? { room: quantity(spill.spareM3 ?? 0, 'volume') } : {}),
    ...(timed ? { flow: quantity(flowM3PerS, 'flow'), time: { durationS: timeS } } : {}),
  };
  const place = cause === 'intake-hose-off' ? 'intake' : 'outlet';
  const severity = over >= FLOOD_M3 ? 'marked' : 'slight';
  return [{ place, ...saysAndCure(`spill.${cause}`, evidence), severity }];
};

/** Water runs onto the floor when a hose comes off or the power fails. */
export const spillsOver: FindingRule = {
  id: 'spills-over',
  look: ({ assessment }) => assessment.site.spills.flatMap(spillFinding),
};

/** A tank twice as long as it is wide, by its surface, m: how far a jet can reach in it (our own assumption). */
const lengthOf = (surfaceM2: number): number => Math.sqrt(2 * surfaceM2);

/** The jet of an outlet sweeps the whole tank faster than its weakest swimmers stand. */
export const jetSweepsTank: FindingRule = {
  id: 'jet-sweeps-tank',
  look({ model, assessment }): readonly Sighting[] {
    const { surfaceM2 } = model.tank;
    if (surfaceM2 === undefined) return [];
    return assessment.site.jets.flatMap(({ velocityMPerS, standsMPerS, reachM }) => {
      if (reachM < lengthOf(surfaceM2)) return [];
      const evidence = {
        speed: quantity(velocityMPerS, 'velocity'),
        reach: quantity(reachM, 'length'),
        stands: quantity(standsMPerS, 'velocity'),
      };
      return [{ place: 'outlet', ...saysAndCure('jet-sweeps-tank', evidence), severity: 'slight' as const }];
    });
  },
};
