import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { readJob } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { jobStages } from '@fettle/job/stages.ts';
import { projectRoot } from '../sources.ts';
import type { Chance } from './chance.ts';

const givenNames = [
  'Orlinde',
  'Tamsel',
  'Brannic',
  'Yevva',
  'Corvin',
  'Ishbet',
  'Perrun',
  'Wendoly',
  'Faroun',
];
const familyNames = ['Quillmere', 'Brindlewick', 'Tarnholt', 'Ossary', 'Velderoy', 'Marrowfen', 'Pikestaff'];
const places = [
  'hall',
  'classroom',
  'waiting room',
  'kitchen',
  'cellar',
  'study',
  'shop window',
  'stairwell',
];
const complaints = [
  'slow since the summer',
  'loud at night',
  'water stays cloudy',
  'leaks at the clasp',
  'stops after a power cut',
  'clogs within a fortnight',
  'nitrite never quite gone',
  'put together the wrong way round',
];
const tags = ['urgent', 'school', 'on trial', 'second visit', 'worn shaft', 'collect', 'no hurry', 'club'];
/** A job that is closed is changed no more. */
const stages = jobStages.filter((stage) => stage !== 'closed');
const remarks = [
  'The owner rinses the media under the tap.',
  'One clasp is cracked and was glued before.',
  'The impeller is chalked; a night in vinegar took most of it off.',
  'Came with a jar of media that nobody can name.',
  'The tap at the outlet stands half shut and cannot be turned.',
  'Wants it back before the holidays, whatever is found.',
  'Says that it ran like new for a week after the last cleaning.',
  'The hose is kinked behind the cupboard.',
];

const demoFolder = resolve(projectRoot, 'demo');

const demoDocuments: readonly JobDocument[] = readdirSync(demoFolder)
  .filter((name) => name.endsWith('.yaml'))
  .toSorted()
  .map((name) => {
    const reading = readJob(readFileSync(resolve(demoFolder, name)));
    if (!reading.ok) throw new Error(`${name} does not read: ${reading.problems[0]?.says}`);
    return reading.document;
  });

const dayAfter = (days: number): string =>
  new Date(Date.UTC(2026, 0, 5) + days * 86_400_000).toISOString().slice(0, 10);

function some<Entry>(list: readonly Entry[], most: number, chance: Chance): Entry[] {
  const found = new Set<Entry>();
  for (let count = chance.below(most + 1); count > 0; count--) found.add(chance.among(list));
  return [...found];
}

const notesOf = (chance: Chance): string =>
  [chance.among(remarks), ...some(remarks, 3, chance), `Mark ${chance.below(2 ** 31).toString(36)}.`].join(
    ' ',
  );

/** A job without number that reads as one, made from one of the demos; people and places in it are invented. */
export function inventedJob(chance: Chance): JobDocument {
  const base = chance.among(demoDocuments);
  const place = chance.among(places);
  const name = base.filter.name ?? 'Filter';
  const taken = chance.below(320);
  const { number: _, ...about } = base.job ?? {};
  const tagged = some(tags, 3, chance);
  return {
    ...base,
    job: {
      ...about,
      title: `${name} of the ${place}, ${chance.among(complaints)}`,
      received: dayAfter(taken),
      promised: dayAfter(taken + chance.between(3, 40)),
      stage: chance.among(stages),
      ...(tagged.length > 0 ? { tags: tagged } : {}),
      notes: notesOf(chance),
    },
    owner: {
      name: `${chance.among(givenNames)} ${chance.among(familyNames)}`,
      place: `the ${place}, ${chance.between(1, 90)} Weir Lane`,
    },
    tank: { ...base.tank, volume: `${chance.between(40, 400)} L ± 5 L` },
  };
}

/** The same job after another look at it: other notes, promise, stage and price. */
export function lookedAtAgain(document: JobDocument, chance: Chance): JobDocument {
  return {
    ...document,
    job: {
      ...document.job,
      promised: dayAfter(330 + chance.below(300)),
      stage: chance.among(stages),
      notes: notesOf(chance),
    },
    filter: { ...document.filter, name: `${chance.among(['Tall', 'Old', 'Short', 'Dented'])} drum` },
  };
}

/** What a technician keeps on the shelf, another one for every call. */
export const inventedShelf = (chance: Chance): unknown => ({
  media: some(['foam-10ppi', 'foam-20ppi', 'foam-30ppi', 'coarse-pad', 'floss-loose'], 5, chance).map(
    (medium) => ({
      medium,
      price: `${chance.between(2, 19)}.${chance.between(10, 99)} EUR/L`,
    }),
  ),
});

/** A follow-up reading as an owner would take it. */
export const inventedReading = (
  chance: Chance,
): { readonly kind: string; readonly day: string; readonly value: string; readonly note: string } => {
  const kind = chance.among(['jug-flow', 'ammonia', 'nitrite']);
  const value = kind === 'jug-flow' ? `${chance.between(120, 900)} L/h` : `0.${chance.between(1, 99)} mg/L`;
  return { kind, day: dayAfter(chance.below(320)), value, note: chance.among(remarks) };
};
