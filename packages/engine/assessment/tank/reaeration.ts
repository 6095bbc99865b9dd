import { bubbleReaeration, weirDeficitRatioGameson1957 } from '../../laws/water/reaeration.ts';
import type { Compiled } from '../compiled.ts';
import { filterFlow } from '../dirt/transport.ts';
import { tankFigures } from './tankFigures.ts';

/** What brings oxygen into a tank, each as kLa·V: times the deficit it is the oxygen taken up, m³/s. */
export interface ReaerationParts {
  readonly surfaceM3PerS: number;
  readonly fallM3PerS: number;
  readonly bubblesM3PerS: number;
}

/** Surface of a tank that nobody has measured: twice as long as wide and high. */
const surfaceOf = (volumeM3: number): number => 2 * (volumeM3 / 2) ** (2 / 3);

/**
 * Surface, falling water and bubbles of a tank by their laws, at the flows of the last solve.
 * @param surfaceTransferMPerS film of the surface, m/s
 */
export const reaerationParts = (
  compiled: Compiled,
  surfaceTransferMPerS: number = tankFigures.surfaceTransferMPerS.value,
): ReaerationParts => {
  const { tank, filter } = compiled.model;
  const { curve } = filter.pump;
  const surfaceM2 = tank.surfaceM2 ?? surfaceOf(tank.volumeM3);
  const fallM = Math.max(0, filter.outletLiftM);
  const ratio = weirDeficitRatioGameson1957({ fallM, temperatureK: tank.temperatureK });
  return {
    surfaceM3PerS: surfaceM2 * surfaceTransferMPerS,
    fallM3PerS: filterFlow(compiled) * (1 - 1 / ratio),
    bubblesM3PerS:
      curve.kind === 'air-lift'
        ? bubbleReaeration({
            airFlowM3PerS: curve.airFlowM3PerS,
            depthM: compiled.layout.liftTube?.airDepthM ?? 0,
            saturatedKgPerM3: compiled.water.saturatedOxygenKgPerM3,
          })
        : 0,
  };
};

export const addedReaeration = (compiled: Compiled): number => {
  const { surfaceM3PerS, fallM3PerS, bubblesM3PerS } = reaerationParts(compiled);
  return surfaceM3PerS + fallM3PerS + bubblesM3PerS;
};
