import {
  airLiftFlowReinemann1990,
  airLiftHeadReinemann1990,
  meanAirFlow,
} from '@fettle/engine/laws/hydraulics/airLift.ts';
import {
  archimedesNumber,
  buoyantHead,
  expandedVoidageRichardsonZaki1954,
  expansionExponentKhanRichardson1989,
  fluidisingVelocityWenYu1966,
  settlingVelocityHaiderLevenspiel1989,
} from '@fettle/engine/laws/hydraulics/fluidised.ts';
import {
  bubbleRiseTungParlange1976,
  gasFractionNicklin1962,
} from '@fettle/engine/laws/hydraulics/taylorBubble.ts';
import { adapter, type Registry } from './adapter.ts';

/** Fresh water at 20 °C under one atmosphere, as the sources of air-lifts have it. */
const water = {
  densityKgPerM3: 998.2,
  kinematicViscosityM2PerS: 1.0034e-6,
  surfaceTensionNPerM: 0.0728,
  pressurePa: 101_325,
} as const;

const tube = { boreM: 'm', riseM: 'm', airDepthM: 'm', airFlowM3PerS: 'm3/s' } as const;
type Tube = Readonly<Record<keyof typeof tube, number>>;
const stateOf = ({ airFlowM3PerS, ...measured }: Tube) => ({
  ...water,
  airFlowM3PerS,
  tube: { ...measured, tubes: 1 },
});

const grains = {
  sizeM: 'm',
  solidDensityKgPerM3: 'kg/m3',
  densityKgPerM3: 'kg/m3',
  viscosityPaS: 'kg/m/s',
} as const;
const stream = { gasMPerS: 'm/s', liquidMPerS: 'm/s' } as const;

/** Air that lifts water, and water that lifts grains. */
export const airAndGrainLaws = {
  bubbleRiseTungParlange1976: adapter({
    inputs: { boreM: 'm', surfaceTensionNPerM: 'kg/s2', densityKgPerM3: 'kg/m3' },
    result: 'm/s',
    compute: bubbleRiseTungParlange1976,
  }),
  gasFractionNicklin1962: adapter({
    inputs: { ...stream, riseMPerS: 'm/s' },
    result: '1',
    compute: (flow) => gasFractionNicklin1962(flow),
  }),
  'gasFractionNicklin1962.tube': adapter({
    inputs: { ...stream, boreM: 'm' },
    result: '1',
    compute: ({ boreM, ...flow }) =>
      gasFractionNicklin1962({ ...flow, riseMPerS: bubbleRiseTungParlange1976({ ...water, boreM }) }),
  }),
  meanAirFlow: adapter({ inputs: tube, result: 'm3/s', compute: (lift) => meanAirFlow(stateOf(lift)) }),
  airLiftHeadReinemann1990: adapter({
    inputs: { ...tube, waterFlowM3PerS: 'm3/s' },
    result: 'm',
    compute: (lift) => airLiftHeadReinemann1990(lift.waterFlowM3PerS, stateOf(lift)),
  }),
  airLiftFlowReinemann1990: adapter({
    inputs: { ...tube, headM: 'm' },
    result: 'm3/s',
    compute: (lift) => airLiftFlowReinemann1990(lift.headM, stateOf(lift)),
  }),
  archimedesNumber: adapter({ inputs: grains, result: '1', compute: archimedesNumber }),
  fluidisingVelocityWenYu1966: adapter({
    inputs: grains,
    result: 'm/s',
    compute: fluidisingVelocityWenYu1966,
  }),
  settlingVelocityHaiderLevenspiel1989: adapter({
    inputs: { ...grains, sphericity: '1' },
    result: 'm/s',
    compute: settlingVelocityHaiderLevenspiel1989,
  }),
  expansionExponentKhanRichardson1989: adapter({
    inputs: grains,
    result: '1',
    compute: expansionExponentKhanRichardson1989,
  }),
  expandedVoidageRichardsonZaki1954: adapter({
    inputs: { velocityMPerS: 'm/s', settlingMPerS: 'm/s', exponent: '1', settledVoidage: '1' },
    result: '1',
    compute: expandedVoidageRichardsonZaki1954,
  }),
  buoyantHead: adapter({
    inputs: { solidDensityKgPerM3: 'kg/m3', densityKgPerM3: 'kg/m3', voidage: '1', depthM: 'm' },
    result: 'm',
    compute: buoyantHead,
  }),
} as const satisfies Registry;
