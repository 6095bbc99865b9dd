import {
  airClearingVelocityEscarameia2007,
  slugBubbleVelocityViana2003,
} from '@fettle/engine/laws/hydraulics/air.ts';
import {
  coilFrictionIto1959,
  coilFrictionLaminarWhite1929,
  coilFrictionMishraGupta1979,
  deanNumber,
} from '@fettle/engine/laws/hydraulics/coils.ts';
import { jetReachHussein1994 } from '@fettle/engine/laws/hydraulics/jet.ts';
import { narrowingKWeisbach1855, tapKWeisbach1855 } from '@fettle/engine/laws/hydraulics/restrictions.ts';
import { weirFlowDrownedVillemonte1947 } from '@fettle/engine/laws/hydraulics/weir.ts';
import { surfaceTensionIapwsR1, vapourPressureWagnerPruss1993 } from '@fettle/engine/laws/water/vapour.ts';
import { adapter, type Registry } from './adapter.ts';

const coil = { reynolds: '1', curvature: '1' } as const;
/** A lip on which only the share of the free flow is asked for. */
const LIP = { crestWidthM: 1, levelM: 1 } as const;

/** What stands in a run of hose beside hose and fittings: coils, taps, narrow places, crests, air. */
export const elementLaws = {
  deanNumber: adapter({ inputs: coil, result: '1', compute: deanNumber }),
  coilFrictionLaminarWhite1929: adapter({
    inputs: coil,
    result: '1',
    compute: coilFrictionLaminarWhite1929,
  }),
  coilFrictionMishraGupta1979: adapter({
    inputs: { ...coil, straightFactor: '1' },
    result: '1',
    compute: coilFrictionMishraGupta1979,
  }),
  coilFrictionIto1959: adapter({ inputs: coil, result: '1', compute: coilFrictionIto1959 }),
  tapKWeisbach1855: adapter({ inputs: { openFraction: '1' }, result: '1', compute: tapKWeisbach1855 }),
  'tapKWeisbach1855.angle': adapter({
    inputs: { degrees: '1' },
    result: '1',
    compute: ({ degrees }) => tapKWeisbach1855({ openFraction: 1 - degrees / 90 }),
  }),
  narrowingKWeisbach1855: adapter({
    inputs: { openFraction: '1' },
    result: '1',
    compute: narrowingKWeisbach1855,
  }),
  weirFlowDrownedVillemonte1947: adapter({
    inputs: { crestWidthM: 'm', dischargeCoefficient: '1', levelM: 'm', tailwaterM: 'm' },
    result: 'm3/s',
    compute: weirFlowDrownedVillemonte1947,
  }),
  'weirFlowDrownedVillemonte1947.share': adapter({
    inputs: { drowned: '1' },
    result: '1',
    compute: ({ drowned }) =>
      weirFlowDrownedVillemonte1947({ ...LIP, tailwaterM: drowned }) /
      weirFlowDrownedVillemonte1947({ ...LIP, tailwaterM: 0 }),
  }),
  slugBubbleVelocityViana2003: adapter({
    inputs: { boreM: 'm', densityKgPerM3: 'kg/m3', surfaceTensionNPerM: 'kg/s2' },
    result: 'm/s',
    compute: slugBubbleVelocityViana2003,
  }),
  airClearingVelocityEscarameia2007: adapter({
    inputs: { boreM: 'm', slope: '1', pocketSize: '1' },
    result: 'm/s',
    compute: airClearingVelocityEscarameia2007,
  }),
  jetReachHussein1994: adapter({
    inputs: { velocityMPerS: 'm/s', boreM: 'm', slowedMPerS: 'm/s' },
    result: 'm',
    compute: jetReachHussein1994,
  }),
  vapourPressureWagnerPruss1993: adapter({
    inputs: { temperatureK: 'K' },
    result: 'Pa',
    compute: vapourPressureWagnerPruss1993,
  }),
  surfaceTensionIapwsR1: adapter({
    inputs: { temperatureK: 'K' },
    result: 'kg/s2',
    compute: surfaceTensionIapwsR1,
  }),
} as const satisfies Registry;
