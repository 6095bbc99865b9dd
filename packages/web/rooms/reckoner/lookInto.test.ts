import { reckonings } from '@fettle/engine/reckonings/reckonings.ts';
import { describe, expect, it } from 'vitest';
import { lookInto, understoodOf } from './lookInto.ts';
import { queryOf, textsOf, textsOfExample } from './texts.ts';

const named = (name: string) => reckonings[name]!;
const hoseLoss = named('hose-loss');

describe('a reckoning that is being filled in', () => {
  it('says by their labels what is still missing, and calls nothing of it wrong', () => {
    expect(lookInto(hoseLoss, { flow: ['600 L/h'], bore: [' '] })).toEqual({
      reckoned: undefined,
      missing: ['inside diameter', 'length'],
      faults: {},
      others: [],
    });
  });

  it('says at its field what is wrong, without the key of the command line', () => {
    const { faults, missing } = lookInto(hoseLoss, { flow: ['600 gal/h'], bore: ['12 kg'], length: ['1 m'] });
    expect(missing).toEqual([]);
    expect(Object.keys(faults)).toEqual(['flow', 'bore']);
    for (const says of Object.values(faults)) expect(says).toMatch(/^(?!flow:|bore:)[^\n]*; allowed: .*\.$/);
  });

  it('says of the whole what no single field can mend', () => {
    const { others, faults, reckoned } = lookInto(named('water-viscosity'), {
      temperature: ['3000 K'],
      salinity: ['35'],
    });
    expect(reckoned).toBeUndefined();
    expect(faults).toEqual({});
    expect(others).toEqual([expect.stringMatching(/^These inputs lead to no possible answer\./)]);
  });

  it('gives what the published examples of every reckoning give', () => {
    for (const reckoning of Object.values(reckonings))
      for (const example of reckoning.examples)
        expect(lookInto(reckoning, textsOfExample(example))).toMatchObject({
          missing: [],
          faults: {},
          others: [],
        });
  });
});

describe('what was understood', () => {
  const { volume, time } = named('timed-flow').inputs;

  it('stands in both systems of units, with its doubt', () => {
    expect(understoodOf(hoseLoss.inputs.bore!, '1/2 in')).toBe('12.7 mm = 0.500 in');
    expect(understoodOf(volume!, '10 ± 0.1 L')).toBe('10.00 ± 0.10 L = 2.642 ± 0.026 US gal');
    expect(understoodOf(time!, '31.2 s')).toBe('31.2 s');
  });

  it('names what a nitrogen compound is counted as', () => {
    const { tan } = named('un-ionized-ammonia').inputs;
    expect(understoodOf(tan!, '0.5 mg/L as NH4')).toBe('0.500 mg/L as NH4');
  });

  it('is not said of what is wrong, or of a plain number', () => {
    expect(understoodOf(hoseLoss.inputs.bore!, '12 kg')).toBeUndefined();
    expect(understoodOf(hoseLoss.inputs.minor!, '3')).toBeUndefined();
  });
});

describe('the address of a reckoning', () => {
  it('brings back what was typed, also a key that was given again, and nothing else', () => {
    const texts = { volume: ['10 ± 0.1 L'], time: ['31.2 s', '', '30.8 s'] };
    const query = queryOf(texts);
    const { inputs } = named('timed-flow');
    expect(textsOf(new URLSearchParams(`${query}&who=me`), inputs)).toEqual({
      volume: ['10 ± 0.1 L'],
      time: ['31.2 s', '30.8 s'],
    });
  });
});
