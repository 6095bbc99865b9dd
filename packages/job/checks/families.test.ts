import { media } from '@fettle/engine/catalogue/media.ts';
import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { describe, expect, it } from 'vitest';
import { alterationSettings } from '../alterationList.ts';
import { newJob } from '../newJob.ts';
import { problemWordings } from '../problems.ts';
import { readJob } from '../read.ts';
import { readWith } from '../testing/readWith.ts';

function startOf(family: string): string {
  const started = newJob(family);
  return started.ok ? started.text : '';
}

describe('parts of a document that do not fit its family', () => {
  it.each([
    ['hang-on-back', 'outlet', ['not-in-family filter.hoses.outlet']],
    ['internal-box', 'intake', ['not-in-family filter.hoses.intake']],
  ])('a hose that the %s does not have', (family, side, expected) => {
    const text = startOf(family).replace('  # price', `  hoses: { ${side}: { length: 1 m } }\n  # price`);
    const reading = readJob(text.replace(/ {2}hoses:\n(?: {4,}.*\n)+/, ''));
    expect(reading.ok ? [] : reading.problems.map(({ code, path }) => `${code} ${path}`)).toEqual(expected);
  });

  it('an overflow lip that does not stand above the outlet edge is noted', () => {
    const reading = readJob(
      startOf('hang-on-back').replace('# overflowCrestHeight: 22 mm', 'overflowCrestHeight: 5 mm'),
    );
    const told = reading.ok ? reading.notes.find(({ code }) => code === 'overflow-below-outlet') : undefined;
    expect(told?.path).toBe('filter.measurements.overflowCrestHeight');
    expect(told?.says).toContain('(5.00 mm) is not above the outlet edge (10.0 mm)');
  });

  it('an overflow lip above the outlet edge needs no note', () => {
    const reading = readJob(startOf('hang-on-back'));
    expect(reading.ok && reading.notes.map(({ code }) => code)).not.toContain('overflow-below-outlet');
  });
});

it.each([
  ['is missing', ''],
  ['is none that we know', 'family: bucket'],
])('a family that %s is told by its field, with all that are known', (_, line) => {
  const reading = readJob(startOf('hang-on-back').replace('family: hang-on-back', line || '# no family'));
  const [problem, ...others] = reading.ok ? [] : reading.problems;
  expect(problem?.path).toBe('filter.family');
  expect(problem?.allowed).toContain('split-housing-canister');
  expect(others.filter(({ code }) => code === 'measurement-missing')).toEqual([]);
});

describe('what the checks rest on', () => {
  it('every wording is one sentence, and every code is worded', () => {
    const codes = Object.keys(problemWordings);
    expect(codes.length).toBeGreaterThan(40);
    for (const code of codes) expect(code).toMatch(/^[a-z0-9]+(?:-[a-z0-9]+)*$/);
  });

  it('every setting of an alteration can be written', () => {
    const offered: readonly string[] = Object.values(alterationSettings);
    for (const { id, settings } of Object.values(alterationKinds)) {
      for (const setting of settings) expect(offered, id).toContain(setting);
    }
  });

  it('every id of the catalogue can be written', () => {
    for (const id of Object.keys(media)) {
      expect(readWith({ 'shelf[0]': id, 'shelf[1].medium': 'my-rings' }).ok, id).toBe(true);
    }
  });
});
