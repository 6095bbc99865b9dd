#!/usr/bin/env node
import { EXIT } from './exits.ts';
import { run } from './run.ts';

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // A reader that closes the pipe early, as head does, is no fault.
  if (error.code === 'EPIPE') process.exit(EXIT.fine);
  const reason = error.code === 'ENOSPC' ? 'the disk is full' : error.code;
  process.stderr.write(`The result cannot be written: ${reason}.\n`);
  process.exit(EXIT.badInput);
});

await run(process.argv.slice(2));
