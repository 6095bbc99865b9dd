import { describe, expect, it } from 'vitest';
import { readJob } from './read.ts';
import { commonShelf } from './toModel/supplies.ts';

const canister = `fettle: 1
tank: { volume: 100 L }
filter:
  family: basket-stack-canister
  measurements: { baskets: 2, basketWidth: 160 mm, basketDepth: 150 mm, basketHeight: 60 mm }
  pump: { ratedFlow: 900 L/h }
  hoses: { outlet: { length: 1.5 m, bore: 16 mm } }
packing:
  basket-1: [{ medium: foam-20ppi, depth: 40 mm }]
`;

/** The one problem of a text with one part of it changed. */
function problemWith(from: string, to: string) {
  const found = problemsWith(from, to);
  expect(found).toHaveLength(1);
  return found[0];
}

function problemsWith(from: string, to: string) {
  expect(canister).toContain(from);
  const reading = readJob(canister.replace(from, to));
  return reading.ok ? [] : reading.problems;
}

describe('a decimal comma inside brackets', () => {
  it.each([
    ['1.5 m,', '1,5 m,', 'filter.hoses.outlet.length', 'write a point, 1.5 m,'],
    ['depth: 40 mm', 'depth: 4,0 cm', 'packing.basket-1[0].depth', 'write a point, 4.0 cm,'],
    ['100 L }', '100 L, pH: 7,4 }', 'tank.pH', 'write a point, 7.4,'],
    ['100 L }', '100,5 L ± 2 L }', 'tank.volume', '100.5 L ± 2 L,'],
    ['900 L/h', '1,200 L/h', 'filter.pump.ratedFlow', 'write 1200 L/h without the comma'],
  ])('%s written as %s is told in one sentence', (from, to, path, advice) => {
    expect(problemWith(from, to)).toMatchObject({ code: 'decimal-comma', path });
    expect(problemWith(from, to)?.says).toContain(advice);
  });

  it('in a list of times too', () => {
    const tests = 'tests: [{ kind: timed-volume, volume: 5 L, times: [31,2 s, 30 s, 30,8 s] }]\n';
    expect(problemsWith('packing:', `${tests}packing:`).map(({ code, path }) => `${code} ${path}`)).toEqual([
      'decimal-comma tests[0].times[0]',
      'decimal-comma tests[0].times[2]',
    ]);
  });

  it('is no problem in quotes or on a line of its own', () => {
    expect(problemsWith('1.5 m,', '"1,5 m",')).toEqual([]);
    expect(problemsWith('{ length: 1.5 m, bore: 16 mm }', '\n      length: 1,5 m')).toHaveLength(1);
    expect(problemsWith('  hoses: { outlet: { length: 1.5 m, bore: 16 mm } }', '  price: 85,5 GBP')).toEqual(
      [],
    );
  });

  it('goes on with the number that was meant', () => {
    const found = problemsWith('depth: 40 mm', 'depth: 40,0 cm');
    expect(found.map(({ code }) => code)).toEqual(['chamber-overfull', 'decimal-comma']);
  });

  it('two fields that touch their comma are two fields', () => {
    expect(problemWith('100 L }', '100 L,stock: hevy }')).toMatchObject({ code: 'not-among' });
  });
});

describe('names that are not known', () => {
  it.each([
    ['carbon', 'nearest: carbon-granular-1mm, carbon-granular-2mm, carbon-pellets-4mm'],
    ['bio-balls', 'nearest: plastic-balls-35mm'],
    ['foam', 'nearest: foam-10ppi, foam-20ppi, foam-30ppi'],
    ['rings', 'nearest: ceramic-rings-12mm, ceramic-rings-15mm, porcelain-rings-15mm'],
  ])('%s: %s', (medium, nearest) => {
    const told = problemWith('foam-20ppi', medium);
    expect(told?.says).toContain(nearest);
    expect(told?.allowed).toMatch(/^see docs\/catalogue\.md for all \d+$/);
  });

  it('a long list is printed once only', () => {
    const beds = 'foam-20ppi, depth: 10 mm }, { medium: xyzzy, depth: 10 mm }, { medium: qwerty';
    const found = problemsWith('foam-20ppi', beds);
    expect(found.map(({ code }) => code)).toEqual(['unknown-medium', 'unknown-medium']);
    expect(found[0]?.allowed).toContain('foam-20ppi, ');
    expect(found[1]?.allowed).toBe('as listed for packing.basket-1[1].medium');
  });

  it.each(['Foam-20PPI', 'foam 20ppi', 'FOAM_20PPI'])(
    '%s is taken as foam-20ppi, and a note says so',
    (medium) => {
      const reading = readJob(canister.replace('foam-20ppi', medium));
      expect(reading.ok && reading.model.packing['basket-1']?.[0]?.medium).toBe('foam-20ppi');
      expect(reading.ok && reading.notes).toContainEqual({
        code: 'name-respelt',
        path: 'packing.basket-1[0].medium',
        says: `packing.basket-1[0].medium says "${medium}", which is taken as foam-20ppi.`,
      });
    },
  );

  it('families, fish, fittings, kinds of test and alterations may have capitals and spaces', () => {
    const text = canister
      .replace('basket-stack-canister', 'Basket stack canister')
      .replace('100 L }', '100 L, fish: [{ kind: Neon Tetra, count: 10 }] }')
      .replace('bore: 16 mm', 'bore: 16 mm, fittings: [Spray Bar]');
    const more = 'tests: [{ kind: Power, power: 13 W }]\nalterations: [Seal gaps]\nshelf: [Floss Loose]\n';
    const reading = readJob(text + more);
    expect(reading.ok ? [] : reading.problems).toEqual([]);
    expect(reading.ok && reading.notes.filter(({ code }) => code === 'name-respelt')).toHaveLength(6);
  });
});

describe('sentences that say what to write', () => {
  it.each([
    ['bore: 16 mm', 'bore: 16 m', 'out-of-bounds', /did you mean 16 mm\?/, /0\.15 m or less/],
    ['bore: 16 mm', 'bore: 16/22 mm', 'ambiguous-quantity', /write the bore alone: 16 mm/, /mm/],
    [
      '100 L }',
      '100 L, waterChange: 25 % weekly }',
      'wrong-kind',
      /a group of fields/,
      /\{ share: 25 %, every: 7 d \}/,
    ],
    [
      '100 L }',
      '100 L, fish: 10 neon tetras }',
      'wrong-kind',
      /a list is needed/,
      /- \{ kind: small-tetra, count: 10, length: 4 cm \}/,
    ],
    [
      '[{ medium: foam-20ppi, depth: 40 mm }]',
      '{ medium: foam-20ppi, depth: 40 mm }',
      'wrong-kind',
      /a list is needed/,
      /- \{ medium: foam-20ppi, depth: 40 mm \}/,
    ],
    [
      'packing:',
      'tests: [{ kind: bucket, volume: 5 L }]\npacking:',
      'not-among',
      /not one of the words allowed here/,
      /timed-volume \(flow\), power \(watts\), shutoff-head \(head\), displacement \(volume\), dye/,
    ],
  ])('%s written as %s', (from, to, code, says, allowed) => {
    const told = problemWith(from, to);
    expect(told?.code).toBe(code);
    expect(told?.says).toMatch(says);
    expect(told?.allowed).toMatch(allowed);
  });

  it('a short name with capitals is written back in small letters', () => {
    const told = problemsWith('  basket-1:', '  Basket 1:')[0];
    expect(told).toMatchObject({ code: 'bad-id', allowed: 'such as basket-1' });
  });

  it('US gallons an hour are understood as their makers write them', () => {
    expect(problemsWith('900 L/h', '264 GPH (US)')).toEqual([]);
  });

  it('no unit is offered that is not of the kind', () => {
    expect(problemWith('100 L }', '100 L, feed: 1 pinch }')?.says).not.toContain('perhaps');
  });
});

describe('the checks of how parts fit together run beside problems of shape', () => {
  it.each([
    ['a measurement misspelt', 'basketHeight', 'basketHight'],
    ['an unknown measurement', 'baskets: 2', 'baskets: 2, colour: green'],
    ['a wrong hose', '1.5 m,', '1.5 kg,'],
  ])('a chamber too full is told beside %s', (_what, from, to) => {
    const found = problemsWith(from, to).length;
    const text = canister.replace(from, to).replace('depth: 40 mm', 'depth: 70 mm');
    const reading = readJob(text);
    const codes = reading.ok ? [] : reading.problems.map(({ code }) => code);
    expect(codes).toHaveLength(found + 1);
    expect(codes).toContain('chamber-overfull');
  });

  it('a chamber too full is told although its medium is not known', () => {
    const found = problemsWith('foam-20ppi, depth: 40 mm', 'foam-99ppi, depth: 70 mm');
    expect(found.map(({ code }) => code).toSorted()).toEqual(['chamber-overfull', 'unknown-medium']);
  });

  it('an unknown chamber is told although a length is missing or wrong', () => {
    for (const wrong of ['', ', basketHeight: 60 kg']) {
      const text = canister.replace(', basketHeight: 60 mm', wrong).replace('basket-1:', 'basket-7:');
      const reading = readJob(text);
      const codes = reading.ok ? [] : reading.problems.map(({ code }) => code);
      expect(codes).toContain('unknown-chamber');
      expect(codes).toHaveLength(2);
    }
  });

  it('no chamber is doubted where their number is not known', () => {
    expect(problemWith('baskets: 2', 'baskets: many')).toMatchObject({ path: 'filter.measurements.baskets' });
  });
});

it('without a shelf a common one is assumed, and a note lists it', () => {
  const reading = readJob(canister);
  expect(reading.ok && reading.model.shelf.map(({ medium }) => medium)).toEqual(commonShelf);
  const told = reading.ok && reading.notes.find(({ code }) => code === 'shelf-not-stated')?.says;
  expect(told).toContain(commonShelf.join(', '));
});
