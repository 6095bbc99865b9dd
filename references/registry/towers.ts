import { radialInertiaEngelund1953, radialPathThiem1906 } from '@fettle/engine/laws/hydraulics/radialFlow.ts';
import {
  holdUpOtakeOkada1953,
  wallFlowFraction,
  wettedFractionOnda1968,
} from '@fettle/engine/laws/hydraulics/trickle.ts';
import { adapter, type Registry } from './adapter.ts';

const hollowCylinder = { outerRadiusM: 'm', innerRadiusM: 'm', lengthM: 'm' } as const;

const trickle = {
  densityKgPerM3: 'kg/m3',
  viscosityPaS: 'Pa s',
  loadKgPerM2S: 'kg/m2/s',
  surfacePerM: '1/m',
} as const;

export const trickleLaws = {
  wettedFractionOnda1968: adapter({
    inputs: { ...trickle, tensionNPerM: 'kg/s2', wettingTensionNPerM: 'kg/s2' },
    result: '1',
    compute: wettedFractionOnda1968,
  }),
  holdUpOtakeOkada1953: adapter({
    inputs: { ...trickle, sizeM: 'm' },
    result: '1',
    compute: holdUpOtakeOkada1953,
  }),
  wallFlowFraction: adapter({
    inputs: { sizeM: 'm', towerM: 'm' },
    result: '1',
    compute: wallFlowFraction,
  }),
} as const satisfies Registry;

export const radialLaws = {
  radialPathThiem1906: adapter({ inputs: hollowCylinder, result: '1/m', compute: radialPathThiem1906 }),
  radialInertiaEngelund1953: adapter({
    inputs: hollowCylinder,
    result: '1/m3',
    compute: radialInertiaEngelund1953,
  }),
} as const satisfies Registry;
