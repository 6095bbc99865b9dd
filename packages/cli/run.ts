import { StoreFailure } from '@fettle/store/contract/failure.ts';
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
  const place = at && !says.includes(`line ${at.line},`) ? `line ${at.line}: ` : '';
  // The sentence about a quantity ends with what is allowed.
  const more = allowed && !says.includes(allowed) ? ` Allowed: ${allowed}.` : '';
  return `${wrap(`${place}${says}${more}`, 2)}\n`;
};

/** What follows `--` is an argument, however much it looks like an option. */
const asksForJson = (words: readonly string[]): boolean => {
  const end = words.indexOf('--');
  return (end < 0 ? words : words.slice(0, end)).includes('--json');
};

const tell = (
  problems: readonly InputProblem[],
  to: { readonly json: boolean; readonly stream: NodeJS.WriteStream },
): void => {
  process.exitCode = EXIT.badInput;
  if (to.json) process.stdout.write(asJson(problems));
  else for (const problem of problems) to.stream.write(asText(problem));
};

/** Records that cannot be used are no fault of the program: a sentence and what can be done. */
const recordsProblem = ({ code, message, advice }: StoreFailure): InputProblem => ({
  code: `records-${code}`,
  path: '',
  says: advice === '' ? message : `${message} ${advice}`,
});

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
export const run = async (words: readonly string[], program: Command = buildProgram()): Promise<void> => {
  try {
    await program.parseAsync(words, { from: 'user' });
  } catch (error) {
    const json = asksForJson(words);
    if (error instanceof CommanderError) {
      if (error.exitCode !== 0) tell([usageProblem(error, program)], { json, stream: process.stderr });
    } else if (error instanceof BadInput) {
      // Problems are what `check` is asked for, so they are its output; elsewhere they are errors.
      const stream = words[0] === 'check' ? process.stdout : process.stderr;
      tell(error.problems, { json, stream });
    } else if (error instanceof StoreFailure) {
      tell([recordsProblem(error)], { json, stream: process.stderr });
    } else {
      tellBug(error);
    }
  }
};
