import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { demo, type Ended, fettle, newFolder } from './program.ts';

/** A data folder of its own, with the commands that work on it. */
export interface Workshop {
  readonly data: string;
  /** Runs a command on the data folder. */
  readonly run: (...words: readonly string[]) => Promise<Ended>;
  /** Runs one that must end well, and gives what it prints, each run of white space as one space. */
  readonly told: (...words: readonly string[]) => Promise<string>;
  /** The same with `--json`, read. */
  readonly json: (...words: readonly string[]) => Promise<ReturnType<typeof JSON.parse>>;
  /** A path beside the data folder. */
  readonly path: (name: string) => string;
}

/** Sentences as they are meant, whatever the width of the screen. */
export const unwrapped = (text: string): string => text.replaceAll(/\s+/g, ' ');

/** A new workshop without records, gone after the test. */
export function newWorkshop(folder = newFolder()): Workshop {
  const data = join(folder, 'data');
  const run = (...words: readonly string[]) => fettle(...words, '--data', data);
  const out = async (...words: readonly string[]): Promise<string> => {
    const ended = await run(...words);
    expect([words, ended.code, ended.err]).toEqual([words, 0, '']);
    return ended.out;
  };
  return {
    data,
    run,
    told: async (...words) => unwrapped(await out(...words)),
    json: async (...words) => JSON.parse(await out(...words, '--json')),
    path: (name) => join(folder, name),
  };
}

/** Changes a file's text where it says something, which it must. */
export function edit(file: string, from: string | RegExp, to: string): void {
  const text = readFileSync(file, 'utf8');
  const changed = text.replace(from, to);
  expect(changed, `${file} holds ${from}`).not.toBe(text);
  writeFileSync(file, changed);
}

/** A workshop that has taken the tall drum in as job 1. */
export async function workshopWithDrum(folder?: string): Promise<Workshop> {
  const workshop = newWorkshop(folder);
  await workshop.told('import', demo('tall-drum'));
  return workshop;
}
