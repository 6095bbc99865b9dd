import type { Assessment, Finding, HeadShare } from '@fettle/engine/assessment/assessment.ts';
import { familyById } from '@fettle/engine/families/families.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { type Output, type Print, printer, share } from '../output.ts';
import { printAssumed } from './assumed.ts';
import { heading, labelled, table, wrap } from './layout.ts';

const placeName = (assessment: Assessment, id: string): string => {
  const { chambers, openings, leaks, weirs } = assessment.layout;
  return [...chambers, ...openings, ...leaks, ...weirs].find((one) => one.id === id)?.label ?? id;
};

const bedName = (job: AssessedJob, id: string): string => {
  const bed = job.assessment.beds.find((one) => one.id === id);
  return bed ? job.model.media[bed.medium]!.name : id;
};

const interval = (assessment: Assessment, print: Print): string =>
  assessment.cleaning.beyond ? 'more than a year' : print(assessment.cleaning.timeS, 'time');

const days = (timeS: number): string => `${Number((timeS / 86_400).toPrecision(3))} days`;

const LIMITS = {
  area: 'by the area open to bacteria',
  flow: 'by the flow',
  oxygen: 'by the oxygen left in the water',
  alkalinity: 'by the water’s pH and alkalinity',
  nitrite: 'by nitrite, the second step of the bacteria',
  'ammonia-toxicity': 'by un-ionized ammonia, at this pH',
  none: 'by nothing',
} as const;

const summary = ({ assessment }: AssessedJob, print: Print): string => {
  const { dutyPoint, carries, turnoverPerS } = assessment;
  const { day } = carries;
  const turnover = `${Number((turnoverPerS * 3600).toPrecision(2))} times an hour`;
  return [
    wrap(
      `Clean, ${print(dutyPoint.flowM3PerS, 'flow')} flows at ${print(dutyPoint.headM, 'length')} of head: the tank ${turnover}.`,
    ),
    wrap(
      `${days(day.dayS)} after cleaning it carries ${print(day.feedKgPerS, 'mass-rate')} of dry feed: ${print(day.servedM3.normal, 'volume')} at a normal stock (light ${print(day.servedM3.light, 'volume')}, heavy ${print(day.servedM3.heavy, 'volume')}), bound ${LIMITS[day.bindingLimit]}. Clean it carries ${print(carries.clean.feedKgPerS, 'mass-rate')}.`,
    ),
    wrap(
      `It wants cleaning after ${interval(assessment, print)}${assessment.cleaning.beyond ? '' : `; ${ending(assessment)}`}.`,
    ),
  ].join('\n');
};

const ending = (assessment: Assessment): string => {
  const { endedBy, place, flowRatio } = assessment.cleaning;
  const flow = `the flow at the tank is then ${share(flowRatio)} of clean`;
  if (endedBy === 'limit') return `from then on the tank's feed is more than it carries, and ${flow}`;
  const what =
    endedBy === 'overflow'
      ? `${placeName(assessment, place ?? '')} opens`
      : `${place} lets a third less water through`;
  return `${what}, and ${flow}`;
};

const routes = (job: AssessedJob): string => {
  const rows = job.assessment.routes.map((route) => [
    route.id,
    share(route.share),
    route.id === 'rest'
      ? 'many small ways'
      : [
          ...route.beds.map((id) => bedName(job, id)),
          ...route.past.map((id) => `past ${placeName(job.assessment, id.replace(/^gap:/, ''))}`),
        ].join(', ') || 'no media',
    route.contactTimeS > 0 ? `${Number(route.contactTimeS.toPrecision(2))} s` : '-',
  ]);
  const columns = [
    { head: 'route', width: 9 },
    { head: 'share', width: 7, align: 'right' },
    { head: 'meets', width: 46 },
    { head: 'contact', width: 9, align: 'right' },
  ] as const;
  return table(columns, rows);
};

const PARTS: Readonly<Record<HeadShare['part'], string>> = {
  'intake-hose': 'intake hose',
  'outlet-hose': 'outlet hose',
  fittings: 'fittings, entrance and exit',
  barbs: 'barbs',
  openings: 'openings inside',
  beds: 'clean beds',
  lift: 'lift',
};

const headBudget = ({ headBudget: budget }: Assessment, print: Print): string => {
  const parts = Object.entries(PARTS).flatMap(([part, label]) => {
    const entries = budget.filter((entry) => entry.part === part);
    if (entries.length === 0) return [];
    const head = entries.reduce((sum, entry) => sum + entry.headM, 0);
    const of = entries.reduce((sum, entry) => sum + entry.share, 0);
    return [[label, print(head, 'length'), share(of)]];
  });
  const columns = [
    { head: 'where the head goes', width: 30 },
    { head: 'head', width: 12, align: 'right' },
    { head: 'share', width: 9, align: 'right' },
  ] as const;
  return table(columns, parts);
};

const beds = (job: AssessedJob, print: Print): string => {
  const rows = job.assessment.beds.map((bed) => [
    bed.id,
    `${bed.stage[0]!.toUpperCase()} ${job.model.media[bed.medium]!.name}`,
    print(bed.depthM, 'length'),
    print(bed.velocityMPerS, 'velocity'),
    share(bed.catchFraction),
    share(bed.dirtFraction),
    share(bed.carbonFactor * bed.cleaningFactor),
  ]);
  const columns = [
    { head: 'bed', width: 11 },
    { head: 'medium', width: 19 },
    { head: 'depth', width: 7, align: 'right' },
    { head: 'speed', width: 11, align: 'right' },
    { head: 'catch', width: 7, align: 'right' },
    { head: 'filled', width: 6, align: 'right' },
    { head: 'life', width: 6, align: 'right' },
  ] as const;
  return table(columns, rows);
};

const change = (finding: Finding, print: Print): string => {
  if (!finding.effect) return '';
  const { flow, feed, cleaningInterval } = finding.effect;
  const until = (time: number, beyond: boolean): string =>
    beyond ? 'more than a year' : print(time, 'time');
  return (
    ` With only this cured: flow ${print(flow.beforeM3PerS, 'flow')} -> ${print(flow.afterM3PerS, 'flow')}, ` +
    `feed ${print(feed.beforeKgPerS, 'mass-rate')} -> ${print(feed.afterKgPerS, 'mass-rate')}, ` +
    `cleaning after ${until(cleaningInterval.beforeS, cleaningInterval.beforeBeyond)} -> ${until(cleaningInterval.afterS, cleaningInterval.afterBeyond)}.`
  );
};

const findings = (job: AssessedJob, print: Print): string =>
  job.findings
    .map((finding) => {
      const cure = finding.severity === 'strength' ? '' : ` Cure: ${finding.cure}`;
      return labelled(finding.severity, `${finding.says}${change(finding, print)}${cure}`, 9);
    })
    .join('\n');

const shares = ({ orderShares }: Assessment): string =>
  wrap(
    `Why the order matters here: without clogging it would carry ${signed(orderShares.clogging)}, without organic carbon on the bacteria ${signed(orderShares.carbon)}, without ammonia from rotting dirt ${signed(orderShares.decay)}, without bacteria lost at cleaning ${signed(orderShares.cleaning)}.`,
  );

const signed = (value: number): string => `${value >= 0 ? '+' : ''}${Math.round(100 * value)} %`;

const chemical = (job: AssessedJob, print: Print): string =>
  job.assessment.chemical
    .map(({ bed, substance, capacityKg, openFraction, takenFraction, lastsS }) => {
      const lasts = Number.isFinite(lastsS) ? `full after ${print(lastsS, 'time')}` : 'never full here';
      return wrap(
        `${bed}, ${bedName(job, bed)}: ${lasts} (holds ${print(capacityKg, 'mass')} of ${substance.replace('-', ' ')}, dirt leaves ${share(openFraction)} open, takes ${share(takenFraction)} of what the tank makes); within a factor of three.`,
        2,
      );
    })
    .join('\n');

const cost = ({ cost: money }: Assessment): string => {
  const sum = (value: number): string => `${value.toFixed(2)} ${money.currency}`;
  const kilowattHours = Math.round(money.energyJPerYear / 3.6e6);
  return wrap(
    `Running it costs ${sum(money.perYear)} a year: electricity ${sum(money.energyPerYear)} (${kilowattHours} kWh), media ${sum(money.mediaPerYear)}, price spread over its life ${sum(money.pricePerYear)}.`,
  );
};

const tests = (job: AssessedJob, print: Print): string => {
  const dimension = {
    'timed-volume': 'flow',
    power: 'power',
    'shutoff-head': 'length',
    displacement: 'volume',
  } as const;
  return job.comparisons
    .map(({ test, measured, doubt, computed, verdict, used }) => {
      const kind = dimension[test.kind];
      const ours = computed === undefined ? 'not computed' : print(computed, kind);
      return wrap(
        `${test.kind}, ${test.state}: measured ${print(measured, kind)} ± ${print(doubt, kind)}, ${used ? 'stated or assumed' : 'computed'} ${ours} (${verdict})${used ? '; the measured one is used' : ''}.`,
        2,
      );
    })
    .join('\n');
};

const section = (output: Output, title: string, text: string): string =>
  text === '' ? '' : `${heading(output, title)}\n${text}`;

/** The assessment as a technician reads it, at most 80 columns wide. */
export const printAssessment = (job: AssessedJob, output: Output): string => {
  const print = printer(output.system);
  const { assessment, model } = job;
  const bypass = Object.entries(assessment.bypass)
    .map(([stage, value]) => `${stage} ${share(value)}`)
    .join(', ');
  return [
    `${model.filter.name}: ${familyById(model.filter.family)!.name}, on ${print(model.tank.volumeM3, 'volume')}`,
    summary(job, print),
    section(output, 'Routes', routes(job)),
    wrap(`Water that misses a stage: ${bypass}.`),
    section(output, 'Head', headBudget(assessment, print)),
    section(output, `Beds, ${days(assessment.carries.day.dayS)} after cleaning`, beds(job, print)),
    shares(assessment),
    section(output, 'Chemical media', chemical(job, print)),
    section(output, 'Findings', findings(job, print)),
    section(output, 'Bench tests', tests(job, print)),
    section(
      output,
      'Claims',
      job.claims.map((claim) => wrap(`${claim.verdict}: “${claim.says}” ${claim.detail}`, 2)).join('\n'),
    ),
    section(output, 'Money', cost(assessment)),
    section(output, 'Assumed, with wide doubt', printAssumed(model, print)),
    section(
      output,
      'Warnings',
      assessment.warnings.map((warning) => wrap(`${warning.place}: ${warning.says}`, 2)).join('\n'),
    ),
    '',
    wrap(
      `Model edition ${assessment.edition}. Ranges are not computed yet: every figure hangs on the doubts of what was assumed.`,
    ),
  ]
    .filter((text, place) => text !== '' || place > 10)
    .join('\n');
};
