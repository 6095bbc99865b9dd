import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  frictionFactorChurchill1977,
  frictionFactorChurchillShape,
  frictionFactorColebrook1939,
  frictionFactorFullyRough,
  frictionFactorHaaland1983,
  frictionFactorSwameeJain1976,
  frictionFactorSwameeJainCubic,
  headLossDarcyWeisbach,
  reynoldsOfBore,
} from './friction.ts';

const anyReynolds = fc.double({ min: -3, max: 8, noNaN: true }).map((exponent) => 10 ** exponent);
const turbulent = fc.double({ min: Math.log10(5000), max: 8, noNaN: true }).map((exponent) => 10 ** exponent);
const roughness = fc.oneof(
  fc.constant(0),
  fc.double({ min: -6, max: Math.log10(0.05), noNaN: true }).map((exponent) => 10 ** exponent),
);
const rough = fc.double({ min: -6, max: Math.log10(0.05), noNaN: true }).map((exponent) => 10 ** exponent);

describe('friction from laminar to turbulent', () => {
  it.each([
    ['Churchill', frictionFactorChurchill1977],
    ['Swamee–Jain with the cubic', frictionFactorSwameeJainCubic],
  ])('by %s: more flow always loses more head', (_, law) => {
    fc.assert(
      fc.property(anyReynolds, roughness, (reynolds, relativeRoughness) => {
        const lossAt = (Re: number): number => law({ reynolds: Re, relativeRoughness }) * Re ** 2;
        expect(lossAt(reynolds * 1.001)).toBeGreaterThan(lossAt(reynolds));
      }),
    );
  });

  it('Churchill tends to 64/Re in creeping flow and to 96/Re in a slot', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 500, noNaN: true }),
        roughness,
        (reynolds, relativeRoughness) => {
          expect(frictionFactorChurchill1977({ reynolds, relativeRoughness }) * reynolds).toBeCloseTo(64, 6);
          expect(
            frictionFactorChurchillShape({ reynolds, relativeRoughness, laminarConstant: 96 }) * reynolds,
          ).toBeCloseTo(96, 6);
        },
      ),
    );
  });

  it('the cubic meets both sides with value and slope', () => {
    for (const relativeRoughness of [0, 1e-4, 0.02]) {
      for (const Re of [2000, 4000]) {
        const at = (reynolds: number): number =>
          frictionFactorSwameeJainCubic({ reynolds, relativeRoughness });
        const before = (at(Re - 0.01) - at(Re - 0.02)) / 0.01;
        const after = (at(Re + 0.02) - at(Re + 0.01)) / 0.01;
        expect(Math.abs(at(Re + 1e-6) - at(Re - 1e-6))).toBeLessThan(1e-10);
        expect(Math.abs(after - before)).toBeLessThan(2e-9);
      }
    }
  });
});

describe('turbulent friction laws as neighbours', () => {
  it('Colebrook satisfies its own equation', () => {
    fc.assert(
      fc.property(turbulent, roughness, (reynolds, relativeRoughness) => {
        const f = frictionFactorColebrook1939({ reynolds, relativeRoughness });
        const right = -2 * Math.log10(relativeRoughness / 3.7 + 2.51 / (reynolds * Math.sqrt(f)));
        expect(Math.abs(right * Math.sqrt(f) - 1)).toBeLessThan(1e-13);
      }),
    );
  });

  it.each([
    ['Haaland', frictionFactorHaaland1983, 0.015],
    ['Swamee–Jain', frictionFactorSwameeJain1976, 0.03],
    ['Churchill', frictionFactorChurchill1977, 0.032],
  ])('%s stays as close to Colebrook as its docstring says', (_, law, most) => {
    fc.assert(
      fc.property(turbulent, rough, (reynolds, relativeRoughness) => {
        const flow = { reynolds, relativeRoughness };
        expect(Math.abs(law(flow) / frictionFactorColebrook1939(flow) - 1)).toBeLessThan(most);
      }),
      { numRuns: 500 },
    );
  });

  it('the fully rough factor is the limit of Colebrook', () => {
    const relativeRoughness = 0.01;
    expect(frictionFactorColebrook1939({ reynolds: 1e12, relativeRoughness })).toBeCloseTo(
      frictionFactorFullyRough({ relativeRoughness }),
      8,
    );
  });
});

describe('headLossDarcyWeisbach', () => {
  it('takes the sign of the velocity and counts fittings as velocity heads', () => {
    const run = { frictionFactor: 0.03, lengthM: 2, boreM: 0.012, velocityMPerS: 1.2 };
    const loss = headLossDarcyWeisbach(run);
    expect(headLossDarcyWeisbach({ ...run, velocityMPerS: -1.2 })).toBe(-loss);
    expect(headLossDarcyWeisbach({ ...run, minorK: 5 })).toBeCloseTo(2 * loss, 12);
  });

  it('gives Poiseuille’s loss in laminar flow', () => {
    const flow = { flowM3PerS: 1e-6, boreM: 0.01, kinematicViscosityM2PerS: 1e-6 };
    const reynolds = reynoldsOfBore(flow);
    const velocityMPerS = flow.flowM3PerS / ((Math.PI / 4) * flow.boreM ** 2);
    const frictionFactor = frictionFactorChurchill1977({ reynolds, relativeRoughness: 0 });
    const loss = headLossDarcyWeisbach({ frictionFactor, lengthM: 1, boreM: flow.boreM, velocityMPerS });
    const poiseuille = (128 * 1e-6 * flow.flowM3PerS) / (Math.PI * flow.boreM ** 4 * 9.80665);
    expect(loss / poiseuille).toBeCloseTo(1, 10);
  });
});
