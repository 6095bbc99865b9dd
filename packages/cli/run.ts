import { type Command, CommanderError } from 'commander';
import { BadInput, EXIT, type InputProblem } from './exits.ts';
import { wrap } from './print/layout.ts';
import { buildProgram } from './program.ts';
import { usageProblem } from './usage.ts';

const asJson = (problems: readonly InputProblem[]): string => {
  const plain = problems.map(({ code, path, says, allowed, at }) => ({ code, path, says, allowed, at }));
  return `${JSON.stringify({ problems: plain }, null, 2)}\n`;
};

const asText = ({ says, allowed, at }: InputProblem): string => {
  const place = at ? `line ${at.line}: ` : '';
  return `${wrap(`${place}${says}${allowed ? ` Allowed: ${allowed}.` : ''}`, 2)}\n`;
};

/** What follows `--` is an argument, however much it looks like an option. */
const asksForJson = (words: readonly string[]): boolean => {
  const end = words.indexOf('--');
  return (end < 0 ? words : words.slice(0, end)).includes('--json');
};

const tell = (problems: readonly InputProblem[], json: boolean): void => {
  process.exitCode = EXIT.badInput;
  if (json) process.stdout.write(asJson(problems));
  else for (const problem of problems) process.stderr.write(asText(problem));
};

const tellBug = (error: unknown): void => {
  process.exitCode = EXIT.bug;
  const what = error instanceof Error ? error.message : String(error);
  process.stderr.write(
    `${wrap(`This is a fault of the program, not of your input: ${what}. Please report it with the job file.`, 2)}\n`,
  );
  if (process.env.FETTLE_TRACE && error instanceof Error) process.stderr.write(`${error.stack}\n`);
};

/**
 * Runs the command that the words ask for; how it ended stands in `process.exitCode` (see `EXIT`).
 *
 * @param words what follows the program's name on the command line
 */
export const run = (words: readonly string[], program: Command = buildProgram()): void => {
  try {
    program.parse(words, { from: 'user' });
  } catch (error) {
    if (error instanceof CommanderError) {
      if (error.exitCode !== 0) tell([usageProblem(error, program)], asksForJson(words));
    } else if (error instanceof BadInput) {
      tell(error.problems, asksForJson(words));
    } else {
      tellBug(error);
    }
  }
};
