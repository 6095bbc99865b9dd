import { forecastDocument, openForecast } from '@fettle/workflows/forecastDocument.ts';
import { openTank, tankDocument } from '@fettle/workflows/tankDocument.ts';
import { happeningForms } from '@fettle/workflows/tankScenario.ts';
import { type Command, Option } from 'commander';
import { badInput } from '../exits.ts';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { printForecast } from '../print/forecast.ts';
import { printTank } from '../print/tank.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobArgument, namedJob } from '../records/jobSource.ts';
import { numberBetween, resultOf, type StateOption, stateOption, withCommonOptions } from './common.ts';

const LONGEST_DAYS = 730;

interface ForecastFlags extends CommonOptions, DataOptions, StateOption {
  readonly days?: number;
  readonly clean?: string;
  readonly tank?: true;
  readonly start?: string;
  readonly happens?: readonly string[];
  readonly changes?: string;
}

/** Options of one kind of forecast are refused in the other: they would be passed over in silence. */
const expectTogether = (flags: ForecastFlags): void => {
  const stray = flags.tank ? ['clean' as const] : (['start', 'happens', 'changes'] as const);
  const other = flags.tank ? '--tank' : 'a forecast without --tank';
  for (const name of stray) {
    if (flags[name] === undefined) continue;
    throw badInput({
      code: 'not-of-this-forecast',
      path: name,
      says: `--${name} does not go with ${other}.`,
      allowed: flags.tank ? '--start, --happens, --changes, --days' : '--clean, --days; or --tank',
    });
  }
};

const runTank = async (word: string, flags: ForecastFlags): Promise<void> => {
  const { source, units } = await namedJob(word, flags);
  const { days, start, happens, changes, state } = flags;
  const how = { days, start, happens, changes, state };
  if (flags.json) {
    writeJson(outputFor(flags), resultOf(tankDocument(source, how)));
    return;
  }
  const output = outputFor(flags, units);
  output.write(printTank(resultOf(openTank(source, how)), output));
};

const run = async (word: string, flags: ForecastFlags): Promise<void> => {
  expectTogether(flags);
  if (flags.tank) return runTank(word, flags);
  const { source, units } = await namedJob(word, flags);
  const how = { days: flags.days, clean: flags.clean, state: flags.state };
  if (flags.json) {
    writeJson(outputFor(flags), resultOf(forecastDocument(source, how)));
    return;
  }
  const output = outputFor(flags, units);
  output.write(printForecast(resultOf(openForecast(source, how)), output));
};

export const addForecast = (program: Command): void => {
  withDataOption(withCommonOptions(program.command('forecast')))
    .summary('how flow and dirt, or the tank’s water, go over the coming days')
    .description(
      'Forecast one job: flow at the tank, head, dirt in each bed and bypass by day, and what each pattern of cleaning gives. With --tank: ammonia, nitrite, nitrate, oxygen, alkalinity and bacteria by day.',
    )
    .argument('<job>', jobArgument)
    .addOption(
      new Option('--days <days>', 'how far ahead; 180 where left out, 90 with --tank').argParser(
        numberBetween(1, LONGEST_DAYS, true),
      ),
    )
    .addOption(
      new Option(
        '--clean <pattern>',
        'when which beds are cleaned: never, usual, "flow 25 %", or what/days with all, a stage, a chamber or a medium, as mechanical/30,all/90; never where left out',
      ),
    )
    .option('--tank', 'the chemistry of the tank in time in place of the dirt in the filter')
    .option('--start <start>', 'with --tank: new, ripe, or "seeded 20 %"; ripe where left out')
    .option(
      '--happens <what>',
      `with --tank, as often as wanted: ${happeningForms}`,
      (one: string, before: readonly string[] = []) => [...before, one],
    )
    .option('--changes <pattern>', 'with --tank: water changes on set days, as "30 %/7"')
    .addOption(stateOption())
    .addHelpText(
      'after',
      '\nExamples:\n  fettle forecast job.yaml --days 180\n  fettle forecast job.yaml --clean mechanical/30,all/90\n  fettle forecast 12 --clean "flow 25 %" --json\n  fettle forecast job.yaml --tank --start new --happens "20 change 50 %"',
    )
    .action(run);
};
