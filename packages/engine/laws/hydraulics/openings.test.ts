import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orificeFlow, orificePressure, perforatedPlateK } from './orifice.ts';
import { frictionFactorSlotChurchill, slotFlow, slotPressure } from './slot.ts';

const water = { densityKgPerM3: 998.2, viscosityPaS: 1.002e-3 };
const hole = { ...water, diameterM: 0.006, dischargeCoefficient: 0.61 };
const gap = { ...water, thicknessM: 1e-3, widthM: 0.3, lengthM: 0.05 };
const pressures = fc.double({ min: -9, max: 5, noNaN: true }).map((exponent) => 10 ** exponent);
const flows = fc.double({ min: -12, max: -2, noNaN: true }).map((exponent) => 10 ** exponent);
const thicknesses = fc.double({ min: 5e-5, max: 0.01, noNaN: true });

describe('a hole', () => {
  it('passes the flow that loses the pressure, from a film to a torrent', () => {
    fc.assert(
      fc.property(pressures, (pressurePa) => {
        const flowM3PerS = orificeFlow({ ...hole, pressurePa });
        expect(orificePressure({ ...hole, flowM3PerS }) / pressurePa).toBeCloseTo(1, 10);
        expect(orificeFlow({ ...hole, pressurePa: -pressurePa })).toBe(-flowM3PerS);
      }),
    );
  });

  it('creeps by Sampson’s law when the water hardly moves', () => {
    const flowM3PerS = 1e-14;
    const sampson = (3 * water.viscosityPaS * flowM3PerS) / 0.003 ** 3;
    expect(orificePressure({ ...hole, flowM3PerS }) / sampson).toBeCloseTo(1, 5);
  });

  it('passes nothing without a pressure', () => {
    expect(orificeFlow({ ...hole, pressurePa: 0 })).toBe(0);
  });
});

describe('a perforated plate', () => {
  it('resists less the more it is open, and not at all when it is gone', () => {
    const shares = [0.02, 0.1, 0.3, 0.6, 0.9, 1];
    const losses = shares.map((openFraction) => perforatedPlateK({ openFraction }));
    expect(losses).toEqual([...losses].sort((a, b) => b - a));
    expect(losses.at(-1)).toBe(0);
  });

  it('tends to single holes of discharge coefficient 0.586 when hardly open', () => {
    const s = 1e-4;
    expect(1 / Math.sqrt(perforatedPlateK({ openFraction: s }) * s ** 2)).toBeCloseTo(0.586, 3);
  });
});

describe('a gap', () => {
  it('loses more at more flow, through the change to turbulence', () => {
    fc.assert(
      fc.property(flows, thicknesses, (flowM3PerS, thicknessM) => {
        const lossAt = (flow: number): number => slotPressure({ ...gap, thicknessM, flowM3PerS: flow });
        expect(lossAt(flowM3PerS * 1.001)).toBeGreaterThan(lossAt(flowM3PerS));
      }),
    );
  });

  it('has no jump between laminar and turbulent', () => {
    for (let reynolds = 1000; reynolds < 10_000; reynolds *= 1.001) {
      const ratio =
        frictionFactorSlotChurchill({ reynolds: reynolds * 1.001 }) /
        frictionFactorSlotChurchill({ reynolds });
      expect(Math.abs(ratio - 1)).toBeLessThan(0.012);
    }
  });

  it('passes the flow that loses the pressure', () => {
    fc.assert(
      fc.property(pressures, thicknesses, (pressurePa, thicknessM) => {
        const flowM3PerS = slotFlow({ ...gap, thicknessM, pressurePa });
        expect(slotPressure({ ...gap, thicknessM, flowM3PerS }) / pressurePa).toBeCloseTo(1, 9);
      }),
    );
  });

  it('follows the cube of its thickness in slow flow without entrance loss', () => {
    const slow = { ...gap, entranceK: 0, pressurePa: 1e-3 };
    expect(slotFlow({ ...slow, thicknessM: 1e-3 }) / slotFlow({ ...slow, thicknessM: 5e-4 })).toBeCloseTo(
      8,
      9,
    );
  });

  it('lets water back by the same law', () => {
    expect(slotFlow({ ...gap, pressurePa: -50 })).toBe(-slotFlow({ ...gap, pressurePa: 50 }));
    expect(slotPressure({ ...gap, flowM3PerS: 0 })).toBe(0);
  });
});
