import {
  ENTRANCE_K_SHARP_RENNELS_2012,
  EXIT_K,
  entranceKCrane1988,
  fittingCoefficient,
  fittingKHooper1981,
  type HooperFitting,
  hooperFittings,
  suddenContractionKCrane1988,
  suddenContractionKRennels2012,
  suddenExpansionKBorda1766,
  teeKCrane1988,
} from '@fettle/engine/laws/hydraulics/fittings.ts';
import { jetVelocityHussein1994, velocityHead, velocityInBore } from '@fettle/engine/laws/hydraulics/jet.ts';
import {
  dutyAtSpeed,
  powerFormAtSpeed,
  pumpHeadPowerForm,
  pumpHeadTwoPoint,
  pumpPowerForm,
} from '@fettle/engine/laws/hydraulics/pump.ts';
import {
  weirCoefficient,
  weirFlow,
  weirFlowKindsvaterCarter1957,
  weirFlowRehbock1929,
  weirLevel,
} from '@fettle/engine/laws/hydraulics/weir.ts';
import { monotoneSpline, splineValue } from '@fettle/engine/numerics/monotone.ts';
import { bracketedRoot } from '@fettle/engine/numerics/roots.ts';
import { adapter, type Registry } from './adapter.ts';

const step = { smallBoreM: 'm', largeBoreM: 'm' } as const;
const duty = { flowM3PerS: 'm3/s', headM: 'm', powerW: 'W', speedFrom: '1', speedTo: '1' } as const;
const curve = {
  shutoffHeadM: 'm',
  middleFlowM3PerS: 'm3/s',
  middleHeadM: 'm',
  farFlowM3PerS: 'm3/s',
  farHeadM: 'm',
} as const;
const weir = { crestWidthM: 'm', crestHeightM: 'm', levelM: 'm' } as const;

type Curve = Readonly<Record<keyof typeof curve, number>>;

const powerForm = (points: Curve) =>
  pumpPowerForm({
    shutoffHeadM: points.shutoffHeadM,
    middle: { flowM3PerS: points.middleFlowM3PerS, headM: points.middleHeadM },
    far: { flowM3PerS: points.farFlowM3PerS, headM: points.farHeadM },
  });

const atSpeed = (from: Readonly<Record<keyof typeof duty, number>>) =>
  dutyAtSpeed({ ...from, speedRatio: from.speedTo / from.speedFrom });

const constant = (value: number) => adapter({ inputs: {}, result: '1', compute: () => value });

const hooper = (kind: HooperFitting) =>
  adapter({
    inputs: { reynolds: '1', boreM: 'm' },
    result: '1',
    compute: (flow) => fittingKHooper1981({ ...hooperFittings[kind], ...flow }),
  });

const fittingLaws = {
  fittingKHooper1981: adapter({
    inputs: { k1: '1', kInfinity: '1', reynolds: '1', boreM: 'm' },
    result: '1',
    compute: fittingKHooper1981,
  }),
  'fittingKHooper1981.elbow': hooper('elbow-90-screwed'),
  'fittingKHooper1981.elbow90LongRadius': hooper('elbow-90-long-radius'),
  'fittingKHooper1981.elbow90Mitred': hooper('elbow-90-mitred'),
  'fittingKHooper1981.elbow45': hooper('elbow-45-standard'),
  'fittingKHooper1981.bend180': hooper('bend-180-screwed'),
  'fittingKHooper1981.teeIntoBranch': hooper('tee-into-branch-screwed'),
  'fittingKHooper1981.teeRun': hooper('tee-run-screwed'),
  'fittingKHooper1981.tapFullBore': hooper('tap-full-bore'),
  'fittingKHooper1981.tapReducedBore09': hooper('tap-reduced-bore-0.9'),
  'fittingKHooper1981.tapReducedBore08': hooper('tap-reduced-bore-0.8'),
  'fittingKHooper1981.globe': hooper('valve-globe'),
  'fittingKHooper1981.butterfly': hooper('valve-butterfly'),
  'fittingKHooper1981.checkLift': hooper('check-lift'),
  'fittingKHooper1981.checkSwing': hooper('check-swing'),
  'fittingKHooper1981.checkTiltingDisc': hooper('check-tilting-disc'),
  'entranceKCrane1988.flushSharp': constant(entranceKCrane1988({ shape: 'flush-sharp' })),
  'entranceKCrane1988.flushRounded': constant(entranceKCrane1988({ shape: 'flush-rounded' })),
  'entranceKCrane1988.projecting': constant(entranceKCrane1988({ shape: 'projecting' })),
  ENTRANCE_K_SHARP_RENNELS_2012: constant(ENTRANCE_K_SHARP_RENNELS_2012),
  EXIT_K: constant(EXIT_K),
  suddenExpansionKBorda1766: adapter({ inputs: step, result: '1', compute: suddenExpansionKBorda1766 }),
  suddenContractionKCrane1988: adapter({ inputs: step, result: '1', compute: suddenContractionKCrane1988 }),
  suddenContractionKRennels2012: adapter({
    inputs: step,
    result: '1',
    compute: suddenContractionKRennels2012,
  }),
  'teeKCrane1988.run': adapter({
    inputs: { fullyRoughFrictionFactor: '1' },
    result: '1',
    compute: (tee) => teeKCrane1988({ ...tee, way: 'run' }),
  }),
  'teeKCrane1988.branch': adapter({
    inputs: { fullyRoughFrictionFactor: '1' },
    result: '1',
    compute: (tee) => teeKCrane1988({ ...tee, way: 'branch' }),
  }),
  fittingCoefficient: adapter({
    inputs: { minorK: '1', boreM: 'm' },
    result: '1/m4',
    compute: fittingCoefficient,
  }),
} as const satisfies Registry;

const pumpLaws = {
  'dutyAtSpeed.flow': adapter({ inputs: duty, result: 'm3/s', compute: (from) => atSpeed(from).flowM3PerS }),
  'dutyAtSpeed.head': adapter({ inputs: duty, result: 'm', compute: (from) => atSpeed(from).headM }),
  'dutyAtSpeed.power': adapter({ inputs: duty, result: 'W', compute: (from) => atSpeed(from).powerW }),
  pumpHeadTwoPoint: adapter({
    inputs: { shutoffHeadM: 'm', freeFlowM3PerS: 'm3/s', flowM3PerS: 'm3/s' },
    result: 'm',
    compute: pumpHeadTwoPoint,
  }),
  'pumpHeadTwoPoint.duty': adapter({
    inputs: { shutoffHeadM: 'm', freeFlowM3PerS: 'm3/s', resistanceS2PerM5: 's2/m5' },
    result: 'm3/s',
    compute: (pump) =>
      bracketedRoot(
        (flowM3PerS) => pump.resistanceS2PerM5 * flowM3PerS ** 2 - pumpHeadTwoPoint({ ...pump, flowM3PerS }),
        { low: 0, high: pump.freeFlowM3PerS },
      ),
  }),
  'pumpPowerForm.exponent': adapter({
    inputs: curve,
    result: '1',
    compute: (points) => powerForm(points).exponent,
  }),
  pumpHeadPowerForm: adapter({
    inputs: { ...curve, flowM3PerS: 'm3/s' },
    result: 'm',
    compute: (points) => pumpHeadPowerForm({ ...powerForm(points), flowM3PerS: points.flowM3PerS }),
  }),
  'powerFormAtSpeed.head': adapter({
    inputs: { ...curve, flowM3PerS: 'm3/s', speedRatio: '1' },
    result: 'm',
    compute: (points) => {
      const slowed = powerFormAtSpeed({ ...powerForm(points), speedRatio: points.speedRatio });
      return pumpHeadPowerForm({ ...slowed, flowM3PerS: points.flowM3PerS });
    },
  }),
  'monotoneSpline.three': adapter({
    inputs: { x0: '1', x1: '1', x2: '1', y0: '1', y1: '1', y2: '1', at: '1' },
    result: '1',
    compute: ({ x0, x1, x2, y0, y1, y2, at }) =>
      splineValue(monotoneSpline({ x: [x0, x1, x2], y: [y0, y1, y2] }), at),
  }),
} as const satisfies Registry;

const weirLaws = {
  weirCoefficient: adapter({
    inputs: { crestWidthM: 'm', dischargeCoefficient: '1' },
    result: '1',
    compute: weirCoefficient,
  }),
  weirFlow: adapter({
    inputs: { crestWidthM: 'm', dischargeCoefficient: '1', levelM: 'm' },
    result: 'm3/s',
    compute: weirFlow,
  }),
  'weirFlow.thinLip': adapter({
    inputs: { crestWidthM: 'm', levelM: 'm' },
    result: 'm3/s',
    compute: (lip) => weirFlow(lip),
  }),
  weirLevel: adapter({
    inputs: { crestWidthM: 'm', dischargeCoefficient: '1', flowM3PerS: 'm3/s' },
    result: 'm',
    compute: weirLevel,
  }),
  'weirLevel.thinLip': adapter({
    inputs: { crestWidthM: 'm', flowM3PerS: 'm3/s' },
    result: 'm',
    compute: (lip) => weirLevel(lip),
  }),
  weirFlowRehbock1929: adapter({ inputs: weir, result: 'm3/s', compute: weirFlowRehbock1929 }),
  weirFlowKindsvaterCarter1957: adapter({
    inputs: weir,
    result: 'm3/s',
    compute: weirFlowKindsvaterCarter1957,
  }),
  velocityInBore: adapter({
    inputs: { flowM3PerS: 'm3/s', boreM: 'm' },
    result: 'm/s',
    compute: velocityInBore,
  }),
  velocityHead: adapter({
    inputs: { velocityMPerS: 'm/s' },
    result: 'm',
    compute: ({ velocityMPerS }) => velocityHead(velocityMPerS),
  }),
  jetVelocityHussein1994: adapter({
    inputs: { velocityMPerS: 'm/s', boreM: 'm', distanceM: 'm' },
    result: 'm/s',
    compute: jetVelocityHussein1994,
  }),
} as const satisfies Registry;

export const machineLaws = { ...fittingLaws, ...pumpLaws, ...weirLaws } as const satisfies Registry;
