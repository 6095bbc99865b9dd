import { drawnLayout } from '../families/families.ts';
import type { Chamber, Layout } from '../families/layout.ts';
import { chambersInWaterOrder } from '../families/waterOrder.ts';
import type { Medium } from '../model/medium.ts';
import type { Bed, Model } from '../model/model.ts';
import { compileNetwork } from '../network/compile.ts';
import type { CompiledNetwork } from '../network/compiled.ts';
import type { NetworkSpec } from '../network/links.ts';
import type { TopologyProblem } from '../network/topology.ts';
import { mediumInBed } from '../packing/mediumInBed.ts';
import type { Compiled, CompiledBed } from './compiled.ts';
import { type Constants, usualConstants } from './constants.ts';
import { layGrid } from './dirt/grid.ts';
import { mixingLengthOf, pieceOf, voidageOf } from './hydraulics/bed.ts';
import { bedsInWaterOrder, filterNetwork, shapesOfBeds } from './hydraulics/filterNetwork.ts';
import { besideBed, slotsPast } from './hydraulics/laying.ts';
import { waterState } from './hydraulics/water.ts';

interface Edge {
  readonly id: string;
  readonly from: string;
  readonly to: string | undefined;
  readonly beds: readonly string[];
}

/** The way through a chamber's beds: one, or where water can run beside a bed one for each bed and what is beside it. */
const throughChamber = (chamber: Chamber, beds: readonly Bed[]): Edge[] => {
  const { id, from, to } = chamber;
  const beside = beds.map((bed) => besideBed(chamber, bed));
  if (beside.every((ways) => ways.length === 0))
    return [{ id: `floor:${id}`, from, to, beds: beds.map((bed) => bed.id) }];
  const before = beds.map((bed) => `before:${bed.id}`);
  return [
    { id: `floor:${id}`, from, to: before[0]!, beds: [] },
    ...beds.flatMap((bed, place) => {
      const ends = { from: before[place]!, to: before[place + 1] ?? to };
      return [
        { id: `bed:${bed.id}`, ...ends, beds: [bed.id] },
        ...beside[place]!.map((way) => ({ id: way.id, ...ends, beds: [] })),
      ];
    }),
  ];
};

const wayEdges = (model: Model, layout: Layout): Edge[] => {
  const chambers = layout.chambers.flatMap((chamber) => {
    const { id, from, to } = chamber;
    const slots = slotsPast(chamber, model.filter.otherSlots);
    return [
      ...throughChamber(chamber, bedsInWaterOrder(chamber, model)),
      { id: `gap:${id}`, from, to, beds: [] },
      ...slots.map((slot) => ({ id: `slot:${slot.id}`, from, to, beds: [] })),
    ];
  });
  const falls = layout.weirs.flatMap(({ id, from, to }) => (to === undefined ? [] : [{ id, from, to }]));
  const passing = [...layout.openings, ...layout.leaks, ...falls].map(({ id, from, to }) => ({
    id,
    from,
    to,
    beds: [],
  }));
  const lips = layout.weirs.filter(({ to }) => to === undefined);
  const out =
    lips.length > 0
      ? lips.map((weir) => ({ id: weir.id, from: weir.from, to: undefined, beds: [] }))
      : ['pump', 'pump:beside'].map((id) => ({ id, from: layout.outletSpace, to: undefined, beds: [] }));
  return [...chambers, ...passing, ...out];
};

/** Spaces so that every way leads onward; the layouts of all families run one way from inlet to outlet. */
const orderSpaces = (edges: readonly Edge[], inlet: string): string[] => {
  const waiting = new Map<string, number>();
  for (const { to } of edges) if (to !== undefined) waiting.set(to, (waiting.get(to) ?? 0) + 1);
  const order: string[] = [inlet];
  for (const space of order) {
    for (const edge of edges) {
      if (edge.from !== space || edge.to === undefined) continue;
      const left = waiting.get(edge.to)! - 1;
      waiting.set(edge.to, left);
      if (left === 0) order.push(edge.to);
    }
  }
  return order;
};

/** A medium as it lies in a chamber: dirt in media that water trickles over takes none of the pump's head. */
const asItLies = (chamber: Chamber, medium: Medium): Medium =>
  chamber.trickles ? { ...medium, depositFactor: { ...medium.depositFactor, value: 0 } } : medium;

const compileBeds = (model: Model, layout: Layout, network: CompiledNetwork): CompiledBed[] =>
  layout.chambers.flatMap((chamber) => {
    const beds = bedsInWaterOrder(chamber, model);
    const shapes = shapesOfBeds(chamber, beds);
    return beds.map((bed, place) => {
      const medium = asItLies(chamber, mediumInBed(bed, model.media));
      const { volumeM3, faceAreaM2, ring } = shapes[place]!;
      return {
        id: bed.id,
        chamber: chamber.id,
        medium,
        ...(bed.laying === undefined ? {} : { laying: bed.laying }),
        depthM: bed.depthM,
        areaM2: bed.depthM > 0 ? volumeM3 / bed.depthM : faceAreaM2,
        faceAreaM2,
        volumeM3,
        ...(ring === undefined ? {} : { ring }),
        ...(chamber.trickles ? { trickles: true as const } : {}),
        ...(chamber.moved === undefined ? {} : { moved: chamber.moved }),
        voidage: voidageOf(medium),
        pieceM: pieceOf(medium),
        mixingLengthM: mixingLengthOf(medium),
        link: network.linkIndex.get(`bed:${bed.id}`)!,
      };
    });
  });

/** The layout of a job's filter, its chambers in the order in which the water meets them. */
export const layoutOf = ({ filter }: Model): Layout => {
  const drawn = drawnLayout(filter);
  return { ...drawn, chambers: chambersInWaterOrder(drawn) };
};

/** How a job is compiled. */
export interface CompileOptions {
  /** Constants that are not sure; the most likely ones where left out. */
  readonly constants?: Constants;
  /** How fine the slices of the beds and the steps of the march are: 1 as used where left out, 2 halves each. */
  readonly refinement?: number;
}

/**
 * Compiles a job.
 * @returns the compiled job, or why its network cannot be solved
 */
export const compile = (
  model: Model,
  { constants = usualConstants, refinement = 1 }: CompileOptions = {},
):
  | { readonly ok: true; readonly compiled: Compiled }
  | { readonly ok: false; readonly problem: TopologyProblem } => {
  const layout = layoutOf(model);
  const edges = wayEdges(model, layout);
  const spaces = orderSpaces(edges, layout.inletSpace);
  const water = waterState(model.tank);
  const { spec, roles } = filterNetwork(model, layout, { water, constants });
  const result = compileNetwork(spec);
  if (!result.ok) return result;
  const { network } = result;
  const beds = compileBeds(model, layout, network);
  const ways = edges
    .filter((edge) => network.linkIndex.has(edge.id))
    .map((edge) => ({
      id: edge.id,
      link: network.linkIndex.get(edge.id)!,
      from: spaces.indexOf(edge.from),
      to: edge.to === undefined ? -1 : spaces.indexOf(edge.to),
      beds: edge.beds.map((id) => beds.findIndex((bed) => bed.id === id)),
    }))
    .sort((a, b) => a.from - b.from);
  const grid = layGrid(beds, water, { constants, refinement });
  return {
    ok: true,
    compiled: { model, constants, layout, water, network, roles, spaces, ways, beds, grid, refinement },
  };
};

const unsolvable = (code: string): Error => new Error(`the filter's network cannot be solved: ${code}`);

/**
 * A network compiled.
 * @throws where it cannot be solved: the job's own checks keep such layouts out
 */
export const compiledNetworkOf = (spec: NetworkSpec): CompiledNetwork => {
  const result = compileNetwork(spec);
  if (!result.ok) throw unsolvable(result.problem.code);
  return result.network;
};

/**
 * A job compiled.
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const compiledOf = (model: Model, options: CompileOptions = {}): Compiled => {
  const result = compile(model, options);
  if (!result.ok) throw unsolvable(result.problem.code);
  return result.compiled;
};
