import { changesBetween } from '@fettle/job/changes/changes.ts';
import { expect, it } from 'vitest';
import { shownChanges } from './shownChanges.ts';

it('tells a small change whole', () => {
  const changes = changesBetween({ tank: { volume: '180 L' }, gone: null }, { tank: { volume: '200 L' } });
  expect(shownChanges(changes)).toEqual(changes);
});

it('stays small however much was changed', () => {
  const large = (letter: string) =>
    Object.fromEntries(Array.from({ length: 5_000 }, (_, place) => [`field-${place}`, letter.repeat(2_000)]));
  const shown = shownChanges(changesBetween(large('a'), large('b')));
  expect(shown).toHaveLength(100);
  expect(JSON.stringify(shown).length).toBeLessThan(100_000);
});
