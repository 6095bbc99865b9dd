import type { Layout } from '../../families/layout.ts';
import { quantity } from '../../wording/facts.ts';
import { type Fact, type Said, said } from '../../wording/said.ts';
import type { BoxLevels, Jet, Site, Spill, WaterLevel } from './site.ts';

const spillSaid = (spill: Spill): Said => {
  const { cause, volumeM3, fallM, endedBy, flowM3PerS, timeS, spareM3 } = spill;
  const isTimed = flowM3PerS !== undefined && timeS !== undefined;
  return said(`site.spill${isTimed ? '.timed' : ''}${spareM3 === undefined ? '' : '.room'}`, {
    cause: said(`site.cause.${cause}`),
    volume: quantity(volumeM3, 'volume'),
    fall: quantity(fallM, 'length'),
    end: said(`site.ends.${endedBy}`),
    ...(isTimed ? { flow: quantity(flowM3PerS, 'flow'), time: { durationS: timeS } } : {}),
    ...(spareM3 === undefined ? {} : { room: quantity(spareM3, 'volume') }),
  });
};

const jetSaid = ({ outlet, boreM, velocityMPerS, standsMPerS, standsAssumed, reachM }: Jet): Said => {
  const stands = quantity(standsMPerS, 'velocity');
  return said(reachM === 0 ? 'site.jet.slow' : 'site.jet', {
    outlet:
      outlet === 'outlet'
        ? said('site.outlet')
        : said('site.outlet.of-several', { number: outlet.replace('outlet-', '') }),
    bore: quantity(boreM, 'length'),
    speed: quantity(velocityMPerS, 'velocity'),
    stands: standsAssumed ? said('site.stands.assumed', { stands }) : stands,
    ...(reachM === 0 ? {} : { reach: quantity(reachM, 'length') }),
  });
};

/** Water on the floor, and current in the tank, one sentence each. */
export const siteSaid = ({ spills, jets }: Site): readonly Said[] => [
  ...spills.map(spillSaid),
  ...jets.map(jetSaid),
];

/** Room that is left in an open box: while the pump runs, and once all has come down. */
export const roomSaid = ({ roomM3, roomStoppedM3 }: BoxLevels): Said => {
  const room = quantity(roomM3, 'volume');
  if (roomStoppedM3 === undefined) return said('site.room', { room });
  return roomStoppedM3 < 0
    ? said('site.room.over', { room, over: quantity(-roomStoppedM3, 'volume') })
    : said('site.room.left', { room, left: quantity(roomStoppedM3, 'volume') });
};

/** The space of a level, by its name. */
export const levelPlace = ({ spaces }: Pick<Layout, 'spaces'>, { space }: WaterLevel): Fact => ({
  name: spaces.find(({ id }) => id === space)?.label ?? space,
});

/** What water runs over next where a level rises: the edge of its way, or the walls of the box. */
export const levelEdge = ({ weirs }: Pick<Layout, 'weirs'>, { over }: WaterLevel): Fact =>
  over === undefined ? said('site.edge.walls') : { name: weirs.find(({ id }) => id === over)?.label ?? over };
