/**
 * Draws the pictures of `docs/pictures/` from the demo jobs: each filter in section as found, and before and after
 * the best re-pack for a small budget; and the screen of one assessment. With `--check` it writes nothing and
 * fails where a picture is not what the demo jobs give.
 */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, resolve } from 'node:path';
import { beforeAfterDrawing, type State } from '@fettle/drawing/beforeAfterDrawing.ts';
import { sectionDrawing } from '@fettle/drawing/sectionDrawing.ts';
import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { Model, Packing } from '@fettle/engine/model/model.ts';
import { searchPlans } from '@fettle/engine/planning/search.ts';
import { readJob } from '@fettle/job/read.ts';
import { isMain, projectRoot } from './sources.ts';

/** One file of `docs/pictures/`. */
export interface Picture {
  readonly name: string;
  readonly text: string;
}

const BUDGET = 15;
/** Enough for a re-pack worth drawing; a longer search would make the pictures slow to check. */
const CAP = 300;

const demoFolder = resolve(projectRoot, 'demo');
const pictureFolder = resolve(projectRoot, 'docs', 'pictures');

const modelOf = (file: string): Model => {
  const reading = readJob(readFileSync(resolve(demoFolder, file)));
  if (!reading.ok) throw new Error(`${file} does not read: ${reading.problems[0]?.says}`);
  return reading.model;
};

const stateOf = (caption: string, assessment: Assessment, packing: Packing): State => ({
  caption,
  assessment,
  packing,
  layout: assessment.layout,
});

/** Drawings of one demo job. */
const drawingsOf = (file: string): readonly Picture[] => {
  const model = modelOf(file);
  const name = basename(file, '.yaml');
  const { asFound, plans } = searchPlans(model, { budget: BUDGET, cap: CAP });
  const before = stateOf('Cleaned, packed as before', asFound, model.packing);
  const { media } = model;
  const look = { units: 'metric', theme: 'light' } as const;
  const section = sectionDrawing({ ...before, media, ...look, caption: `${model.filter.name}, as found` });
  const best = plans[0];
  const asFoundPicture = { name: `${name}-as-found.svg`, text: `${section}\n` };
  if (!best) return [asFoundPicture];
  const after = stateOf('As planned', best.assessment, best.packing);
  const both = beforeAfterDrawing({ before, after, media, ...look, title: model.filter.name });
  return [asFoundPicture, { name: `${name}-before-after.svg`, text: `${both}\n` }];
};

const screenOf = (...words: readonly string[]): string => {
  const program = ['--import', 'tsx', resolve(projectRoot, 'packages', 'cli', 'main.ts')];
  return execFileSync(process.execPath, [...program, ...words], { cwd: projectRoot, encoding: 'utf8' });
};

/** Every picture, made anew. */
export const pictures = (): readonly Picture[] => [
  ...readdirSync(demoFolder)
    .filter((file) => file.endsWith('.yaml'))
    .toSorted()
    .flatMap(drawingsOf),
  {
    name: 'assess.txt',
    text: `$ fettle assess demo/tall-drum.yaml\n${screenOf('assess', 'demo/tall-drum.yaml')}`,
  },
];

/** Names of the files of a folder; folders in it, such as that of the screens, belong to others. */
const filesIn = (folder: string): readonly string[] =>
  existsSync(folder)
    ? readdirSync(folder, { withFileTypes: true }).flatMap((entry) => (entry.isFile() ? [entry.name] : []))
    : [];

/** Names of pictures in a folder that are missing, out of date or made by nothing. */
export const outOfDate = (made: readonly Picture[], folder: string): readonly string[] => {
  const there = filesIn(folder);
  const names = new Set(made.map(({ name }) => name));
  const changed = made.filter(
    ({ name, text }) => !there.includes(name) || readFileSync(resolve(folder, name), 'utf8') !== text,
  );
  return [...changed.map(({ name }) => name), ...there.filter((name) => !names.has(name))].toSorted();
};

const write = (made: readonly Picture[]): void => {
  for (const name of filesIn(pictureFolder)) rmSync(resolve(pictureFolder, name));
  mkdirSync(pictureFolder, { recursive: true });
  for (const { name, text } of made) writeFileSync(resolve(pictureFolder, name), text);
};

if (isMain(import.meta.url)) {
  const made = pictures();
  if (process.argv.includes('--check')) {
    const stale = outOfDate(made, pictureFolder);
    for (const name of stale) console.error(`docs/pictures/${name} is out of date: run npm run pictures.`);
    process.exitCode = stale.length === 0 ? 0 : 1;
  } else {
    write(made);
    console.log(`${made.length} pictures in docs/pictures.`);
  }
}
