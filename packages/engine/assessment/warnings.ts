import { resistanceRatioMaysHunt2005Range } from '../laws/dirt/resistance.ts';
import {
  bedResistanceCarmanHollowRange,
  bedResistanceEisfeldSchnitzlein2001Range,
} from '../laws/hydraulics/beds.ts';
import { pHFactorRange, temperatureFactorRange } from '../laws/life/nitrification.ts';
import type { BedState, Warning } from './assessment.ts';
import type { Compiled } from './compiled.ts';

const FEWEST_PIECES_ACROSS = 10;
const LEAST_AFFINITY_SPEED = 1 / 3;

const outside = (
  value: number,
  { least, most }: { readonly least: number; readonly most: number },
): boolean => value < least || value > most;

const temperature = (compiled: Compiled): Warning[] => {
  if (!outside(compiled.model.tank.temperatureK, temperatureFactorRange.temperatureK)) return [];
  const says =
    'The bacteria were measured between 6 and 30 °C; colder is drawn out, and warmer their rates fall where the models let them rise.';
  return [{ code: 'temperature-outside-kinetics', place: 'tank', says }];
};

const acidity = (compiled: Compiled): Warning[] => {
  if (!outside(compiled.model.tank.pH, { least: 6.7, most: pHFactorRange.pH.most })) return [];
  const says =
    'What pH leaves of the bacteria was measured from 6.7 to 8.5; below, the line is drawn out to nothing at 6.1, above it is taken as full.';
  return [{ code: 'pH-outside-kinetics', place: 'tank', says }];
};

const unfed = (compiled: Compiled): Warning[] => {
  if (compiled.model.tank.feedKgPerS > 0) return [];
  const says = 'The tank is not fed, so no dirt is made: what the filter carries is that of clean media.';
  return [{ code: 'no-feed-no-dirt', place: 'tank', says }];
};

const saltWater = (compiled: Compiled): Warning[] =>
  compiled.model.tank.salinity <= 1
    ? []
    : [
        {
          code: 'kinetics-are-fresh-water',
          place: 'tank',
          says: 'The rates of the bacteria were measured in fresh water; salted tanks ripen more slowly and may carry less.',
        },
      ];

/** Grains have the wall in their law; foam is cut to fit and floss fills what it is put into. */
const thinAcross = (compiled: Compiled): Warning[] =>
  compiled.beds.flatMap((bed) => {
    const chamber = compiled.layout.chambers.find(({ id }) => id === bed.chamber)!;
    const across = chamber.widthM / bed.pieceM;
    if (bed.medium.resistance.law !== 'hollow' || across >= FEWEST_PIECES_ACROSS) return [];
    const says = `The chamber is only ${Number(across.toPrecision(2))} pieces of ${bed.medium.name} wide: more water runs along its walls than is computed.`;
    return [{ code: 'few-pieces-across', place: bed.id, says }];
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
    const says = `The bed of ${bed.medium.name} lies outside what its law of resistance was measured for, in voidage or speed.`;
    return [{ code: 'bed-outside-law', place: bed.id, says }];
  });

const deepDirt = (compiled: Compiled, beds: readonly BedState[]): Warning[] =>
  beds.flatMap((state) => {
    const bed = compiled.beds.find(({ id }) => id === state.id)!;
    const depositFraction = state.dirtFraction * bed.voidage;
    if (depositFraction <= resistanceRatioMaysHunt2005Range.depositFraction.most) return [];
    const says = `The ${bed.medium.name} holds more dirt than the law of clogging was measured for; it is clogged, but its resistance is a guess.`;
    return [{ code: 'dirt-outside-law', place: bed.id, says }];
  });

const slowPump = (compiled: Compiled): Warning[] => {
  const { pump } = compiled.model.filter;
  if (pump.speedRatio >= LEAST_AFFINITY_SPEED) return [];
  const says = 'Below a third of its speed a pump departs from the affinity laws that are used here.';
  return [{ code: 'pump-speed-outside-affinity', place: 'pump', says }];
};

const beyondCurve = (compiled: Compiled, cleanFlowM3PerS: number): Warning[] => {
  const { curve, speedRatio } = compiled.model.filter.pump;
  const last = curve.kind === 'points' ? curve.points.at(-1)!.flowM3PerS : curve.freeFlowM3PerS;
  if (cleanFlowM3PerS <= last * speedRatio) return [];
  const says = 'The flow lies beyond the last point of the pump’s curve, which is drawn out straight there.';
  return [{ code: 'flow-beyond-pump-curve', place: 'pump', says }];
};

/**
 * Where figures of an assessment lie outside what their laws were measured for.
 * @param state flow with clean beds, m³/s, and the beds on the day of the comparison
 */
export const warningsOf = (
  compiled: Compiled,
  state: { readonly cleanFlowM3PerS: number; readonly beds: readonly BedState[] },
): Warning[] => [
  ...temperature(compiled),
  ...acidity(compiled),
  ...saltWater(compiled),
  ...unfed(compiled),
  ...thinAcross(compiled),
  ...bedLaws(compiled, state.cleanFlowM3PerS),
  ...deepDirt(compiled, state.beds),
  ...slowPump(compiled),
  ...beyondCurve(compiled, state.cleanFlowM3PerS),
];
