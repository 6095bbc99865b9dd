import { fileURLToPath } from 'node:url';
import type { Command } from 'commander';
import { describe, expect, test } from 'vitest';
import { commandBench } from '../testing/commandBench.ts';
import { addAssess } from './assess.ts';
import { addOpen } from './open.ts';
import { addPlan } from './plan.ts';

type Add = (program: Command) => void;
const commands: readonly (readonly [string, Add, readonly string[]])[] = [
  ['open', addOpen, []],
  ['assess', addAssess, []],
  ['plan', addPlan, ['--cap', '5']],
];

const inMetric = /\d L\/h/;
/** The rest of the unit may stand on the next line of a narrow column. */
const inUs = /\d US\b/;

describe.each(commands)('the units that %s shows', (name, add, more) => {
  const { out, inRecords } = commandBench(add, name);
  const say = (body: unknown) =>
    inRecords(async (store) => {
      const { revision } = await store.books.find('settings');
      await store.books.revise({ name: 'settings', body, by: 'anna', base: revision });
    });

  test('are those of the settings for a job of the records; an option overrides, JSON stays as it is', async () => {
    const [metric, json] = [await out('1', ...more), await out('1', '--json', ...more)];
    expect(metric).toMatch(inMetric);
    await say({ units: 'us' });
    const us = await out('1', ...more);
    expect(us).toMatch(inUs);
    expect(us).not.toMatch(inMetric);
    expect(await out('1', '--units', 'us', ...more)).toBe(us);
    expect(await out('1', '--units', 'metric', ...more)).toBe(metric);
    expect(await out('1', '--json', ...more)).toBe(json);
    await say({ units: 'metric' });
    expect(await out('1', ...more)).toBe(metric);
  });

  test.skipIf(name === 'open')('are metric for a file, whatever the settings say', async () => {
    await say({ units: 'us' });
    const file = fileURLToPath(new URL('../../../demo/tall-drum.yaml', import.meta.url));
    expect(await out(file, ...more)).toMatch(inMetric);
    expect(await out(file, '--units', 'us', ...more)).toMatch(inUs);
  });
});
