import { bedResistanceErgun1952Range } from '../laws/hydraulics/beds.ts';
import type { BedState, Warning } from './assessment.ts';
import type { Compiled } from './compiled.ts';

const WARM_LEAST_K = 278.15;
const WARM_MOST_K = 308.15;
const FEWEST_PIECES_ACROSS = 10;
const ELEVATED_LOSS = 1;

const temperature = (compiled: Compiled): Warning[] => {
  const { temperatureK } = compiled.model.tank;
  if (temperatureK >= WARM_LEAST_K && temperatureK <= WARM_MOST_K) return [];
  const says =
    'Bacteria were measured between 5 and 35 °C; what the filter carries is drawn out beyond that.';
  return [{ code: 'temperature-outside-kinetics', place: 'tank', says }];
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

const thinAcross = (compiled: Compiled): Warning[] =>
  compiled.beds.flatMap((bed) => {
    const chamber = compiled.layout.chambers.find(({ id }) => id === bed.chamber)!;
    const across = chamber.widthM / bed.pieceM;
    if (bed.medium.resistance.law === 'fibre' || across >= FEWEST_PIECES_ACROSS) return [];
    const says = `The chamber is only ${Number(across.toPrecision(2))} pieces of ${bed.medium.name} wide: more water runs along its walls than is computed.`;
    return [{ code: 'few-pieces-across', place: bed.id, says }];
  });

const fastWater = (beds: readonly BedState[], compiled: Compiled): Warning[] =>
  beds.flatMap((state) => {
    const bed = compiled.beds.find(({ id }) => id === state.id)!;
    if (bed.medium.resistance.law !== 'grains') return [];
    const Re =
      (state.velocityMPerS * bed.pieceM) / (compiled.water.kinematicViscosityM2PerS * (1 - bed.voidage));
    if (Re <= bedResistanceErgun1952Range.reynolds.most) return [];
    const says = `Water runs through the ${bed.medium.name} faster than its law was measured for.`;
    return [{ code: 'bed-outside-law', place: bed.id, says }];
  });

const slowPump = (compiled: Compiled): Warning[] => {
  const { pump } = compiled.model.filter;
  if (pump.speedRatio >= 1 / 3) return [];
  const says = 'Below a third of its speed a pump departs from the affinity laws that are used here.';
  return [{ code: 'pump-speed-outside-affinity', place: 'pump', says }];
};

const beyondCurve = (compiled: Compiled): Warning[] => {
  const flow = compiled.network.flow[compiled.network.linkIndex.get('pump')!]!;
  const rated = compiled.model.filter.pump.ratedFlowM3PerS;
  if (flow <= ELEVATED_LOSS * rated) return [];
  const says = 'The flow lies beyond the last point of the pump’s curve, which is drawn out straight there.';
  return [{ code: 'flow-beyond-pump-curve', place: 'pump', says }];
};

/** Where figures of an assessment lie outside what their laws were measured for. */
export const warningsOf = (compiled: Compiled, beds: readonly BedState[]): Warning[] => [
  ...temperature(compiled),
  ...saltWater(compiled),
  ...thinAcross(compiled),
  ...fastWater(beds, compiled),
  ...slowPump(compiled),
  ...beyondCurve(compiled),
];
