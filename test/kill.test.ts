import { expect, test } from 'vitest';
import { harms } from '../scripts/records/harms.ts';
import { killRounds } from '../scripts/records/killRounds.ts';

test('nothing acknowledged is lost where a writing server is killed', { timeout: 240_000 }, async () => {
  const tally = await killRounds({ rounds: 6, seed: 20 });
  expect(tally.losses).toEqual([]);
  expect(tally.acknowledged).toBeGreaterThanOrEqual(tally.rounds);
});

test.each(Object.keys(harms))(
  'the kill run sees a harm done on purpose: %s',
  { timeout: 240_000 },
  async (name) => {
    // It ends with the first loss; a round may leave nothing of the kind that is to be harmed.
    const tally = await killRounds({ rounds: 5, seed: 21, harm: harms[name]!() });
    expect(tally.losses).not.toEqual([]);
  },
);
