import {
  commandLine,
  exampleOf,
  type Pair,
  type Reckoned,
  reckon,
  shelves,
} from '@fettle/engine/reckonings/reckon.ts';
import { reckonings } from '@fettle/engine/reckonings/reckonings.ts';
import type { Command } from 'commander';
import { BadInput, type InputProblem } from '../exits.ts';
import { type CommonOptions, type Output, outputFor, writeJson } from '../output.ts';
import { printReckoned, printReckonings } from '../print/reckoning.ts';
import { withCommonOptions } from './common.ts';

const notAPair = (text: string): InputProblem => ({
  code: 'not-key-value',
  path: '',
  says: `"${text.length > 40 ? `${text.slice(0, 37)}…` : text}" is not a key with its value.`,
  allowed: 'key=value, for example temperature="26 °C"',
});

const isPair = (text: string): boolean => text.indexOf('=') > 0;

const pairOf = (text: string): Pair => {
  const at = text.indexOf('=');
  return { key: text.slice(0, at).trim(), text: text.slice(at + 1) };
};

/** Where keys are missing the last of them brings an example of the whole line. */
const withExample = (name: string, problems: readonly InputProblem[]): readonly InputProblem[] => {
  const last = problems.findLastIndex(({ code }) => code === 'missing-key');
  const reckoning = reckonings[name];
  if (last < 0 || !reckoning) return problems;
  return problems.map((problem, place) =>
    place === last
      ? { ...problem, says: `${problem.says} Example: ${commandLine(name, exampleOf(reckoning))}` }
      : problem,
  );
};

const list = (output: Output): void => {
  if (!output.json) {
    output.write(printReckonings());
    return;
  }
  const entries = Object.values(reckonings).map(({ name, says, inputs, results, source }) => ({
    name,
    says,
    inputs: Object.entries(inputs).map(([key, { label, takes, example, required, repeats, otherwise }]) => ({
      key,
      label,
      takes,
      example,
      required,
      repeats,
      default: otherwise,
    })),
    results: Object.entries(results).map(([key, { label, unit }]) => ({ key, label, unit })),
    source,
  }));
  writeJson(output, { reckonings: entries, ...shelves });
};

const jsonOf = ({ reckoning, results, within, warnings, source }: Reckoned) => ({
  name: reckoning.name,
  results,
  within,
  warnings,
  source,
});

const run = (name: string | undefined, inputs: readonly string[], flags: CommonOptions): void => {
  const output = outputFor(flags);
  if (name === undefined) {
    list(output);
    return;
  }
  const malformed = inputs.filter((text) => !isPair(text));
  if (malformed.length > 0) throw new BadInput(malformed.map(notAPair));
  const reckoned = reckon(name, inputs.map(pairOf));
  if (!reckoned.ok) throw new BadInput(withExample(name, reckoned.problems));
  if (output.json) writeJson(output, jsonOf(reckoned));
  else output.write(printReckoned(reckoned, output.system));
};

export const addReckon = (program: Command): void => {
  withCommonOptions(program.command('reckon'))
    .summary('one formula on its own, with its source')
    .description(
      'Work out one formula from keys and values. Without a name: all formulas with their keys, and the ids of fittings and media.',
    )
    .argument('[name]', 'name of the reckoning')
    .argument('[inputs...]', 'inputs as key=value, quantities with their units')
    .addHelpText(
      'after',
      '\nExamples:\n  fettle reckon\n  fettle reckon hose-loss flow="600 L/h" bore="12 mm" length="1.5 m"\n  fettle reckon timed-flow volume="10 L" time=31.2s time=30.8s --json',
    )
    .action(run);
};
