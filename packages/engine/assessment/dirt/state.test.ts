import { describe, expect, it } from 'vitest';
import { GRAVITY } from '../../laws/constants.ts';
import { cakePressureRuth1935 } from '../../laws/dirt/cake.ts';
import { CAKE_RESISTANCE_M_PER_KG } from '../../laws/dirt/constants.ts';
import { solvedClean } from '../testing/compiled.ts';
import { stackCanister } from '../testing/models.ts';
import { matRatio } from './state.ts';

describe('a mat on the face of a bed', () => {
  it.each([1e-4, 0.01, 1])('of %s kg/m² takes the head that Ruth 1935 gives', (cakeKgPerM2) => {
    const compiled = solvedClean(stackCanister());
    const { network, water, beds } = compiled;
    for (const [place, { link, areaM2 }] of beds.entries()) {
      const pressurePa = cakePressureRuth1935({
        cakeKgPerM2,
        resistanceMPerKg: CAKE_RESISTANCE_M_PER_KG,
        viscosityPaS: water.viscosityPaS,
        velocityMPerS: network.flow[link]! / areaM2,
      });
      const headM = matRatio(compiled, place, cakeKgPerM2) * network.drop[link]!;
      expect(headM / (pressurePa / (water.densityKgPerM3 * GRAVITY))).toBeCloseTo(1, 9);
    }
  });
});
