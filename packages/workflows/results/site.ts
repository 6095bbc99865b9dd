import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { BoxLevels } from '@fettle/engine/assessment/site/site.ts';
import { z } from 'zod';
import { figure, figureSchema } from './figures.ts';

/** Leak side, water on the floor and current, as results carry them. */
export const siteSchema = z
  .strictObject({
    pressures: z
      .array(
        z.strictObject({
          part: z.enum(['intake-hump', 'housing', 'pump-inlet', 'pump-outlet', 'outlet-hump']),
          height: figureSchema.meta({ description: 'Height above the tank’s surface.' }),
          pressure: figureSchema.meta({ description: 'Pressure against the air outside.' }),
          leaks: z.enum(['water-out', 'air-in', 'neither']),
        }),
      )
      .meta({ description: 'Which parts stand above and below the air’s pressure; empty without heights.' }),
    spills: z
      .array(
        z.strictObject({
          cause: z.enum([
            'intake-hose-off',
            'outlet-hose-off-running',
            'outlet-hose-off-stopped',
            'power-fails',
          ]),
          volume: figureSchema,
          fall: figureSchema.meta({ description: 'Fall of the tank’s surface.' }),
          endedBy: z.enum(['hole', 'mouth', 'edge']),
          flow: figureSchema.optional(),
          time: figureSchema.optional(),
          spare: figureSchema.optional().meta({ description: 'Water that sump or tray can take up.' }),
        }),
      )
      .meta({ description: 'Water that leaves the tank when something goes wrong; empty without heights.' }),
    jets: z.array(
      z.strictObject({
        outlet: z.string(),
        bore: figureSchema,
        velocity: figureSchema,
        stands: figureSchema.meta({ description: 'Current that the weakest swimmers stand for long.' }),
        standsAssumed: z.boolean().meta({ description: 'True where that is a prior, from memory.' }),
        reach: figureSchema.meta({ description: 'How far the jet’s middle is faster than that.' }),
      }),
    ),
    box: z
      .strictObject({
        levels: z.array(
          z.strictObject({
            space: z.string().meta({ description: 'Where the water stands.' }),
            running: figureSchema.meta({ description: 'Over the floor of the box while the pump runs.' }),
            stopped: figureSchema.optional().meta({
              description:
                'The same once all has come down; absent where it runs empty, and where what comes down is not known.',
            }),
            edge: figureSchema.meta({ description: 'The edge that it runs over next, over the floor.' }),
            over: z
              .string()
              .optional()
              .meta({ description: 'That edge; the walls of the box where absent.' }),
          }),
        ),
        room: figureSchema.meta({ description: 'Water that it takes up on top of the running levels.' }),
        roomStopped: figureSchema.optional().meta({
          description: 'What is left of that once all has come down; below 0 where it runs onto the floor.',
        }),
      })
      .optional()
      .meta({ description: 'Levels in an open box under the tank.' }),
  })
  .meta({ description: 'What hoses, heights and outlets mean for room and tank, with clean media.' });

const toBox = ({ levels, roomM3, roomStoppedM3 }: BoxLevels) => ({
  levels: levels.map(({ space, runningM, stoppedM, edgeM, over }) => ({
    space,
    running: figure(runningM, 'm'),
    ...(stoppedM === undefined ? {} : { stopped: figure(stoppedM, 'm') }),
    edge: figure(edgeM, 'm'),
    ...(over === undefined ? {} : { over }),
  })),
  room: figure(roomM3, 'L'),
  ...(roomStoppedM3 === undefined ? {} : { roomStopped: figure(roomStoppedM3, 'L') }),
});

/** The site as results carry it. */
export const toSite = ({ site }: Assessment): z.infer<typeof siteSchema> => ({
  pressures: site.pressures.map(({ part, heightM, gaugePa, leaks }) => ({
    part,
    height: figure(heightM, 'm'),
    pressure: figure(gaugePa, 'Pa'),
    leaks,
  })),
  spills: site.spills.map(({ cause, volumeM3, fallM, endedBy, flowM3PerS, timeS, spareM3 }) => ({
    cause,
    volume: figure(volumeM3, 'L'),
    fall: figure(fallM, 'm'),
    endedBy,
    ...(flowM3PerS === undefined ? {} : { flow: figure(flowM3PerS, 'L/h') }),
    ...(timeS === undefined ? {} : { time: figure(timeS, 's') }),
    ...(spareM3 === undefined ? {} : { spare: figure(spareM3, 'L') }),
  })),
  jets: site.jets.map(({ outlet, boreM, velocityMPerS, standsMPerS, standsAssumed, reachM }) => ({
    outlet,
    bore: figure(boreM, 'm'),
    velocity: figure(velocityMPerS, 'm/s'),
    stands: figure(standsMPerS, 'm/s'),
    standsAssumed,
    reach: figure(reachM, 'm'),
  })),
  ...(site.box === undefined ? {} : { box: toBox(site.box) }),
});
