import { expect, test } from 'vitest';
import { harms } from '../scripts/records/harms.ts';
import { killRounds } from '../scripts/records/killRounds.ts';

/** `npm run kill -- 200` kills at many more moments; here each kind of loss is looked for. */
test('nothing acknowledged is lost where a writing server is killed', { timeout: 240_000 }, async () => {
  const tally = await killRounds({ rounds: 6, seed: 20 });
  expect(tally.losses).toEqual([]);
  expect(tally.acknowledged).toBeGreaterThanOrEqual(tally.rounds);
});

test.each(Object.keys(harms))(
  'the kill run sees a harm done on purpose: %s',
  { timeout: 240_000 },
  async (name) => {
    // It ends with the first loss; a round may leave nothing of the kind that is to be harmed. When it was killed
    // does not matter here: what is to be seen is done afterwards.
    const tally = await killRounds({ rounds: 5, seed: 21, harm: harms[name]!(), longestMs: 200 });
    expect(tally.losses).not.toEqual([]);
  },
);
