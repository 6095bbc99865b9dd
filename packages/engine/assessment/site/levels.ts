import type { GravityFed, OpenSection, Weir } from '../../families/layout.ts';
import type { Compiled } from '../compiled.ts';
import { filterFlow } from '../dirt/transport.ts';
import type { BoxLevels, Spill, WaterLevel } from './site.ts';

const levelOver = ({ layout, network }: Compiled, space: string): number =>
  (network.nodeHead[network.topology.nodes.indexOf(space)] ?? Number.NEGATIVE_INFINITY) -
  layout.gravityFed!.floorHeightM;

/** Level of a section while the pump runs, m over the floor: never below what stays in it when nothing flows. */
const runningIn = (compiled: Compiled, { space, restLevelM }: OpenSection): number =>
  Math.max(restLevelM, levelOver(compiled, space));

/** Water that an open box under the tank can take up on top of what stands in it while the pump runs, m³. */
export const roomInBox = (compiled: Compiled): number | undefined => {
  const { gravityFed } = compiled.layout;
  return gravityFed?.sections.reduce(
    (room, section) =>
      room + section.areaM2 * Math.max(0, gravityFed.wallHeightM - runningIn(compiled, section)),
    0,
  );
};

/**
 * Level that water rises to over the rest levels of all sections, m over the floor: the lowest fills first, and where one
 * stands at the next's edge they rise together. It ends at the walls.
 */
const filledTo = ({ sections, wallHeightM }: GravityFed, volumeM3: number): number => {
  let left = volumeM3;
  let levelM = Math.min(...sections.map(({ restLevelM }) => restLevelM));
  const steps = [...sections.map(({ restLevelM }) => restLevelM), wallHeightM].toSorted((a, b) => a - b);
  for (const stepM of steps) {
    const areaM2 = sections.reduce(
      (sum, { restLevelM, areaM2: area }) => sum + (restLevelM <= levelM ? area : 0),
      0,
    );
    const takes = areaM2 * (stepM - levelM);
    if (left < takes) return levelM + left / areaM2;
    left -= takes;
    levelM = stepM;
  }
  return wallHeightM;
};

/** What comes down when the pump stops: from the tank, and what stands in the sections above their rest, m³. */
const comesDown = (compiled: Compiled, spills: readonly Spill[]): number | undefined => {
  const { placing } = compiled.model.filter;
  if (!placing || compiled.model.tank.surfaceM2 === undefined) return undefined;
  const fromTank = spills.find(({ cause }) => cause === 'power-fails')?.volumeM3 ?? 0;
  return compiled.layout.gravityFed!.sections.reduce(
    (sum, section) => sum + section.areaM2 * (runningIn(compiled, section) - section.restLevelM),
    fromTank,
  );
};

const edgeOf = (weir: Weir | undefined, { floorHeightM, wallHeightM }: GravityFed) =>
  weir === undefined ? { edgeM: wallHeightM } : { edgeM: weir.crestHeightM - floorHeightM, over: weir.id };

/** The levels in an open box under the tank at the last solve; none without one, and where no water flows. */
export const boxLevelsOf = (compiled: Compiled, spills: readonly Spill[]): BoxLevels | undefined => {
  const { layout, model } = compiled;
  const { gravityFed, weirs, inletSpace } = layout;
  if (!gravityFed || filterFlow(compiled) <= 0) return undefined;
  const overflows = weirs.filter(({ purpose, from }) => purpose === 'overflow' && from !== inletSpace);
  const downM3 = comesDown(compiled, spills);
  const stoppedM = downM3 === undefined ? undefined : filledTo(gravityFed, downM3);
  const inSections = gravityFed.sections.map(
    (section): WaterLevel => ({
      space: section.space,
      runningM: runningIn(compiled, section),
      ...(stoppedM === undefined ? {} : { stoppedM: Math.max(section.restLevelM, stoppedM) }),
      ...edgeOf(
        overflows.find(({ from }) => from === section.space),
        gravityFed,
      ),
    }),
  );
  const above = overflows
    .filter(({ from }) => gravityFed.sections.every(({ space }) => space !== from))
    .map(
      (weir): WaterLevel => ({
        space: weir.from,
        runningM: levelOver(compiled, weir.from),
        ...edgeOf(weir, gravityFed),
      }),
    );
  const roomM3 = model.filter.placing?.spareM3 ?? roomInBox(compiled)!;
  const fromTank = spills.find(({ cause }) => cause === 'power-fails')?.volumeM3 ?? 0;
  return {
    levels: [...above, ...inSections],
    roomM3,
    ...(downM3 === undefined ? {} : { roomStoppedM3: roomM3 - fromTank }),
  };
};
