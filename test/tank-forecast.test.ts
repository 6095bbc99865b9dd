import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demo, demos, fettle } from './support/program.ts';
import { breachesOf } from './support/results.ts';

describe('forecast --tank', () => {
  test.each(demos.map((path) => [basename(path), path]))(
    'of %s fits the published schema, and its nitrogen balances',
    async (_name, path) => {
      const { code, out } = await fettle(
        'forecast',
        path,
        '--tank',
        '--json',
        '--days',
        '30',
        '--start',
        'new',
      );
      expect(code).toBe(0);
      const result = JSON.parse(out);
      expect(breachesOf('tank', result)).toEqual([]);
      expect(result.day).toHaveLength(31);
      const { start, fed, changed, taken, end } = result.nitrogen;
      const left = changed.value + taken.value + end.value;
      expect(Math.abs((start.value + fed.value) / left - 1)).toBeLessThan(1e-9);
    },
  );

  test('says the same in words, no line wider than 80 columns', async () => {
    const asked = [demo('tall-drum'), '--tank', '--days', '40', '--happens', '5 replace all'];
    const { out } = await fettle('forecast', ...asked);
    const result = JSON.parse((await fettle('forecast', ...asked, '--json')).out);
    const said = out.replaceAll(/\s+/g, ' ');
    for (const { says } of result.says) expect(said).toContain(says);
    expect(said).toContain('must not go back into the tank');
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test.each([
    ['10 replace biological 50 %'],
    ['10 clean all tap'],
    ['3 feed 2 for 7'],
    ['3 temperature 18 °C for 5 days'],
    ['20 harm 90 % leaving 30 % for 5'],
    ['4 stop 6 h rinsed'],
    ['5 change 50 %'],
    ['5 dose 2 mg/L'],
  ])('takes %s', async (what) => {
    const { code } = await fettle(
      'forecast',
      demo('corner-box'),
      '--tank',
      '--days',
      '25',
      '--happens',
      what,
    );
    expect(code).toBe(0);
  });

  test.each([
    [['--happens', '10 explode'], 'bad-happening', 'happens'],
    [['--happens', '10 change 150 %'], 'bad-happening', 'happens'],
    [['--happens', '10 temperature 90 °C'], 'bad-happening', 'happens'],
    [['--happens', '10 replace basket-9'], 'happening-place', 'happens'],
    [['--start', 'old'], 'bad-tank-start', 'start'],
    [['--changes', 'weekly'], 'bad-tank-changes', 'changes'],
    [['--clean', 'usual'], 'not-of-this-forecast', 'clean'],
  ])('refuses %j as %s', async (asked, code, path) => {
    const ended = await fettle('forecast', demo('tall-drum'), '--tank', '--json', ...asked);
    expect(ended.code).toBe(2);
    expect(JSON.parse(ended.out).problems).toMatchObject([{ code, path }]);
  });

  test('a start without --tank is refused', async () => {
    const ended = await fettle('forecast', demo('tall-drum'), '--json', '--start', 'new');
    expect(ended.code).toBe(2);
  });
});
