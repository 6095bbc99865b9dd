import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { assess } from '@fettle/engine/assessment/assess.ts';
import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import { findingsOf } from '@fettle/engine/assessment/findings/find.ts';
import { compareTests } from '@fettle/engine/assessment/findings/measured.ts';
import { holdClaims } from '@fettle/engine/claims/holdClaims.ts';
import { readClaims } from '@fettle/engine/claims/readClaims.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { readDocument, readJob } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { stateModel } from '@fettle/job/toModel/stateModel.ts';
import { outlookOf } from '../outlook.ts';
import type { ForetoldState, WriteUpSource } from '../source.ts';

const demo = resolve(import.meta.dirname, '../../../demo');

/** The jobs that come with the program, by their file names. */
export const demoNames = [
  'tall-drum',
  'two-halves',
  'back-hanger',
  'corner-box',
  'everything-wrong',
] as const;

/** One job of each kind that those leave out, for what must be looked at in every kind. */
export const otherKinds = [
  'under-stairs',
  'round-drum',
  'side-cartridge',
  'rain-tower',
  'bubbling-sponge',
  'pane-to-pane',
  'under-the-gravel',
  'sand-column',
  'tumbling-carriers',
] as const;

export type DemoName = (typeof demoNames)[number] | (typeof otherKinds)[number];

const claimsOf = (model: Model, { dutyPoint, carries }: Assessment) =>
  holdClaims({
    claims: readClaims(model.claims),
    computed: {
      flowM3PerS: dutyPoint.flowM3PerS,
      ratedFlowM3PerS: model.filter.pump.ratedFlowM3PerS,
      powerW: model.filter.pump.powerW,
      servedM3: carries.day.servedM3,
    },
  });

const assessed = (model: Model): ForetoldState => {
  const assessment = assess(model);
  return {
    model,
    assessment,
    findings: findingsOf(model, assessment),
    claims: claimsOf(model, assessment),
    comparisons: compareTests(model, assessment),
    outlook: outlookOf(model),
  };
};

/** A document as a write-up's source; throws where it does not read. */
export const sourceOf = (document: unknown): WriteUpSource => {
  const read = readDocument(document);
  if (!read.ok) throw new Error(read.problems.map(({ says }) => says).join(' '));
  const found = assessed(read.model);
  const { document: whole } = read;
  const [left, plan] = (['as-left', 'planned'] as const).map((state) => stateModel(whole, state)?.model);
  const planned = plan === undefined ? {} : { planned: assessed(plan) };
  if (left !== undefined)
    return { document: whole, found, after: { ...assessed(left), state: 'as-left' }, ...planned };
  return planned.planned === undefined
    ? { document: whole, found }
    : { document: whole, found, after: { ...planned.planned, state: 'planned' } };
};

export const demoDocument = (name: string): JobDocument => {
  const read = readJob(readFileSync(resolve(demo, `${name}.yaml`)));
  if (!read.ok) throw new Error(`the demo ${name} does not read`);
  return read.document;
};

/** Re-packs of the demos, made up for tests: foam cut anew, gaps sealed, hoses shortened, slots covered. */
const repacks: Readonly<Record<(typeof demoNames)[number], NonNullable<JobDocument['planned']>>> = {
  'tall-drum': {
    packing: {
      'basket-1': [
        { medium: 'foam-20ppi', depth: '25 mm' },
        { medium: 'foam-10ppi', depth: '30 mm' },
      ],
      'basket-2': [{ medium: 'ceramic-rings-15mm', depth: '55 mm' }],
      'basket-3': [{ medium: 'foam-30ppi', depth: '50 mm' }],
    },
    made: ['seal-gaps', { change: 'shorten-hose', length: '1.1 m' }],
  },
  'two-halves': {
    packing: {
      'left-1': [{ medium: 'ceramic-rings-15mm', depth: '80 mm' }],
      'left-2': [{ medium: 'floss-loose', depth: '20 mm' }],
      'right-1': [{ medium: 'foam-10ppi', depth: '40 mm' }],
      'right-2': [{ medium: 'foam-30ppi', depth: '60 mm' }],
    },
    made: ['seal-gaps'],
  },
  'back-hanger': {
    packing: {
      'slot-1': [{ medium: 'foam-20ppi', depth: '20 mm' }],
      'slot-2': [{ medium: 'foam-30ppi', depth: '20 mm' }],
    },
  },
  'corner-box': {
    packing: {
      'chamber-1': [{ medium: 'foam-20ppi', depth: '42 mm' }],
      'chamber-2': [{ medium: 'foam-30ppi', depth: '42 mm' }],
    },
    made: ['close-upper-slots'],
  },
  'everything-wrong': {
    packing: {
      'basket-1': [{ medium: 'foam-10ppi', depth: '50 mm' }],
      'basket-2': [{ medium: 'foam-20ppi', depth: '50 mm' }],
      'basket-3': [{ medium: 'floss-packed', depth: '25 mm' }],
      'basket-4': [{ medium: 'sintered-glass-rings-15mm', depth: '45 mm' }],
    },
    made: [{ change: 'hose-bore', bore: '16 mm' }],
  },
};

/** The re-pack of a demo; of a kind that has none made up for it, the packing as it was. */
const repackOf = (name: DemoName, { packing }: JobDocument): NonNullable<JobDocument['planned']> =>
  Object.entries(repacks).find(([of]) => of === name)?.[1] ?? { packing: packing ?? {} };

const madeSources = new Map<string, WriteUpSource>();

/** A demo as it comes, with a re-pack planned, or with one built; each is assessed once. */
export const demoSource = (name: DemoName, state: 'found' | 'planned' | 'left' = 'found'): WriteUpSource => {
  const key = `${name} ${state}`;
  const made = madeSources.get(key);
  if (made !== undefined) return made;
  const document = demoDocument(name);
  const repack = repackOf(name, document);
  const packed = state === 'planned' ? { planned: repack } : { asLeft: repack };
  const source = sourceOf(state === 'found' ? document : { ...document, ...packed });
  madeSources.set(key, source);
  return source;
};
