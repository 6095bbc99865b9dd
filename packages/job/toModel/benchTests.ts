import { oddRun } from '@fettle/engine/learning/oddRun.ts';
import { timedFlow } from '@fettle/engine/learning/timedFlow.ts';
import type { BenchTest, DyeTest, TimedFilling } from '@fettle/engine/model/model.ts';
import type { Quantity } from '@fettle/engine/quantities/readQuantity.ts';
import { readingDoubts } from '../defaults.ts';
import type { FieldPath } from '../fieldPath.ts';
import { type Note, note } from '../notes.ts';
import {
  displacementSchema,
  powerTestSchema,
  shutoffHeadSchema,
  timedVolumeSchema,
} from '../schema/benchTests.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import type { JobDocument } from '../schema/job.ts';
import { dyeTestOf } from './dyeTests.ts';
import { halfWidth } from './halfWidth.ts';

type DocumentTest = NonNullable<JobDocument['tests']>[number];

/** The bench tests in SI units, and what there is to know about them. */
export function benchTestsOf(tests: readonly DocumentTest[]): {
  readonly tests: readonly BenchTest[];
  readonly dyeTests: readonly DyeTest[];
  readonly notes: readonly Note[];
} {
  const used: BenchTest[] = [];
  const dyeTests: DyeTest[] = [];
  const notes: Note[] = [];
  tests.forEach((test, index) => {
    const path = ['tests', index];
    const id = test.id ?? `test-${index + 1}`;
    if (test.kind === 'dye') {
      dyeTests.push(dyeTestOf(test, id));
      return;
    }
    const reduced = reduce(test, id);
    if (reduced === undefined) notes.push(note('kept-not-used', path, { what: test.kind }));
    else used.push(reduced);
    notes.push(...notesOn(test, path));
  });
  return { tests: used, dyeTests, notes };
}

function notesOn(test: DocumentTest, path: FieldPath): readonly Note[] {
  if (test.kind !== 'timed-volume') return [];
  if (test.times.length === 1) return [note('repeat-assumed', path, {})];
  const odd = oddRun(fillingOf(test));
  if (odd === undefined) return [];
  const { at, ratio, critical, others } = odd;
  const seconds = (value: number): string => `${Number(value.toFixed(2))} s`;
  const facts = {
    found: timesOf(test)[at]!.written,
    others:
      others.leastS === others.mostS
        ? seconds(others.leastS)
        : `${seconds(others.leastS)} to ${seconds(others.mostS)}`,
    ratio: ratio.toFixed(3),
    critical: critical.toFixed(3),
  };
  return [note('odd-run', [...path, 'times', at], facts)];
}

function reduce(test: DocumentTest, id: string): BenchTest | undefined {
  const common = { id, state: test.state ?? 'as-found' } as const;
  switch (test.kind) {
    case 'timed-volume':
      return { kind: test.kind, ...common, ...reduceTimedVolume(test) };
    case 'power': {
      const power = acceptedQuantity(powerTestSchema.shape.power, test.power);
      const usual = Math.max(readingDoubts.powerW, readingDoubts.powerRatio * power.value);
      return { kind: test.kind, ...common, powerW: power.value, doubtW: halfWidth(power, usual) };
    }
    case 'shutoff-head': {
      const head = acceptedQuantity(shutoffHeadSchema.shape.head, test.head);
      return { kind: test.kind, ...common, headM: head.value, doubtM: halfWidth(head, readingDoubts.headM) };
    }
    case 'displacement': {
      const volume = acceptedQuantity(displacementSchema.shape.volume, test.volume);
      const doubtM3 = halfWidth(volume, readingDoubts.displacementRatio * volume.value);
      return { kind: test.kind, ...common, chamber: test.chamber, volumeM3: volume.value, doubtM3 };
    }
    default:
      return undefined;
  }
}

type DocumentFilling = Extract<DocumentTest, { kind: 'timed-volume' }>;

const timesOf = (test: DocumentFilling): readonly Quantity[] =>
  test.times.map((time) => acceptedQuantity(timedVolumeSchema.shape.times.element, time));

function fillingOf(test: DocumentFilling): TimedFilling {
  const volume = acceptedQuantity(timedVolumeSchema.shape.volume, test.volume);
  const times = timesOf(test);
  return {
    volumeM3: volume.value,
    volumeDoubtM3: halfWidth(volume, readingDoubts.lineRatio * volume.value),
    timesS: times.map(({ value }) => value),
    readingDoubtS: Math.max(...times.map((time) => halfWidth(time, readingDoubts.timeS))),
    assumedScatterRatio: readingDoubts.repeatRatio,
  };
}

function reduceTimedVolume(test: DocumentFilling) {
  const filling = fillingOf(test);
  return { ...timedFlow(filling), repeats: test.times.length, filling };
}
