import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demo, demos, fettle } from './support/program.ts';
import { breachesOf } from './support/results.ts';

describe('forecast', () => {
  test.each(demos.map((path) => [basename(path), path]))(
    'of %s fits the published schema, begins clean, and its solids balance',
    async (_name, path) => {
      const { code, out } = await fettle('forecast', path, '--json', '--days', '30', '--clean', 'all/14');
      expect(code).toBe(0);
      const result = JSON.parse(out);
      expect(breachesOf('forecast', result)).toEqual([]);
      expect(result.day).toHaveLength(31);
      expect(result.flowRatio.values[0]).toBe(1);
      expect(result.cleanings.map(({ day }: { day: number }) => day)).toEqual([14, 28]);
      const { start, made, ...went } = result.solids as Record<string, { value: number }>;
      const found = Object.values(went).reduce((sum, { value }) => sum + value, 0);
      expect(found / (start!.value + made!.value)).toBeCloseTo(1, 9);
      const assessed = JSON.parse((await fettle('assess', path, '--json')).out);
      expect(result.flow.values[0] / assessed.dutyPoint.flow.value).toBeCloseTo(1, 7);
    },
  );

  test('says the same in words, no line wider than 80 columns', async () => {
    const { out } = await fettle('forecast', demo('back-hanger'), '--days', '60');
    const result = JSON.parse((await fettle('forecast', demo('back-hanger'), '--json', '--days', '60')).out);
    const said = out.replaceAll(/\s+/g, ' ');
    expect(said).toContain(`after ${Number(result.firstEnd.after.value.toPrecision(2))} days`);
    expect(said).toContain('coarse bonded pad in slot 1');
    expect(said).toContain('An overflow opens after');
    for (const { says } of result.says) expect(said).toContain(says);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('leaves none of the solids out of its sentence: what still floats in the tank is told', async () => {
    const { out } = await fettle('forecast', demo('everything-wrong'), '--json');
    const { solids, says } = JSON.parse(out);
    const told = says.find(({ code }: { code: string }) => code === 'forecast.solids').says;
    expect(told).toContain(`${Number(solids.suspended.value.toPrecision(2))} g still float in the tank`);
  });

  test('of a planted tank says for programs too that what plants shed is not counted', async () => {
    const codesOf = async (name: string): Promise<readonly string[]> => {
      const { out } = await fettle('forecast', demo(name), '--json', '--days', '10');
      return JSON.parse(out).says.map(({ code }: { code: string }) => code);
    };
    expect(await codesOf('tall-drum')).toContain('forecast.litter');
    expect(await codesOf('back-hanger')).not.toContain('forecast.litter');
  });

  test.each([
    ['sometimes', 'bad-pattern'],
    ['all/0', 'bad-pattern'],
    ['flow 120 %', 'bad-pattern'],
    ['basket-7/30', 'pattern-place'],
  ])('refuses the pattern %s as %s', async (pattern, code) => {
    const ended = await fettle('forecast', demo('tall-drum'), '--json', '--clean', pattern);
    expect(ended.code).toBe(2);
    expect(JSON.parse(ended.out).problems).toMatchObject([{ code, path: 'clean' }]);
  });
});
