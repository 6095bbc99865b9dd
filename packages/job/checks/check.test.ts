import { describe, expect, it } from 'vitest';
import { readWith } from '../testing/readWith.ts';

interface Case {
  readonly what: string;
  readonly changes: Readonly<Record<string, unknown>>;
  /** `code path`, in the order in which they are found. */
  readonly expected: readonly string[];
  /** Words that one of the sentences holds. */
  readonly words?: string;
}

const cases: readonly Case[] = [
  {
    what: 'a chamber that the filter does not have',
    changes: { 'packing.baskett-1': [{ medium: 'foam-20ppi', depth: '10 mm' }] },
    expected: ['unknown-chamber packing.baskett-1'],
    words: 'nearest: basket-1',
  },
  {
    what: 'beds that are together deeper than their chamber',
    changes: { 'packing.basket-1[0].depth': '40 mm' },
    expected: ['chamber-overfull packing.basket-1'],
    words: '4.0',
  },
  {
    what: 'a volume that is more than its chamber holds',
    changes: { 'packing.basket-2[0].volume': '1.5 L' },
    expected: ['chamber-overfull packing.basket-2'],
  },
  {
    what: 'a piece wider than its chamber is deep',
    changes: {
      'packing.basket-2[0].medium': 'plastic-balls-35mm',
      'filter.measurements.basketHeight': '30 mm',
    },
    expected: [
      'chamber-overfull packing.basket-1',
      'chamber-overfull packing.basket-3',
      'piece-too-large packing.basket-2[0].medium',
      'chamber-overfull packing.basket-2',
      'chamber-overfull planned.packing.basket-2',
      'chamber-overfull planned.packing.basket-3',
      'chamber-overfull planned.packing.basket-4',
      'chamber-overfull asLeft.packing.basket-1',
      'chamber-overfull asLeft.packing.basket-2',
      'chamber-overfull asLeft.packing.basket-3',
      'chamber-overfull asLeft.packing.basket-4',
    ],
  },
  {
    what: 'a bed without an amount',
    changes: { 'packing.basket-1[0].depth': undefined },
    expected: ['one-of-fields packing.basket-1[0]'],
    words: 'has none',
  },
  {
    what: 'a bed with two amounts',
    changes: { 'packing.basket-1[0].volume': '0.3 L' },
    expected: ['one-of-fields packing.basket-1[0]'],
    words: 'depth and volume',
  },
  {
    what: 'a medium that nobody knows, near to one that is known',
    changes: { 'packing.basket-1[0].medium': 'foam-20pp' },
    expected: ['unknown-medium packing.basket-1[0].medium'],
    words: 'nearest: foam-20ppi',
  },
  {
    what: 'media that nobody knows elsewhere',
    changes: {
      'shelf[0]': 'foam-99ppi',
      'otherFilters[0].media[0].medium': 'stones',
      'money.media.gold': '1 GBP/L',
      'media.my-foam.like': 'felt',
    },
    expected: [
      'unknown-medium media.my-foam.like',
      'unknown-medium otherFilters[0].media[0].medium',
      'unknown-medium money.media.gold',
      'unknown-medium shelf[0]',
    ],
  },
  {
    what: 'an own medium with the short name of one of the catalogue',
    changes: { 'media.floss-loose': { like: 'foam-20ppi' } },
    expected: ['listed-twice media.floss-loose'],
  },
  {
    what: 'a figure that the medium does not have',
    changes: { 'media.my-foam.fibre': '0.1 mm' },
    expected: ['not-for-this-medium media.my-foam.fibre'],
  },
  {
    what: 'a medium twice on the shelf',
    changes: { 'shelf[1].medium': 'foam-20ppi' },
    expected: ['listed-twice shelf[1].medium'],
  },
  {
    what: 'an alteration of another family',
    changes: { 'alterations[0]': 'turn-head' },
    expected: ['alteration-not-here alterations[0]'],
    words: 'canister with a stack of baskets',
  },
  {
    what: 'an alteration that nobody knows',
    changes: { 'alterations[0]': 'seal-gap' },
    expected: ['not-among alterations[0]'],
    words: 'nearest: seal-gaps',
  },
  {
    what: 'the same alteration twice',
    changes: { 'alterations[2]': 'seal-gaps' },
    expected: ['listed-twice alterations[2]'],
  },
  {
    what: 'an alteration without the setting that it needs',
    changes: { 'alterations[0]': 'hose-bore' },
    expected: ['setting-missing alterations[0].bore'],
  },
  {
    what: 'an alteration with a setting of another',
    changes: { 'alterations[1].length': '1 m' },
    expected: ['setting-not-here alterations[1].length'],
  },
  {
    what: 'an alteration both permitted and forbidden',
    changes: { alterations: { permitted: ['seal-gaps'], forbidden: ['seal-gaps', 'move-trays'] } },
    expected: ['alteration-contradiction alterations.forbidden[0]'],
  },
  {
    what: 'a price in another currency than the job',
    changes: { 'filter.price': '85 EUR', 'money.parts.seal-strip': '2 USD' },
    expected: ['currency-mismatch filter.price', 'currency-mismatch money.parts.seal-strip'],
    words: 'one currency is GBP',
  },
  {
    what: 'prices in two currencies where none is named',
    changes: { 'money.currency': undefined, 'filter.price': '85 EUR', money: { tariff: '0.2 GBP/kWh' } },
    expected: [
      'currency-mismatch money.tariff',
      'currency-mismatch shelf[1].price',
      'currency-mismatch media.my-rings.price',
      'currency-mismatch quote.labour[1].price',
      'currency-mismatch quote.parts[1].price',
      'currency-mismatch approval.amount',
    ],
    words: 'one currency is EUR',
  },
  {
    what: 'a currency that is none',
    changes: { 'money.currency': 'GPB' },
    expected: ['bad-currency money.currency'],
  },
  {
    what: 'a curve that rises',
    changes: { 'filter.pump.curve[1].head': '1.4 m' },
    expected: ['curve-not-falling filter.pump.curve[1]'],
    words: '450 L/h at 1.4 m after 0 L/h at 1.3 m',
  },
  {
    what: 'a curve with the same flow twice',
    changes: { 'filter.pump.curve[1].flow': '0 L/h' },
    expected: ['curve-not-falling filter.pump.curve[1]'],
  },
  {
    what: 'a shut-off head below the first point of the curve',
    changes: { 'filter.pump.curve[0].flow': '10 L/h', 'filter.pump.shutoffHead': '1.2 m' },
    expected: ['curve-not-falling filter.pump.shutoffHead'],
  },
  {
    what: 'a curve of one point',
    changes: { 'filter.pump.curve': [{ flow: '0 L/h', head: '1 m' }] },
    expected: ['list-too-short filter.pump.curve'],
  },
  {
    what: 'a pump without flow and curve',
    changes: { 'filter.pump.curve': undefined, 'filter.pump.ratedFlow': undefined },
    expected: ['flow-missing filter.pump.ratedFlow'],
  },
  {
    what: 'a fish that nobody knows',
    changes: { 'tank.fish[0].kind': 'neon-tetr' },
    expected: ['not-among tank.fish[0].kind'],
    words: 'nearest: neon-tetra',
  },
  {
    what: 'a fitting that nobody knows',
    changes: { 'filter.hoses.intake.fittings[0]': 'strainr' },
    expected: ['not-among filter.hoses.intake.fittings[0]'],
    words: 'nearest: strainer',
  },
  {
    what: 'a claim that is no text',
    changes: { 'filter.claims[0]': 900 },
    expected: ['wrong-kind filter.claims[0]'],
    words: 'in quotes',
  },
  {
    what: 'a test of a chamber that is not there',
    changes: { 'tests[3].chamber': 'basket-9' },
    expected: ['unknown-chamber tests[3].chamber'],
  },
  {
    what: 'two tests of one name',
    changes: { 'tests[1].id': 'lift' },
    expected: ['listed-twice tests[2].id'],
  },
  {
    what: 'a gap of a chamber that is not there',
    changes: { 'filter.gaps.lid': '1 mm' },
    expected: ['unknown-chamber filter.gaps.lid'],
  },
  {
    what: 'a promise before the filter came in',
    changes: { 'job.promised': '2026-11-01' },
    expected: ['dates-reversed job.promised'],
  },
  {
    what: 'a day that is not in the calendar',
    changes: { 'job.received': '2026-02-30' },
    expected: ['bad-date job.received'],
  },
  {
    what: 'more entries than a list may have',
    changes: { 'filter.claims': Array.from({ length: 101 }, () => 'x') },
    expected: ['list-too-long filter.claims'],
  },
  {
    what: 'a text that is too long',
    changes: { 'job.title': 'x'.repeat(201) },
    expected: ['text-too-long job.title'],
  },
  {
    what: 'half a fish',
    changes: { 'tank.fish[0].count': 0 },
    expected: ['number-out-of-range tank.fish[0].count'],
  },
  {
    what: 'a doubt that is none',
    changes: { 'tank.volume': '180 L ± -2 L' },
    expected: ['bad-doubt tank.volume'],
  },
  {
    what: 'a gallon that may be two',
    changes: { 'tank.volume': '40 gal' },
    expected: ['ambiguous-quantity tank.volume'],
  },
  {
    what: 'an ammonia reading that does not say as what it is counted',
    changes: { 'tests[5].readings[0].ammonia': '1 mg/L' },
    expected: ['ambiguous-quantity tests[5].readings[0].ammonia'],
  },
];

describe('parts of a document that do not fit together', () => {
  it.each(cases)('$what', ({ changes, expected, words = '' }) => {
    const reading = readWith(changes);
    const problems = reading.ok ? [] : reading.problems;
    expect(problems.map(({ code, path }) => `${code} ${path}`)).toEqual(expected);
    expect(problems.map(({ says }) => says).join(' ')).toContain(words);
  });
});
