import { createRequire } from 'node:module';
import { beforeAll, describe, expect, test } from 'vitest';
import { forecastCompiled } from '../packages/engine/assessment/forecast/forecast.ts';
import { compiledJob } from '../packages/engine/assessment/testing/compiled.ts';
import { internalBox, splitCanister, stackCanister } from '../packages/engine/assessment/testing/models.ts';
import type { CompiledNetwork } from '../packages/engine/network/compiled.ts';
import { dropAt } from '../packages/engine/network/evaluate.ts';
import { solveNetwork } from '../packages/engine/network/solve.ts';

/*
 * Flows of a forecast against a solver by other hands (epanet-js, EPANET compiled to WebAssembly): on some days of a
 * forecast every part of the filter, its clogged beds among them, goes into the package as a curve of head loss over
 * flow, points and nothing else, and the pump as points too. The package knows no law of ours, and we know none of its
 * curves. What is left to differ is the straight line between two points of a curve.
 */

interface Project {
  open(input: string, report: string, output: string): void;
  openH(): void;
  initH(how: number): void;
  runH(): number;
  closeH(): void;
  close(): void;
  getLinkIndex(id: string): number;
  getLinkValue(link: number, property: number): number;
}

interface Package {
  readonly Workspace: new () => {
    loadModule(): Promise<void>;
    writeFile(path: string, text: string): void;
  };
  readonly Project: new (workspace: unknown) => Project;
  readonly LinkProperty: { readonly Flow: number };
  readonly InitHydOption: { readonly InitFlow: number };
}

const general: Package = createRequire(import.meta.url)('epanet-js');
const workspace = new general.Workspace();
beforeAll(() => workspace.loadModule());

const POINTS = 240;
/** Two straight pieces for one curved one: of the largest flow. */
const TOLERANCE = 1e-4;
const CUBIC_METRES_PER_HOUR = 3600;

/** Head that each link takes at each of the flows, m, m³/s; the points lie close together where little flows. */
const curvesOf = (net: CompiledNetwork, mostM3PerS: number) => {
  const flows = Array.from({ length: POINTS }, (_, point) => mostM3PerS * (point / (POINTS - 1)) ** 3);
  const heads = net.spec.links.map(({ id }) => flows.map((flow) => dropAt(net, id, flow)));
  return { flows, heads };
};

/** A network as the package reads it: curves alone. */
const inputOf = (net: CompiledNetwork, mostM3PerS: number): string => {
  const { links, fixedHeadsM } = net.spec;
  const { flows, heads } = curvesOf(net, mostM3PerS);
  const nodes = [...new Set(links.flatMap(({ from, to }) => [from, to]))];
  const name = (node: string): string => `n${nodes.indexOf(node)}`;
  const isPump = (place: number): boolean => links[place]!.law.kind.startsWith('pump');
  const lines = (kept: (place: number) => boolean, line: (place: number) => string): string =>
    links.flatMap((_, place) => (kept(place) ? [line(place)] : [])).join('\n');
  const ends = (place: number): string => `l${place} ${name(links[place]!.from)} ${name(links[place]!.to)}`;
  const curve = (place: number): string =>
    flows
      .map(
        (flow, point) =>
          `c${place} ${flow * CUBIC_METRES_PER_HOUR} ${(isPump(place) ? -1 : 1) * heads[place]![point]!}`,
      )
      .join('\n');
  return [
    `[JUNCTIONS]\n${nodes
      .filter((node) => fixedHeadsM[node] === undefined)
      .map((node) => `${name(node)} 0 0`)
      .join('\n')}`,
    `[RESERVOIRS]\n${Object.entries(fixedHeadsM)
      .map(([node, head]) => `${name(node)} ${head}`)
      .join('\n')}`,
    `[PUMPS]\n${lines(isPump, (place) => `${ends(place)} HEAD c${place}`)}`,
    `[VALVES]\n${lines(
      (place) => !isPump(place),
      (place) => `${ends(place)} 1000 GPV c${place} 0`,
    )}`,
    `[CURVES]\n${lines(() => true, curve)}`,
    '[OPTIONS]\nUNITS CMH\nHEADLOSS D-W\nACCURACY 1e-8\nTRIALS 500\n[END]\n',
  ].join('\n\n');
};

const referenceFlows = (net: CompiledNetwork, mostM3PerS: number): number[] => {
  workspace.writeFile('filter.inp', inputOf(net, mostM3PerS));
  const project = new general.Project(workspace);
  project.open('filter.inp', 'report', 'out');
  project.openH();
  project.initH(general.InitHydOption.InitFlow);
  project.runH();
  const flows = net.spec.links.map(
    (_, place) =>
      project.getLinkValue(project.getLinkIndex(`l${place}`), general.LinkProperty.Flow) /
      CUBIC_METRES_PER_HOUR,
  );
  project.closeH();
  project.close();
  return flows;
};

const filters = [
  ['a canister with a stack of baskets', stackCanister(), 850],
  ['a canister in two halves', splitCanister(), 900],
  ['an internal box', internalBox(), 400],
] as const;

describe('flows of a forecast', () => {
  test.each(
    filters.flatMap(([name, model, ratedLPerH]) =>
      [1, 30, 120, 240].map((days) => ({ name, model, ratedLPerH, days })),
    ),
  )(
    'of $name are those of the general solver on day $days, its clogged beds as curves of head loss',
    ({ model, ratedLPerH, days }) => {
      const compiled = compiledJob(model);
      forecastCompiled(compiled, { days });
      const { network } = compiled;
      solveNetwork(network);
      const flows = referenceFlows(network, ratedLPerH / 3.6e6);
      const largest = Math.max(...flows.map(Math.abs));
      expect(largest).toBeGreaterThan(1e-5);
      for (const [place, { id }] of network.spec.links.entries())
        expect([id, Math.abs(network.flow[place]! - flows[place]!) / largest < TOLERANCE]).toEqual([
          id,
          true,
        ]);
      expect(network.resistanceRatio.some((ratio) => ratio > 1)).toBe(true);
    },
  );
});
