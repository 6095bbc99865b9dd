import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Store } from '@fettle/store/contract/store.ts';
import { openStore } from '@fettle/store/open.ts';
import { jobOf } from '@fettle/store/testing/bench.ts';
import { Command } from 'commander';
import { afterEach, beforeEach, vi } from 'vitest';
import { BadInput, type InputProblem } from '../exits.ts';

/** One command on records of its own, in which job 1 was taken in; new before each test. */
export interface CommandBench {
  /** A path beside the data folder. */
  readonly path: (name: string) => string;
  /** What the command writes, as it stands. */
  readonly out: (...words: readonly string[]) => Promise<string>;
  /** What it writes, each run of white space as one space. */
  readonly told: (...words: readonly string[]) => Promise<string>;
  /** What it writes with `--json`, read. */
  readonly json: (...words: readonly string[]) => Promise<ReturnType<typeof JSON.parse>>;
  /** What it refuses; fails where it does not. */
  readonly problems: (...words: readonly string[]) => Promise<readonly InputProblem[]>;
  /** Looks at the records, or changes them. */
  readonly inRecords: <Result>(work: (store: Store) => Promise<Result>) => Promise<Result>;
}

/**
 * Lays out a bench for one command, run in this process.
 * @param add what adds the command to a program
 * @param name how it is called
 */
export function commandBench(add: (program: Command) => void, name: string): CommandBench {
  let folder = '';
  const path = (file: string): string => join(folder, file);
  const inRecords: CommandBench['inRecords'] = async (work) => {
    const store = await openStore({ folder: path('data') });
    try {
      return await work(store);
    } finally {
      await store.close();
    }
  };
  const out = async (...words: readonly string[]): Promise<string> => {
    let text = '';
    const spy = vi.spyOn(process.stdout, 'write').mockImplementation((chunk) => {
      text += String(chunk);
      return true;
    });
    const program = new Command('fettle').exitOverride().configureOutput({ writeErr: () => {} });
    add(program);
    for (const command of program.commands) command.exitOverride().configureOutput({ writeErr: () => {} });
    try {
      await program.parseAsync([name, ...words, '--data', path('data')], { from: 'user' });
    } finally {
      spy.mockRestore();
    }
    return text;
  };
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'fettle-command-'));
    await inRecords((store) => store.jobs.create({ document: jobOf(), by: 'anna' }));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));
  return {
    path,
    out,
    told: async (...words) => (await out(...words)).replaceAll(/\s+/g, ' ').trim(),
    json: async (...words) => JSON.parse(await out(...words, '--json')),
    problems: async (...words) => {
      const refusal = await out(...words).catch((error: unknown) => error);
      if (!(refusal instanceof BadInput)) throw refusal;
      return refusal.problems;
    },
    inRecords,
  };
}
