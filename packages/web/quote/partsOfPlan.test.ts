import { readJob } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { printer } from '@fettle/workflows/printing.ts';
import { describe, expect, test } from 'vitest';
import { openPartsOfPlan, partsOfPlan } from './partsOfPlan.ts';

const noBooks = { shelf: {}, settings: {} };

/** A basket of 100 cm², in which 10 mm are a tenth of a litre. */
const jobWith = (more: string): JobDocument => {
  const reading = readJob(`fettle: 1
tank: { volume: 180 L }
filter:
  family: basket-stack-canister
  measurements: { baskets: 1, basketWidth: 100 mm, basketDepth: 100 mm, basketHeight: 60 mm, wallGap: 1 mm }
  pump: { ratedFlow: 850 L/h }
  hoses: { intake: { length: 1.5 m, bore: 16 mm }, outlet: { length: 1.5 m, bore: 16 mm } }
packing: { basket-1: [{ medium: foam-20ppi, depth: 20 mm }] }
${more}`);
  if (!reading.ok) throw new Error(reading.problems[0]?.says);
  return reading.document;
};

const planned =
  'planned: { packing: { basket-1: [{ medium: foam-20ppi, depth: 20 mm }, { medium: floss-loose, depth: 30 mm }] }';

const parts = (more: string, books = noBooks) => partsOfPlan(jobWith(more), books, printer('metric'));

describe('what a planned re-pack needs to be bought', () => {
  test('is what it has beyond what was found, and nothing without a plan', () => {
    expect(parts(`${planned} }`)).toEqual([{ part: '300 mL of loose floss' }]);
    expect(parts('')).toEqual([]);
  });

  test('has the price that the job states, else the one of the shelf in its currency, and never a placeholder', () => {
    expect(parts(`${planned} }\nmoney: { media: { floss-loose: 4 GBP/L } }`)[0]?.price).toBe('1.20 GBP');
    const shelf = { media: [{ medium: 'floss-loose', price: '5 GBP/L' }] };
    expect(parts(`${planned} }`, { ...noBooks, shelf })[0]?.price).toBe('1.50 GBP');
    expect(parts(`${planned} }\nmoney: { currency: EUR }`, { ...noBooks, shelf })[0]?.price).toBeUndefined();
  });

  test('says for its open lines what the plan was reckoned with', () => {
    const quote = 'quote: { parts: [{ part: 300 mL of loose floss, from: plan }, { part: carriage }] }';
    const open = (more: string) => openPartsOfPlan(jobWith(more), noBooks, printer('metric'));
    const [line, ...others] = open(`${planned} }\n${quote}`);
    expect(line).toMatchObject({ part: '300 mL of loose floss' });
    expect(line?.price).toMatch(/^\d+\.\d\d GBP$/);
    expect(others).toEqual([]);
    expect(open(`${planned} }`)).toEqual([]);
  });

  test('has the parts of the alterations that go with it, hoses by their length', () => {
    const made = `${planned}, made: [seal-gaps, { change: hose-bore, bore: 19 mm }] }`;
    expect(
      parts(`${made}\nmoney: { parts: { seal-strip: 2.50 GBP, hose-per-metre: 4 GBP } }`).slice(1),
    ).toEqual([
      { part: 'seal strip', price: '2.50 GBP' },
      { part: 'hose, 3.00 m', price: '12.00 GBP' },
    ]);
  });
});
