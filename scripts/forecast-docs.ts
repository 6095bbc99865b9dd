/** Writes `docs/forecast.md` from the models: `npx tsx scripts/forecast-docs.ts`; `--check` only compares. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { compiledOf } from '@fettle/engine/assessment/compile.ts';
import { march } from '@fettle/engine/assessment/dirt/march.ts';
import { heldKg } from '@fettle/engine/assessment/dirt/state.ts';
import { solveAt } from '@fettle/engine/assessment/dirt/step.ts';
import { filterFlow } from '@fettle/engine/assessment/dirt/transport.ts';
import { forecastCompiled } from '@fettle/engine/assessment/forecast/forecast.ts';
import { oneBasket } from '@fettle/engine/assessment/testing/models.ts';
import { media } from '@fettle/engine/catalogue/media.ts';
import { throatM } from '@fettle/engine/catalogue/throat.ts';
import { solidsMade } from '@fettle/engine/laws/dirt/production.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { EQUALLY_FINE_RATIO } from '@fettle/engine/packing/order.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { isMain, projectRoot } from './sources.ts';

const DAY_S = 86_400;
const DAY = 60;
const YEAR = 365;

const digits = (value: number): string => String(Number(value.toPrecision(3)));
const percent = (share: number): string => (Number.isNaN(share) ? '–' : `${digits(100 * share)} %`);
const daysText = (days: number | undefined): string => (days === undefined ? 'over a year' : digits(days));

const modelOf = (path: string): Model => {
  const job = openJob(readFileSync(path));
  if (!job.ok) throw new Error(`${path}: ${job.problems[0]?.says}`);
  return job.model;
};

/** What the reduced form says of one filter, and the full march. */
const bothForms = (model: Model) => {
  const compiled = compiledOf(model);
  const reduced = march(compiled, solidsMade(model.tank), DAY * DAY_S);
  for (let solve = 0; solve < 4; solve += 1) solveAt(compiled, reduced.atDay);
  const flow = filterFlow(compiled);
  const held = heldKg(compiled, reduced.atDay).reduce((sum, kg) => sum + kg, 0);
  const full = forecastCompiled(compiledOf(model), { days: YEAR });
  const fullHeld = full.days.beds.reduce((sum, { dirtKg }) => sum + dirtKg[DAY]!, 0);
  return {
    reducedDays: reduced.ending.beyond ? undefined : reduced.ending.timeS / DAY_S,
    fullDays: full.firstEnd ? full.firstEnd.timeS / DAY_S : undefined,
    flowError: flow / full.days.flowM3PerS[DAY]! - 1,
    dirtError: held / fullHeld - 1,
  };
};

const demoRow = (file: string): string => {
  const { reducedDays, fullDays, flowError, dirtError } = bothForms(modelOf(file));
  const error =
    reducedDays === undefined || fullDays === undefined ? '–' : percent(reducedDays / fullDays - 1);
  return `| ${basename(file, '.yaml')} | ${daysText(reducedDays)} | ${daysText(fullDays)} | ${error} | ${percent(flowError)} | ${percent(dirtError)} |`;
};

const demos = (): string => {
  const folder = resolve(projectRoot, 'demo');
  const files = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
  return [
    '| demo | interval, reduced, d | full, d | error | error of flow, day 60 | error of dirt held, day 60 |',
    '| --- | ---: | ---: | ---: | ---: | ---: |',
    ...files.toSorted().map((name) => demoRow(resolve(folder, name))),
  ].join('\n');
};

const mechanical = (): Medium[] =>
  Object.values(media)
    .filter(({ stage }) => stage === 'mechanical')
    .toSorted((a, b) => throatM(b) - throatM(a));

const intervalOf = (first: string, second: string): number | undefined => {
  // Listed from the top down; water rises.
  const model = oneBasket([
    [second, 40],
    [first, 40],
  ]);
  const { ending } = march(compiledOf(model), solidsMade(model.tank), DAY * DAY_S);
  return ending.beyond ? undefined : ending.timeS / DAY_S;
};

const pairRow = (coarse: Medium, fine: Medium): string => {
  const coarseFirst = intervalOf(coarse.id, fine.id);
  const fineFirst = intervalOf(fine.id, coarse.id);
  const ratio = coarseFirst === undefined || fineFirst === undefined ? '–' : digits(coarseFirst / fineFirst);
  return `| ${coarse.id} | ${fine.id} | ${daysText(coarseFirst)} | ${daysText(fineFirst)} | ${ratio} |`;
};

const pairs = (): string => {
  const all = mechanical();
  const rows = all.flatMap((coarse, place) =>
    all
      .slice(place + 1)
      .filter((fine) => throatM(coarse) > EQUALLY_FINE_RATIO * throatM(fine))
      .map((fine) => pairRow(coarse, fine)),
  );
  return [
    '| coarse | fine | coarse first, d | fine first, d | times longer |',
    '| --- | --- | ---: | ---: | ---: |',
    ...rows,
  ].join('\n');
};

export const page = (): string =>
  `${[
    '# Forecasts, measured',
    '<!-- Written by scripts/forecast-docs.ts from the models: change it there. -->',
    'How the models behave, with the figures that they give today; [Dirt](models/dirt.md) tells of the models themselves.',
    '## The reduced form against the full march',
    'The assessment, plans and findings go by the reduced form: midpoint steps of up to 20 days. `fettle forecast` goes by the full march: halved slices, steps of at most a day with their error held down, the tank’s own balance. One filter, one model, two forms; nothing is cleaned. Where a mat grows the reduced form takes it in long steps, and that is where it errs most.',
    demos(),
    '## Fine before coarse',
    'Cleaning interval of two layers of 40 mm in one basket, 1.5 g of feed a day, in one order and in the other. Nothing in the models knows of an order; a ratio below 1 would be a pair for which the rule does not hold.',
    pairs(),
    '## The tank’s water',
    '`fettle forecast --tank` marches ammonia, nitrite, nitrate, oxygen, alkalinity and the bacteria of the filter: [The tank in time](models/tank.md) tells by which laws, what was set, and how it stands against what was published.',
  ].join('\n\n')}\n`;

if (isMain(import.meta.url)) {
  const path = resolve(projectRoot, 'docs/forecast.md');
  const text = page();
  if (!process.argv.includes('--check')) writeFileSync(path, text);
  else if (!existsSync(path) || readFileSync(path, 'utf8') !== text) {
    console.error('docs/forecast.md is not what the models say: run npx tsx scripts/forecast-docs.ts');
    process.exitCode = 1;
  }
}
