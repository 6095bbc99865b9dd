import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { packedStates } from '@fettle/job/packedStates.ts';
import { z } from 'zod';
import type { AssessedJob } from '../assessJob.ts';
import { assumedSchema, toAssumed } from './assumed.ts';
import { balanceSchema, toBalance } from './balance.ts';
import { carriesSchema, type Ranged, rangedBy, toCarries } from './carries.ts';
import { claimSchema, toClaims } from './claims.ts';
import { costSchema, toCost } from './cost.ts';
import { doubtSchema, toDoubt } from './doubt.ts';
import { effectSchema, toEffect } from './effect.ts';
import { figure, figureSchema } from './figures.ts';
import { dyeSchema, residenceFiguresSchema, toDye, toResidenceFigures } from './residence.ts';
import { siteSchema, toSite } from './site.ts';

const bedSchema = z.strictObject({
  id: z.string(),
  chamber: z.string(),
  medium: z.string(),
  stage: z.enum(['mechanical', 'biological', 'chemical']),
  depth: figureSchema,
  volume: figureSchema,
  flow: figureSchema,
  velocity: figureSchema,
  contactTime: figureSchema,
  head: figureSchema,
  dirt: figureSchema.meta({ description: 'Dry solids held.' }),
  filled: figureSchema.meta({ description: 'Share of the pores that deposit fills.' }),
  catch: figureSchema.meta({
    description: 'Share of the solids that reach the filter which stays here in one pass.',
  }),
  carbonFactor: figureSchema,
  cleaningFactor: figureSchema,
  oxidised: figureSchema,
});

export const assessmentSchema = z.strictObject({
  edition: z.string().meta({ description: 'Edition of the models.' }),
  state: z
    .enum(packedStates)
    .meta({ description: 'Which packing of the job this is: the one found, the one chosen, the one built.' }),
  assumed: z
    .array(assumedSchema)
    .meta({ description: 'What the job did not state, and what was taken instead.' }),
  notes: z.array(z.strictObject({ code: z.string(), path: z.string(), says: z.string() })),
  dutyPoint: z.strictObject({ flow: figureSchema, head: figureSchema }),
  headBudget: z.array(
    z.strictObject({ part: z.string(), place: z.string(), head: figureSchema, share: figureSchema }),
  ),
  routes: z.array(
    z.strictObject({
      id: z.string(),
      share: figureSchema,
      beds: z.array(z.string()),
      past: z.array(z.string()),
      contactTime: figureSchema.meta({ description: 'Time in the pores of the beds.' }),
    }),
  ),
  residence: residenceFiguresSchema.optional().meta({
    description: 'How long water is under way through the filter with clean media; absent where none flows.',
  }),
  bypass: z.strictObject({ mechanical: figureSchema, biological: figureSchema, chemical: figureSchema }),
  turnover: figureSchema,
  beds: z
    .array(bedSchema)
    .meta({ description: 'In water order, on day 60 after cleaning, or the day asked for.' }),
  carries: carriesSchema.extend({ clean: carriesSchema, intervalEnd: carriesSchema }),
  cleaningInterval: figureSchema.extend({ beyond: z.boolean() }),
  cleaning: z.strictObject({
    endedBy: z.enum(['bed-flow', 'overflow', 'none']),
    overfedFrom: figureSchema
      .optional()
      .meta({ description: 'From when the tank’s feed is more than what is carried, within the interval.' }),
    place: z.string().optional(),
    flowRatio: figureSchema,
    cleanedEachTime: z.array(z.string()),
  }),
  orderShares: z
    .strictObject({
      clogging: figureSchema,
      carbon: figureSchema,
      decay: figureSchema,
      cleaning: figureSchema,
    })
    .meta({ description: 'By what share the feed carried would rise without each way in which dirt works.' }),
  site: siteSchema,
  tank: balanceSchema.optional().meta({
    description: 'Where the whole tank settles at its stated feed; absent where it was not asked for.',
  }),
  solids: z.strictObject({ tank: figureSchema, caught: figureSchema }),
  uses: z.strictObject({ alkalinity: figureSchema, oxygen: figureSchema }),
  chemical: z
    .array(
      z.strictObject({
        bed: z.string(),
        substance: z.string(),
        capacity: figureSchema,
        open: figureSchema.meta({ description: 'Share of the capacity that dirt leaves open.' }),
        taken: figureSchema.meta({ description: 'Share of what the tank makes that it takes while fresh.' }),
        lasts: figureSchema.optional().meta({ description: 'Absent where nothing comes to it.' }),
      }),
    )
    .meta({
      description:
        'Chemical beds on day 60 after cleaning, or the day asked for; capacities as N, P, C or CaCO3.',
    }),
  cost: costSchema,
  tests: z.array(
    z.strictObject({
      id: z.string(),
      kind: z.string(),
      state: z.string(),
      measured: figureSchema,
      doubt: figureSchema,
      computed: figureSchema.optional(),
      verdict: z.enum(['agrees', 'differs', 'below-clean', 'below-dirty', 'not-compared']),
      used: z.boolean().meta({ description: 'True where the models go by what was measured.' }),
    }),
  ),
  dye: z
    .array(dyeSchema)
    .optional()
    .meta({ description: 'Dye tests beside what the map says at their flow; absent without any.' }),
  claims: z.array(claimSchema),
  findings: z.array(
    z.strictObject({
      id: z.string(),
      severity: z.enum(['grave', 'marked', 'slight', 'note', 'strength']),
      place: z.string(),
      says: z.string(),
      effect: effectSchema.optional(),
      cure: z.string(),
    }),
  ),
  warnings: z.array(z.strictObject({ code: z.string(), place: z.string(), says: z.string() })),
  doubt: doubtSchema.optional().meta({
    description: 'How sure the figures are, and what to measure next; absent where none was drawn.',
  }),
});

export type AssessmentResult = z.infer<typeof assessmentSchema>;

const toBeds = (assessment: Assessment): AssessmentResult['beds'] =>
  assessment.beds.map((bed) => ({
    id: bed.id,
    chamber: bed.chamber,
    medium: bed.medium,
    stage: bed.stage,
    depth: figure(bed.depthM, 'm'),
    volume: figure(bed.volumeM3, 'L'),
    flow: figure(bed.flowM3PerS, 'L/h'),
    velocity: figure(bed.velocityMPerS, 'm/s'),
    contactTime: figure(bed.contactTimeS, 's'),
    head: figure(bed.headM, 'm'),
    dirt: figure(bed.dirtKg, 'g'),
    filled: figure(bed.dirtFraction, '1'),
    catch: figure(bed.catchFraction, '1'),
    carbonFactor: figure(bed.carbonFactor, '1'),
    cleaningFactor: figure(bed.cleaningFactor, '1'),
    oxidised: figure(bed.oxidisedKgNPerS, 'g/d'),
  }));

const toWater = (
  assessment: Assessment,
  ranged: Ranged,
): Pick<AssessmentResult, 'dutyPoint' | 'headBudget' | 'routes' | 'bypass' | 'turnover'> => ({
  dutyPoint: {
    flow: ranged(assessment.dutyPoint.flowM3PerS, 'L/h', 'flowM3PerS'),
    head: ranged(assessment.dutyPoint.headM, 'm', 'headM'),
  },
  headBudget: assessment.headBudget.map(({ part, place, headM, share }) => ({
    part,
    place,
    head: figure(headM, 'm'),
    share: figure(share, '1'),
  })),
  routes: assessment.routes.map(({ id, share, beds, past, contactTimeS }) => ({
    id,
    share: figure(share, '1'),
    beds: [...beds],
    past: [...past],
    contactTime: figure(contactTimeS, 's'),
  })),
  bypass: {
    mechanical: ranged(assessment.bypass.mechanical, '1', 'bypassMechanical'),
    biological: ranged(assessment.bypass.biological, '1', 'bypassBiological'),
    chemical: figure(assessment.bypass.chemical, '1'),
  },
  turnover: ranged(assessment.turnoverPerS, '1/h', 'turnoverPerS'),
});

const toCleaning = (
  { cleaning }: Assessment,
  ranged: Ranged,
): Pick<AssessmentResult, 'cleaningInterval' | 'cleaning'> => ({
  cleaningInterval: { ...ranged(cleaning.timeS, 'd', 'intervalS'), beyond: cleaning.beyond },
  cleaning: {
    endedBy: cleaning.endedBy,
    ...(cleaning.place === undefined ? {} : { place: cleaning.place }),
    ...(cleaning.overfedFromS === undefined ? {} : { overfedFrom: figure(cleaning.overfedFromS, 'd') }),
    flowRatio: figure(cleaning.flowRatio, '1'),
    cleanedEachTime: [...cleaning.cleanedEachTime],
  },
});

const toChemical = ({ chemical }: Assessment): AssessmentResult['chemical'] =>
  chemical.map(({ bed, substance, capacityKg, openFraction, takenFraction, lastsS }) => ({
    bed,
    substance,
    capacity: figure(capacityKg, 'g'),
    open: figure(openFraction, '1'),
    taken: figure(takenFraction, '1'),
    ...(Number.isFinite(lastsS) ? { lasts: figure(lastsS, 'd') } : {}),
  }));

const TEST_UNITS = { 'timed-volume': 'L/h', power: 'W', 'shutoff-head': 'm', displacement: 'L' } as const;

const toTests = ({ comparisons }: AssessedJob): AssessmentResult['tests'] =>
  comparisons.map(({ test, measured, doubt, computed, verdict, used }) => {
    const unit = TEST_UNITS[test.kind];
    return {
      id: test.id,
      kind: test.kind,
      state: test.state,
      measured: figure(measured, unit),
      doubt: figure(doubt, unit),
      ...(computed === undefined ? {} : { computed: figure(computed, unit) }),
      verdict,
      used,
    };
  });

/** The result of `assess` as it leaves, described by `assessmentSchema`. */
export const toAssessmentResult = (
  job: AssessedJob,
  notes: AssessmentResult['notes'] = [],
  system: System = 'metric',
): AssessmentResult => {
  const { assessment } = job;
  const ranged = rangedBy(job);
  const { carries, orderShares, solids, uses } = assessment;
  return {
    edition: assessment.edition,
    state: job.model.packedState ?? 'as-found',
    assumed: toAssumed(job.model),
    notes: [...notes],
    ...toWater(assessment, ranged),
    ...(job.residence === undefined ? {} : { residence: toResidenceFigures(job.residence) }),
    beds: toBeds(assessment),
    carries: {
      ...toCarries(carries.day, 'day', ranged),
      clean: toCarries(carries.clean, 'clean', ranged),
      intervalEnd: toCarries(carries.intervalEnd, 'intervalEnd', ranged),
    },
    ...toCleaning(assessment, ranged),
    orderShares: {
      clogging: figure(orderShares.clogging, '1'),
      carbon: figure(orderShares.carbon, '1'),
      decay: figure(orderShares.decay, '1'),
      cleaning: figure(orderShares.cleaning, '1'),
    },
    site: toSite(assessment),
    ...(job.tank === undefined ? {} : { tank: toBalance(job.tank, system) }),
    solids: { tank: figure(solids.tankKgPerM3, 'mg/L'), caught: figure(solids.caughtFraction, '1') },
    uses: { alkalinity: figure(uses.alkalinityKgPerS, 'g/d'), oxygen: figure(uses.oxygenKgPerS, 'g/d') },
    chemical: toChemical(assessment),
    cost: toCost(assessment),
    tests: toTests(job),
    ...(job.dye === undefined ? {} : { dye: job.dye.map(toDye) }),
    claims: toClaims(job.claims),
    findings: job.findings.map(({ effect, said: _, cureSaid: __, ...finding }) => ({
      ...finding,
      ...(effect ? { effect: toEffect(effect) } : {}),
    })),
    warnings: assessment.warnings.map(({ said: _, ...warning }) => warning),
    ...(job.doubts === undefined ? {} : { doubt: toDoubt(job.doubts, job.model, system) }),
  };
};
