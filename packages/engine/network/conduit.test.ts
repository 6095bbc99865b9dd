import { describe, expect, it } from 'vitest';
import { frictionFactorChurchillShape, frictionFactorSwameeJainCubic } from '../laws/hydraulics/friction.ts';
import { churchill, type FrictionCell, swameeJainCubic } from './conduit.ts';
import { BENDING } from './solve.ts';

const roughnesses = [0, 1e-6, 1e-4, 2e-3, 0.05];
/** Even in the logarithm from creeping to absurd, with the joints of both laws and their neighbours. */
const reynoldsNumbers = [
  ...Array.from({ length: 161 }, (_, i) => 10 ** (i / 10 - 8)),
  ...[700, 2000, 4000].flatMap((joint) => [joint * (1 - 1e-9), joint, joint * (1 + 1e-9)]),
  1500,
  2300,
  2900,
  3700,
];

type Kernel = (Re: number, cell: FrictionCell) => void;

const churchillKernel =
  (relativeRoughness: number, laminarConstant: number): Kernel =>
  (Re, cell) =>
    churchill(Re, { relativeRoughness, laminarConstant }, cell);

const kernels = roughnesses.flatMap((relativeRoughness) => [
  ...[64, 96].map((laminarConstant) => ({
    name: `Churchill, ${laminarConstant}/Re, roughness ${relativeRoughness}`,
    kernel: churchillKernel(relativeRoughness, laminarConstant),
    law: (reynolds: number) => frictionFactorChurchillShape({ reynolds, relativeRoughness, laminarConstant }),
  })),
  {
    name: `Swamee–Jain with the cubic, roughness ${relativeRoughness}`,
    kernel: (Re: number, cell: FrictionCell) => swameeJainCubic(Re, relativeRoughness, cell),
    law: (reynolds: number) => frictionFactorSwameeJainCubic({ reynolds, relativeRoughness }),
  },
]);

describe.each(kernels)('friction in the network: $name', ({ kernel, law }) => {
  it('is the published law to 1e-12', () => {
    const cell = { factor: 0, slope: 0 };
    for (const Re of reynoldsNumbers) {
      kernel(Re, cell);
      expect(Math.abs(cell.factor / law(Re) - 1), `Re ${Re}`).toBeLessThan(1e-12);
    }
  });

  it('has the slope that central differences find', () => {
    const cell = { factor: 0, slope: 0 };
    const above = { factor: 0, slope: 0 };
    const below = { factor: 0, slope: 0 };
    for (const Re of reynoldsNumbers) {
      const nearJoint = [700, 2000, 4000].some((joint) => Math.abs(Re / joint - 1) < 1e-4);
      if (nearJoint) continue;
      const step = 1e-5 * Re;
      kernel(Re, cell);
      kernel(Re + step, above);
      kernel(Re - step, below);
      const difference = (above.factor - below.factor) / (2 * step);
      // A slope below a hundredth of f/Re is lost in the rounding of the difference.
      const scale = Math.max(Math.abs(difference), (1e-2 * cell.factor) / Re);
      expect(Math.abs(cell.slope - difference) / scale, `Re ${Re}`).toBeLessThan(1e-6);
    }
  });

  it('takes more head for more flow at any Reynolds number', () => {
    const cell = { factor: 0, slope: 0 };
    for (const Re of reynoldsNumbers) {
      kernel(Re, cell);
      // Head goes as f·Re²: it rises where f′·Re + 2f is above nothing.
      expect(cell.slope * Re + 2 * cell.factor, `Re ${Re}`).toBeGreaterThan(0);
    }
  });

  it('is off a straight line in the flow by less than BENDING·ε² where the flow is off by ε', () => {
    const cell = { factor: 0, slope: 0 };
    for (let power = 1; power < 8; power += 0.001) {
      const Re = 10 ** power;
      kernel(Re, cell);
      const touch = { ...cell };
      for (const part of [-1e-3, -1e-4, 1e-4, 1e-3]) {
        kernel(Re * (1 + part), cell);
        // Factor times flow, as the solver has it, over factor and flow at the touching point.
        const line = 1 + part * (1 + (touch.slope * Re) / touch.factor);
        const miss = Math.abs((cell.factor / touch.factor) * (1 + part) - line);
        expect(miss, `Re ${Re}`).toBeLessThan(BENDING * part * part + 1e-13);
      }
    }
  });
});
