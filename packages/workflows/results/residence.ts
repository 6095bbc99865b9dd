import type { DyeComparison } from '@fettle/engine/assessment/residence/dye.ts';
import type {
  Residence,
  ResidenceCurve,
  ResidenceFigures,
} from '@fettle/engine/assessment/residence/residence.ts';
import { residenceSaid } from '@fettle/engine/assessment/residence/residenceSaid.ts';
import type { ResidenceSummary } from '@fettle/engine/laws/residence/routes.ts';
import { said } from '@fettle/engine/wording/said.ts';
import { packedStates } from '@fettle/job/packedStates.ts';
import { z } from 'zod';
import { figure, figureSchema } from './figures.ts';
import { saysSchema, toSays } from './says.ts';

const timesSchema = z.strictObject({
  mean: figureSchema,
  deviation: figureSchema.meta({ description: 'Root of the variance of the times.' }),
  t10: figureSchema.meta({ description: 'Time by which a tenth of the water has come through.' }),
  t50: figureSchema,
  t90: figureSchema,
  morrill: figureSchema.meta({ description: 't90 over t10: 1 is plug flow, 21.9 one mixed vessel.' }),
});

/** How long water stays in the filter, without the curves. */
export const residenceFiguresSchema = timesSchema.extend({
  volume: figureSchema.meta({ description: 'Water in hoses, spaces and pores between pieces.' }),
  hoses: figureSchema.meta({ description: 'Water in the hoses.' }),
  hosesTime: figureSchema,
  dead: figureSchema.meta({ description: 'Share of that water which none passes through, by the map.' }),
});

export const dyeSchema = z.strictObject({
  id: z.string(),
  state: z.string(),
  measured: timesSchema,
  doubt: timesSchema.meta({ description: 'Half-widths at 95 %.' }),
  computed: timesSchema.optional(),
  dead: figureSchema
    .optional()
    .meta({ description: 'Share of the water that stands still, by mean against volume over flow.' }),
  cutOff: z.boolean().meta({ description: 'True where the readings end before the colour is gone.' }),
});

const pointSchema = z.strictObject({
  time: figureSchema,
  density: figureSchema.meta({ description: 'E: share of the water that comes through per second.' }),
  share: figureSchema.meta({ description: 'F: share of the water that has come through.' }),
});

const curvesSchema = residenceFiguresSchema.extend({
  flow: figureSchema,
  points: z.array(pointSchema),
  routes: z.array(timesSchema.extend({ id: z.string(), share: figureSchema, points: z.array(pointSchema) })),
});

export const residenceSchema = z.strictObject({
  edition: z.string().meta({ description: 'Edition of the models.' }),
  state: z.enum(packedStates),
  residence: curvesSchema.optional().meta({ description: 'Absent where no water flows.' }),
  says: saysSchema.meta({ description: 'What matters of it, and what it goes by.' }),
});

export type ResidenceResult = z.infer<typeof residenceSchema>;

const toTimes = (summary: ResidenceSummary): z.infer<typeof timesSchema> => ({
  mean: figure(summary.meanS, 's'),
  deviation: figure(Math.sqrt(summary.varianceS2), 's'),
  t10: figure(summary.t10S, 's'),
  t50: figure(summary.t50S, 's'),
  t90: figure(summary.t90S, 's'),
  morrill: figure(summary.morrillIndex, '1'),
});

/** A dye test as it leaves. */
export const toDye = (one: DyeComparison): z.infer<typeof dyeSchema> => ({
  id: one.test.id,
  state: one.test.state,
  measured: toTimes(one.measured),
  doubt: toTimes(one.doubt),
  ...(one.computed === undefined ? {} : { computed: toTimes(one.computed) }),
  ...(one.deadShare === undefined ? {} : { dead: figure(one.deadShare, '1') }),
  cutOff: one.isCutOff,
});

/** The figures of the times as they leave with an assessment. */
export const toResidenceFigures = (residence: ResidenceFigures): z.infer<typeof residenceFiguresSchema> => ({
  ...toTimes(residence.whole),
  volume: figure(residence.volumeM3, 'L'),
  hoses: figure(residence.hosesM3, 'L'),
  hosesTime: figure(residence.hosesS, 's'),
  dead: figure(residence.deadShare, '1'),
});

const toPoints = ({ points }: ResidenceCurve): z.infer<typeof pointSchema>[] =>
  points.map(({ timeS, densityPerS, share }) => ({
    time: figure(timeS, 's'),
    density: figure(densityPerS, '1/s'),
    share: figure(share, '1'),
  }));

const toCurves = (residence: Residence): z.infer<typeof curvesSchema> => ({
  ...toResidenceFigures(residence),
  flow: figure(residence.flowM3PerS, 'L/h'),
  points: toPoints(residence.whole),
  routes: residence.routes.map((route) => ({
    id: route.id,
    share: figure(route.share, '1'),
    ...toTimes(route),
    points: toPoints(route),
  })),
});

/** The result of `residence` as it leaves, described by `residenceSchema`. */
export const toResidenceResult = (
  residence: Residence | undefined,
  of: Omit<ResidenceResult, 'residence' | 'says'>,
): ResidenceResult =>
  residence === undefined
    ? { ...of, says: [] }
    : {
        ...of,
        residence: toCurves(residence),
        says: toSays([...residenceSaid(residence), said('residence.basis')]),
      };
