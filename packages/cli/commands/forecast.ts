import { forecastDocument, openForecast } from '@fettle/workflows/forecastDocument.ts';
import { type Command, Option } from 'commander';
import { type CommonOptions, outputFor, writeJson } from '../output.ts';
import { printForecast } from '../print/forecast.ts';
import { type DataOptions, withDataOption } from '../records/dataFolder.ts';
import { jobArgument, namedJob } from '../records/jobSource.ts';
import { numberBetween, resultOf, type StateOption, stateOption, withCommonOptions } from './common.ts';

const LONGEST_DAYS = 730;

interface ForecastFlags extends CommonOptions, DataOptions, StateOption {
  readonly days?: number;
  readonly clean?: string;
}

const run = async (word: string, flags: ForecastFlags): Promise<void> => {
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
    .summary('how flow and dirt go over the coming days')
    .description(
      'Forecast one job: flow at the tank, head, dirt in each bed and bypass by day, and what each pattern of cleaning gives.',
    )
    .argument('<job>', jobArgument)
    .addOption(
      new Option('--days <days>', 'how far ahead; 180 where left out').argParser(
        numberBetween(1, LONGEST_DAYS, true),
      ),
    )
    .addOption(
      new Option(
        '--clean <pattern>',
        'when which beds are cleaned: never, usual, "flow 25 %", or what/days with all, a stage, a chamber or a medium, as mechanical/30,all/90; never where left out',
      ),
    )
    .addOption(stateOption())
    .addHelpText(
      'after',
      '\nExamples:\n  fettle forecast job.yaml --days 180\n  fettle forecast job.yaml --clean mechanical/30,all/90\n  fettle forecast 12 --clean "flow 25 %" --json',
    )
    .action(run);
};
