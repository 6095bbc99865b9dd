import { drawnLayout } from '../../families/families.ts';
import type { Layout } from '../../families/layout.ts';
import {
  type AirLiftState,
  airLiftFlowReinemann1990,
  airLiftHeadReinemann1990,
  type LiftTube,
} from '../../laws/hydraulics/airLift.ts';
import { surfaceTensionIapwsR1 } from '../../laws/water/vapour.ts';
import type { Model, Tank } from '../../model/model.ts';
import type { LinkLaw } from '../../network/links.ts';
import { waterState } from './water.ts';

/** Points of the curve that the network takes an air-lift by; 64 are within 1e-4 of the law's head. */
const POINTS = 64;

/** The curve goes on beyond the bare tube's free flow by this, and is drawn out straight from there. */
const BEYOND_FREE = 1.2;

/** Where no air comes, the curve still reaches to this speed in the tube, m/s. */
const LEAST_REACH = 0.1;

/** Height of the free mouth over the tank's surface, m: of an air-lift by its tubes, else as the job states. */
export const outletLiftOf = ({ filter }: Model, { liftTube }: Layout): number =>
  filter.pump.curve.kind === 'air-lift' && liftTube
    ? Math.max(0, liftTube.riseM - liftTube.airDepthM)
    : filter.outletLiftM;

/** An air-lift with its air in a tank's water. */
export const airLiftIn = (
  tank: Tank,
  lift: { readonly tube: LiftTube; readonly airFlowM3PerS: number },
): AirLiftState => ({
  ...lift,
  ...waterState(tank),
  surfaceTensionNPerM: surfaceTensionIapwsR1(tank),
  pressurePa: tank.pressurePa,
});

/** A model's air-lift; throws where its filter has none, which the document's checks keep out. */
export const airLiftOf = ({ tank, filter }: Model): AirLiftState => {
  const tube = drawnLayout(filter).liftTube;
  const { curve } = filter.pump;
  if (curve.kind !== 'air-lift' || !tube) throw new Error('no air-lift in this filter');
  return airLiftIn(tank, { tube, airFlowM3PerS: curve.airFlowM3PerS });
};

/** Water that bare tubes give into the open, m³/s: against nothing but the height of their mouth. */
export const bareTubeFlow = (state: AirLiftState): number =>
  airLiftFlowReinemann1990(Math.max(0, state.tube.riseM - state.tube.airDepthM), state);

/**
 * An air-lift as the points of its curve, which the network joins by a monotone cubic: denser towards no flow. Water
 * that runs back meets the curve drawn out straight. The height of the mouth is a level of its own in the network.
 */
export const airLiftLaw = (state: AirLiftState): Extract<LinkLaw, { readonly kind: 'pump-points' }> => {
  const area = (state.tube.tubes * Math.PI * state.tube.boreM ** 2) / 4;
  const reach = Math.max(BEYOND_FREE * airLiftFlowReinemann1990(0, state), LEAST_REACH * area);
  const flows = Array.from({ length: POINTS }, (_, i) => reach * (i / (POINTS - 1)) ** 1.5);
  return {
    kind: 'pump-points',
    flowM3PerS: flows,
    headM: flows.map((flow) => airLiftHeadReinemann1990(flow, state)),
  };
};
