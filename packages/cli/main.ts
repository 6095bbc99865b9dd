#!/usr/bin/env node
import { CommanderError } from 'commander';
import { BadInput, EXIT, type InputProblem } from './exits.ts';
import { wrap } from './print/layout.ts';
import { buildProgram } from './program.ts';

const asksForJson = process.argv.includes('--json');

const tell = (problems: readonly InputProblem[]): void => {
  process.exitCode = EXIT.badInput;
  if (asksForJson) {
    const plain = problems.map(({ code, path, says, allowed, at }) => ({ code, path, says, allowed, at }));
    process.stdout.write(`${JSON.stringify({ problems: plain }, null, 2)}\n`);
    return;
  }
  for (const { says, allowed, at } of problems) {
    const place = at ? `line ${at.line}: ` : '';
    process.stderr.write(`${wrap(`${place}${says}${allowed ? ` Allowed: ${allowed}.` : ''}`, 2)}\n`);
  }
};

const usageProblem = (error: CommanderError): InputProblem => ({
  code: error.code.replace('commander.', 'command-line-').toLowerCase(),
  path: '',
  says: error.message.replace(/^error: /, '').replaceAll(/\s+/g, ' '),
});

const fail = (error: unknown): void => {
  if (error instanceof CommanderError) {
    if (error.exitCode !== 0) tell([usageProblem(error)]);
  } else if (error instanceof BadInput) {
    tell(error.problems);
  } else {
    process.exitCode = EXIT.bug;
    const what = error instanceof Error ? error.message : String(error);
    process.stderr.write(
      `${wrap(`This is a fault of the program, not of your input: ${what}. Please report it with the job file.`, 2)}\n`,
    );
    if (process.env.FETTLE_TRACE && error instanceof Error) process.stderr.write(`${error.stack}\n`);
  }
};

// A reader that closes the pipe early, as head does, is no fault.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(EXIT.fine);
  throw error;
});

try {
  buildProgram().parse();
} catch (error) {
  fail(error);
}
