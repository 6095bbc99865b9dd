import type { Chamber, Layout, Space } from '../../families/layout.ts';
import { tanksOfBed } from '../../laws/residence/dispersion.ts';
import type { HoseRun } from '../../model/model.ts';
import type { Compiled, Way } from '../compiled.ts';
import { BARB_LENGTH_M } from '../hydraulics/linkLaws.ts';
import { waterInBed } from '../hydraulics/trickling.ts';
import type { Stretch } from './stretch.ts';

const sum = (values: readonly number[]): number => values.reduce((all, one) => all + one, 0);

/** Extent of a chamber across the section drawing, m: what its area has beyond the side that is drawn. */
const acrossSection = ({ areaM2, depthM, flow, box, ring }: Chamber): number => {
  if (ring) return 2 * (ring.innerRadiusM + depthM);
  return areaM2 / (flow === 'up' || flow === 'down' ? box.width : box.height);
};

/** Water in a space, m³: its own where the family says it, else its box by the chambers' extent across the section. */
const spaceVolume = (layout: Layout, { box, volumeM3 }: Space): number => {
  if (volumeM3 !== undefined) return volumeM3;
  const across = layout.chambers.reduce((most, chamber) => Math.max(most, acrossSection(chamber)), 0);
  return box.width * box.height * across;
};

/** Water in a hose run with its barbs, m³. */
const runVolume = (run: HoseRun | undefined): number =>
  run === undefined
    ? 0
    : (Math.PI / 4) * (run.boreM ** 2 * run.lengthM + run.barbBoreM ** 2 * 2 * BARB_LENGTH_M);

/** Room of a chamber that no bed takes up, m³. */
const freeRoom = (compiled: Compiled, chamber: Chamber): number => {
  const beds = compiled.beds.filter((bed) => bed.chamber === chamber.id);
  const filledM3 = chamber.ring
    ? sum(beds.map((bed) => bed.volumeM3))
    : sum(beds.map((bed) => bed.depthM)) * chamber.areaM2;
  return Math.max(0, chamber.areaM2 * chamber.depthM - filledM3);
};

/** Water in a slot, m³; 0 for a way that is none. */
const slotVolume = ({ network }: Compiled, way: Way): number => {
  const { law } = network.spec.links[way.link]!;
  return law.kind === 'conduit' ? law.areaM2 * law.lengthM : 0;
};

/** What the water of one way passes, m³. */
interface WayBodies {
  /** Room over the beds of a chamber, or the whole of an empty one: mixed. */
  readonly mixedM3: number;
  /** Slot beside media: in the order in which it came. */
  readonly plugM3: number;
  /** Pores of its beds, in water order, by the bed's place. */
  readonly pores: readonly { readonly volumeM3: number; readonly bed: number }[];
}

/** Where the filter's water is. */
export interface WaterBodies {
  /** Hoses, which all of the water takes in the order in which it came; m³. */
  readonly hosesM3: number;
  /** Spaces between chambers, mixed, in the order of the compiled spaces; m³. */
  readonly spacesM3: readonly number[];
  readonly ways: readonly WayBodies[];
  /** All of it, m³; without water in pores inside the pieces of media and inside the pump. */
  readonly totalM3: number;
}

const wayBodies = (compiled: Compiled, way: Way): WayBodies => {
  const chamber = compiled.layout.chambers.find(({ id }) => `floor:${id}` === way.id);
  return {
    mixedM3: chamber === undefined ? 0 : freeRoom(compiled, chamber),
    plugM3: slotVolume(compiled, way),
    pores: way.beds.map((bed) => ({
      bed,
      volumeM3: waterInBed(compiled, compiled.beds[bed]!),
    })),
  };
};

/** Measures the filter's water. */
export const waterBodies = (compiled: Compiled): WaterBodies => {
  const { filter } = compiled.model;
  const { layout } = compiled;
  const spacesM3 = compiled.spaces.map((id) => {
    const space = layout.spaces.find((one) => one.id === id);
    return space === undefined ? 0 : spaceVolume(layout, space);
  });
  const ways = compiled.ways.map((way) => wayBodies(compiled, way));
  const hosesM3 = runVolume(filter.intake) + runVolume(filter.outlet);
  const onWays = ways.map(
    ({ mixedM3, plugM3, pores }) => mixedM3 + plugM3 + sum(pores.map((p) => p.volumeM3)),
  );
  return { hosesM3, spacesM3, ways, totalM3: hosesM3 + sum(spacesM3) + sum(onWays) };
};

/** The stretches of a way at the flows of the last solve, those of no volume left out. */
export const stretchesOf = (compiled: Compiled, bodies: WayBodies, way: Way): readonly Stretch[] => {
  const { network, water } = compiled;
  const flow = network.flow[way.link]!;
  const beds = bodies.pores.map(({ bed: place, volumeM3 }): Stretch => {
    const bed = compiled.beds[place]!;
    const through = network.flow[bed.link]!;
    const tanks = tanksOfBed({
      velocityMPerS: through / bed.areaM2,
      sizeM: bed.mixingLengthM,
      voidage: bed.voidage,
      kinematicViscosityM2PerS: water.kinematicViscosityM2PerS,
      depthM: bed.depthM,
    });
    return { kind: 'tanks', meanS: volumeM3 / through, tanks };
  });
  const slot: Stretch = { kind: 'plug', meanS: bodies.plugM3 / flow };
  const room: Stretch = { kind: 'mixed', meanS: bodies.mixedM3 / flow };
  return [slot, ...beds, room].filter(({ meanS }) => meanS > 0);
};
