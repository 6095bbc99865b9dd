import { resistanceRatioMaysHunt2005Range } from '../laws/dirt/resistance.ts';
import { airLiftHeadReinemann1990Range, meanAirFlow } from '../laws/hydraulics/airLift.ts';
import {
  bedResistanceCarmanHollowRange,
  bedResistanceEisfeldSchnitzlein2001Range,
} from '../laws/hydraulics/beds.ts';
import { affinityRange } from '../laws/hydraulics/pump.ts';
import { pHFactorRange, temperatureFactorRange } from '../laws/life/nitrification.ts';
import { engineEnglish } from '../wording/english/english.ts';
import { quantity } from '../wording/facts.ts';
import { type Fact, said } from '../wording/said.ts';
import { word } from '../wording/word.ts';
import type { BedState, CleaningInterval, Warning } from './assessment.ts';
import type { Compiled } from './compiled.ts';
import { airLiftOf } from './hydraulics/airLift.ts';

const FEWEST_PIECES_ACROSS = 10;
const LEAST_AFFINITY_SPEED = 1 / 3;
/** Lifts shorter than those of the measurements that the law holds within a fifth, m. */
const SHORT_LIFT_M = 2;
/** Below this pH ripe tanks do more than the line drawn from warmer, harder water lets them; from memory. */
const SOFT_ACID_PH = 6.5;
/** Below this bacteria hardly grow and few beds were measured, K. */
const COLD_K = 283.15;
const SEA_SALINITY = 25;
const DAY_S = 86_400;
/** Filters are hardly opened more often than this, s (common practice, no source). */
const SOONEST_PRACTICE_S = 7 * DAY_S;
/** Media are looked at this often even where they seem clean, s (common practice, no source). */
const LOOKED_AT_S = 90 * DAY_S;

/** A warning with its English words. */
export const warning = (code: string, place: string, facts: Readonly<Record<string, Fact>> = {}): Warning => {
  const saying = said(`warning.${code}`, facts);
  return { code, place, said: saying, says: word(saying, { language: engineEnglish, units: 'metric' }) };
};

const outside = (
  value: number,
  { least, most }: { readonly least: number; readonly most: number },
): boolean => value < least || value > most;

const temperature = (compiled: Compiled): Warning[] => {
  if (!outside(compiled.model.tank.temperatureK, temperatureFactorRange.temperatureK)) return [];
  const { least, most } = temperatureFactorRange.temperatureK;
  return [
    warning('temperature-outside-kinetics', 'tank', {
      least: { ...quantity(least, 'temperature'), digits: 2 },
      most: { ...quantity(most, 'temperature'), digits: 2 },
    }),
  ];
};

const acidity = (compiled: Compiled): Warning[] => {
  const { most } = pHFactorRange.pH;
  if (!outside(compiled.model.tank.pH, { least: 6.7, most })) return [];
  return [warning('pH-outside-kinetics', 'tank', { least: 6.7, most, nothing: 6.1 })];
};

const unfed = (compiled: Compiled): Warning[] => {
  if (compiled.model.tank.feedKgPerS > 0) return [];
  return [warning('no-feed-no-dirt', 'tank')];
};

/** Water in which tanks ripen although no bed was measured in it: acid, or nearly without alkalinity. */
const softAcid = ({ model, constants }: Compiled): Warning[] =>
  model.tank.pH >= SOFT_ACID_PH && model.tank.alkalinityKgPerM3 >= constants.leastAlkalinityKgPerM3
    ? []
    : [warning('soft-acid-water', 'tank', { acid: SOFT_ACID_PH })];

const coldWater = ({ model }: Compiled): Warning[] =>
  model.tank.temperatureK >= COLD_K
    ? []
    : [warning('cold-water', 'tank', { cold: { ...quantity(COLD_K, 'temperature'), digits: 2 } })];

/** Water of a sea tank, in which much works that is not reckoned with. */
const seaWater = ({ model }: Compiled): Warning[] =>
  model.tank.salinity < SEA_SALINITY ? [] : [warning('sea-water-not-counted', 'tank')];

const saltWater = (compiled: Compiled): Warning[] =>
  compiled.model.tank.salinity <= 1 ? [] : [warning('kinetics-are-fresh-water', 'tank')];

/** Grains have the wall in their law; foam is cut to fit and floss fills what it is put into. */
const thinAcross = (compiled: Compiled): Warning[] =>
  compiled.beds.flatMap((bed) => {
    const chamber = compiled.layout.chambers.find(({ id }) => id === bed.chamber)!;
    const across = chamber.widthM / bed.pieceM;
    if (bed.medium.resistance.law !== 'hollow' || across >= FEWEST_PIECES_ACROSS) return [];
    const evidence = { pieces: Number(across.toPrecision(2)), medium: { name: bed.medium.name } };
    return [warning('few-pieces-across', bed.id, evidence)];
  });

const lawRange = (law: 'grains' | 'hollow') =>
  law === 'grains' ? bedResistanceEisfeldSchnitzlein2001Range : bedResistanceCarmanHollowRange;

const bedLaws = (compiled: Compiled, cleanFlowM3PerS: number): Warning[] =>
  compiled.beds.flatMap((bed) => {
    const { law } = bed.medium.resistance;
    if (law !== 'grains' && law !== 'hollow') return [];
    const velocity = cleanFlowM3PerS / bed.areaM2;
    const Re = (velocity * bed.pieceM) / (compiled.water.kinematicViscosityM2PerS * (1 - bed.voidage));
    const range = lawRange(law);
    if (!outside(bed.voidage, range.voidage) && (!('reynolds' in range) || Re <= range.reynolds.most))
      return [];
    return [warning('bed-outside-law', bed.id, { medium: { name: bed.medium.name } })];
  });

const deepDirt = (compiled: Compiled, beds: readonly BedState[]): Warning[] =>
  beds.flatMap((state) => {
    const bed = compiled.beds.find(({ id }) => id === state.id)!;
    const depositFraction = state.dirtFraction * bed.voidage;
    if (depositFraction <= resistanceRatioMaysHunt2005Range.depositFraction.most) return [];
    return [warning('dirt-outside-law', bed.id, { medium: { name: bed.medium.name } })];
  });

/** Affinity is a poor guide at low speeds, and where a dimmed pump gives little of what it is rated for. */
const dimmedPump = (compiled: Compiled, cleanFlowM3PerS: number): Warning[] => {
  const { speedRatio, ratedFlowM3PerS } = compiled.model.filter.pump;
  if (speedRatio < LEAST_AFFINITY_SPEED) return [warning('pump-speed-outside-affinity', 'pump')];
  const share = cleanFlowM3PerS / (speedRatio * ratedFlowM3PerS);
  if (speedRatio === 1 || share >= affinityRange.flowShare.least) return [];
  return [warning('pump-flow-outside-affinity', 'pump', { share: { share } })];
};

const beyondCurve = (compiled: Compiled, cleanFlowM3PerS: number): Warning[] => {
  const { curve, speedRatio } = compiled.model.filter.pump;
  if (curve.kind === 'air-lift') return [];
  const last = curve.kind === 'points' ? curve.points.at(-1)!.flowM3PerS : curve.freeFlowM3PerS;
  if (cleanFlowM3PerS <= last * speedRatio) return [];
  return [warning('flow-beyond-pump-curve', 'pump')];
};

/** Where an air-lift's bore, air or Reynolds number lies outside what its law was measured for. */
const airLift = (compiled: Compiled, cleanFlowM3PerS: number): Warning[] => {
  if (compiled.model.filter.pump.curve.kind !== 'air-lift') return [];
  const state = airLiftOf(compiled.model);
  const { boreM, tubes } = state.tube;
  const area = (tubes * Math.PI * boreM ** 2) / 4;
  const gas = meanAirFlow(state) / area;
  const reynolds = ((cleanFlowM3PerS / area + gas) * boreM) / state.kinematicViscosityM2PerS;
  const range = airLiftHeadReinemann1990Range;
  const isOutside =
    outside(boreM, range.boreM) || outside(gas, range.gasMPerS) || outside(reynolds, range.reynolds);
  const short = state.tube.riseM < SHORT_LIFT_M ? [warning('air-lift-is-short', 'pump')] : [];
  return isOutside ? [warning('air-lift-outside-law', 'pump'), ...short] : short;
};

/** Where practice would not believe the cleaning interval: it comes of the dirt of feed and of a law found on sand. */
const interval = (cleaning: CleaningInterval, beds: readonly BedState[]): Warning[] => {
  const { timeS, beyond, endedBy, place = '' } = cleaning;
  if (beyond && beds.some(({ dirtFraction }) => dirtFraction > 0))
    return [warning('interval-beyond-practice', 'tank', { look: { spanS: LOOKED_AT_S } })];
  if (endedBy === 'none' || timeS >= SOONEST_PRACTICE_S) return [];
  return [
    warning('interval-below-practice', place, {
      time: { spanS: timeS },
      soonest: { spanS: SOONEST_PRACTICE_S },
    }),
  ];
};

/**
 * Where figures of an assessment lie outside what their laws were measured for, or what practice would believe.
 * @param state flow with clean beds, m³/s, the beds on the day of the comparison, and the cleaning interval
 */
export const warningsOf = (
  compiled: Compiled,
  state: {
    readonly cleanFlowM3PerS: number;
    readonly beds: readonly BedState[];
    readonly cleaning: CleaningInterval;
  },
): Warning[] => [
  ...temperature(compiled),
  ...acidity(compiled),
  ...softAcid(compiled),
  ...coldWater(compiled),
  ...saltWater(compiled),
  ...seaWater(compiled),
  ...unfed(compiled),
  ...thinAcross(compiled),
  ...bedLaws(compiled, state.cleanFlowM3PerS),
  ...deepDirt(compiled, state.beds),
  ...interval(state.cleaning, state.beds),
  ...dimmedPump(compiled, state.cleanFlowM3PerS),
  ...beyondCurve(compiled, state.cleanFlowM3PerS),
  ...airLift(compiled, state.cleanFlowM3PerS),
];
