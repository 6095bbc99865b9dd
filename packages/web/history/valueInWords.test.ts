import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { describe, expect, test } from 'vitest';
import { valueInWords } from './valueInWords.ts';

const inWords = (value: unknown): string => valueInWords(value, { document: {}, path: 'job.notes' });

describe('a value in words', () => {
  test('of a bed and of a list names each part once, without brackets', () => {
    expect(inWords([{ medium: 'floss', depth: '20 mm' }])).toBe('medium floss, depth 20 mm');
    expect(inWords(['31 s', '32 s'])).toBe('31 s; 32 s');
  });

  test('has the names that the shelf shows, of media, alterations and kinds of filter', () => {
    const document = { media: { 'old-clay': { name: 'old clay, 9 mm' } } };
    const at = (path: string, value: unknown) => valueInWords(value, { document, path });
    expect(at('packing.basket-1', [{ medium: 'floss-loose', depth: '20 mm' }])).toBe(
      'medium loose floss, depth 20 mm',
    );
    expect(at('packing.basket-1[0].medium', 'old-clay')).toBe('old clay, 9 mm');
    expect(at('filter.family', 'basket-stack-canister')).toBe('canister with a stack of baskets');
    expect(at('planned.made[0]', 'seal-gaps')).toBe(alterationKinds['seal-gaps']?.says);
    expect(at('alterations', [{ change: 'hose-bore', bore: '19 mm' }])).toBe(
      `change ${alterationKinds['hose-bore']?.says}, bore 19 mm`,
    );
    // A note that happens to be the short name of a medium is a note.
    expect(at('job.notes', 'floss-loose')).toBe('floss-loose');
  });

  test('that the history has cut short is not shown as the machine writes it', () => {
    expect(inWords('{"packing":{"basket-1":[{"medium":"flo…')).toMatch(/look at the revision/);
    expect(inWords('[owner] rang twice…')).toBe('[owner] rang twice…');
  });

  test('that is long ends with a whole word', () => {
    const words =
      'the gap over the second basket is wide enough for a thumb and was stuffed with floss that has come loose '.repeat(
        2,
      );
    const said = inWords(words);
    expect(said).toMatch(/ …$/);
    expect(said.length).toBeLessThanOrEqual(121);
    expect(words.startsWith(`${said.slice(0, -2)} `)).toBe(true);
  });

  test('says so where there was nothing, and yes or no', () => {
    expect([inWords(undefined), inWords([]), inWords(true)]).toEqual(['nothing', 'empty', 'yes']);
  });
});
