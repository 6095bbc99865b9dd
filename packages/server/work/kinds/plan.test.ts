import { readJob } from '@fettle/job/read.ts';
import { planRequestSchema } from '@fettle/workflows/planDocument.ts';
import { describe, expect, it } from 'vitest';
import { demoText } from '../../testing/jobClient.ts';
import { planKind } from './plan.ts';

const documentOf = (name: string) => {
  const reading = readJob(demoText(name));
  if (!reading.ok) throw new Error('the demo does not read');
  return reading.document;
};

const document = documentOf('tall-drum');
const request = planRequestSchema.parse({ budget: 15, cap: 600 });

interface Piece {
  readonly edition: string;
  readonly from: number;
  readonly figures: readonly number[];
}

/** Runs a search that goes on from pieces, and takes what it leaves. */
const searched = (checkpoints: readonly unknown[]) => {
  const taken: Piece[] = [];
  const outcome = planKind.run({
    document,
    request,
    checkpoints,
    onStep: () => undefined,
    onProgress: () => undefined,
    // As the records give it back.
    onCheckpoint: (take) => taken.push(JSON.parse(JSON.stringify(take()))),
  });
  return { outcome, taken };
};

describe('a search for plans that is broken off', () => {
  const { outcome, taken } = searched([]);

  it('leaves pieces that together are its row of figures', () => {
    expect(taken.length).toBeGreaterThan(5);
    let from = 0;
    for (const piece of taken) {
      expect([piece.from, piece.figures.length > 0]).toEqual([from, true]);
      from += piece.figures.length;
    }
  });

  it('comes to the same plans from its first, middle and last piece on, and leaves only what is new', () => {
    for (const count of [1, Math.ceil(taken.length / 2), taken.length]) {
      const again = searched(taken.slice(0, count));
      expect(again.outcome).toEqual(outcome);
      const told = taken.slice(0, count).reduce((sum, { figures }) => sum + figures.length, 0);
      for (const { from } of again.taken) expect(from).toBeGreaterThanOrEqual(told);
    }
  });

  it('passes over pieces of other models, behind a gap, or that are none', () => {
    const [first, second, third] = taken as [Piece, Piece, Piece];
    const other = { ...second, edition: 'another', figures: second.figures.map(() => 1) };
    const useless = [null, 7, { from: 0 }, other, { ...third, figures: third.figures.map(() => 1) }];
    expect(searched([first, ...useless]).outcome).toEqual(outcome);
    expect(searched([...taken, { ...first }]).outcome).toEqual(outcome);
  });
});
