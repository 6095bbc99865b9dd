import { compileNetwork } from '../compile.ts';
import type { CompiledNetwork } from '../compiled.ts';
import type { Link, LinkLaw, NetworkSpec } from '../links.ts';
import { type SolveReport, solveNetwork } from '../solve.ts';

/** A network solved from rest, with its report kept from the next solve. */
export interface Solved {
  readonly net: CompiledNetwork;
  readonly report: SolveReport;
  readonly largestFlowM3PerS: number;
}

/** Compiles a network that is known to be sound. */
export const compiled = (spec: NetworkSpec): CompiledNetwork => {
  const result = compileNetwork(spec);
  if (!result.ok) throw new Error(`test network unfit: ${JSON.stringify(result.problem)}`);
  return result.network;
};

export const largestFlow = (net: CompiledNetwork): number => Math.max(...net.flow.map(Math.abs));

export const solved = (spec: NetworkSpec): Solved => {
  const net = compiled(spec);
  const report = { ...solveNetwork(net) };
  return { net, report, largestFlowM3PerS: largestFlow(net) };
};

/** Links written short: from, to, law; named by their place (`l0`, `l1` …). */
export const linksOf = (...rows: readonly (readonly [from: string, to: string, law: LinkLaw])[]): Link[] =>
  rows.map(([from, to, law], place) => ({ id: `l${place}`, from, to, law }));

/** Water at 20 °C round a tank at head 0, unless told otherwise. */
export const networkOf = (
  links: readonly Link[],
  fixedHeadsM: Record<string, number> = { tank: 0 },
): NetworkSpec => ({
  fixedHeadsM,
  links,
  kinematicViscosityM2PerS: 1.0034e-6,
  gravityMPerS2: 9.80665,
  usualFlowM3PerS: 2e-4,
});

export const loss = (linear: number, quadratic: number): LinkLaw => ({
  kind: 'resistance',
  linear,
  quadratic,
});

/** Pump that stops at 2 m and gives 1200 L/h against nothing, by two points. */
export const smallPump: LinkLaw = {
  kind: 'pump',
  shutoffHeadM: 2,
  coefficient: 2 / (1200 / 3.6e6) ** 2,
  exponent: 2,
};
