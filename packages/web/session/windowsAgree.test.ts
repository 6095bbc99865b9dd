import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { JobSession } from './jobSession.ts';
import { setting, start } from './testing/jobTools.ts';
import { simulatedWindows } from './testing/simulatedWindows.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

interface Act {
  readonly window: number;
  readonly does: 'set' | 'type' | 'undo' | 'redo' | 'look' | 'elsewhere';
  readonly field: string;
  readonly value: string;
  /** Until the next, ms. */
  readonly thenMs: number;
}

const acts = (does: readonly Act['does'][]): fc.Arbitrary<readonly Act[]> =>
  fc.array(
    fc.record({
      window: fc.nat(2),
      does: fc.constantFrom(...does),
      field: fc.constantFrom('volume', 'feed', 'plants'),
      value: fc.constantFrom('few', 'some', 'many', 'most'),
      thenMs: fc.oneof(fc.nat(20), fc.nat(600)),
    }),
    { minLength: 2, maxLength: 14 },
  );

const delays = fc.array(fc.oneof(fc.nat(10), fc.nat(300)), { minLength: 1, maxLength: 20 });
const windows = fc.integer({ min: 2, max: 3 });

type World = Awaited<ReturnType<typeof simulatedWindows>>;

/** Another machine writes a field that nobody works on here. */
const changeElsewhere = ({ records }: World, pH: string): void => {
  const newest = records.newest();
  records.revisions.push({ ...newest, tank: { ...Object(newest.tank), pH } });
};

const act = (world: World, { window, does, field, value }: Act): void => {
  const session = world.sessions[window % world.sessions.length]!;
  if (does === 'undo') session.undo();
  else if (does === 'redo') session.redo();
  else if (does === 'look') void session.lookForNews();
  else if (does === 'elsewhere') changeElsewhere(world, value);
  else
    session.edit({ says: field, ...(does === 'type' ? { key: field } : {}), recipe: setting(field, value) });
};

/** Long enough for everything to be told, kept and written, ms. */
const settledMs = 60_000;

async function played(count: number, waits: readonly number[], done: readonly Act[]) {
  const world = await simulatedWindows(count, waits);
  for (const each of done) {
    act(world, each);
    await vi.advanceTimersByTimeAsync(each.thenMs);
  }
  await vi.advanceTimersByTimeAsync(settledMs);
  return world;
}

const shownIn = (session: JobSession) => {
  const { document, base, revision, standing, past, future } = session.state();
  const says = (steps: typeof past): readonly string[] => steps.map((step) => step.says);
  return { document, base, revision, standing, past: says(past), future: says(future) };
};

/** One window takes in what another machine wrote between a step and its undoing, while the other window has its own. */
const newsWithinAnUndo = (
  ['elsewhere', 'set', 'set', 'undo', 'look', 'elsewhere', 'undo', 'set', 'set'] as const
).map(
  (does, index): Act => ({
    window: index === 2 ? 1 : 0,
    does,
    field: 'volume',
    value: index === 1 ? 'most' : 'few',
    thenMs: { 3: 1, 5: 2 }[index] ?? 0,
  }),
);

describe('windows of one browser on one job', () => {
  test('come to show the same, and what is kept and recorded is that, whatever is done when and heard when', async () => {
    await fc.assert(
      fc.asyncProperty(
        windows,
        delays,
        acts(['set', 'type', 'set', 'undo', 'redo']),
        async (count, waits, done) => {
          const { sessions, records, open } = await played(count, waits, done);
          const [first, ...others] = sessions.map(shownIn);
          for (const other of others) expect(other).toEqual(first);
          expect(first?.standing.is).toBe('saved');
          expect(records.newest()).toEqual(first?.document);
          const again = await open();
          expect(shownIn(again)).toEqual(first);
          for (const session of [...sessions, again]) session.close();
          await vi.runAllTimersAsync();
        },
      ),
      { numRuns: 300 },
    );
  });

  test('come to show what another machine wrote as well, in other fields than theirs', async () => {
    await fc.assert(
      fc.asyncProperty(
        windows,
        delays,
        acts(['set', 'type', 'undo', 'redo', 'look', 'elsewhere']),
        async (count, waits, done) => {
          const { sessions, records } = await played(count, waits, done);
          for (const session of sessions) void session.lookForNews();
          await vi.advanceTimersByTimeAsync(settledMs);
          const [first, ...others] = sessions.map(shownIn);
          for (const other of others) expect(other).toEqual(first);
          expect(first?.standing.is).toBe('saved');
          expect(records.newest()).toEqual(first?.document);
          const pH = done.findLast(({ does }) => does === 'elsewhere')?.value;
          expect(Object(first?.document.tank).pH).toBe(pH);
          for (const session of sessions) session.close();
          await vi.runAllTimersAsync();
        },
      ),
      { numRuns: 300, examples: [[2, [0, 2, 0], newsWithinAnUndo]] },
    );
  });

  test('lose no edit where each works on fields of its own, and every step of all can be undone in any of them', async () => {
    await fc.assert(
      fc.asyncProperty(windows, delays, acts(['set', 'type']), async (count, waits, all) => {
        const done = all.map((each) => ({ ...each, field: `${each.field} ${each.window % count}` }));
        const { sessions } = await played(count, waits, done);
        const last = Object.fromEntries(done.map(({ field, value }) => [field, value]));
        for (const session of sessions)
          expect(session.state().document.tank).toEqual({ ...Object(start.tank), ...last });
        const back = sessions.at(-1)!;
        while (back.state().past.length > 0) back.undo();
        await vi.advanceTimersByTimeAsync(settledMs);
        for (const session of sessions) {
          expect(session.state().document).toEqual(start);
          session.close();
        }
        await vi.runAllTimersAsync();
      }),
      { numRuns: 300 },
    );
  });
});
