import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { families } from '@fettle/engine/families/families.ts';
import { buildProgram } from 'fettle/program.ts';
import { describe, expect, test } from 'vitest';
import packageFile from '../packages/cli/package.json' with { type: 'json' };
import { inventedPicture } from '../scripts/records/inventedPictures.ts';
import { demo, demos, demoWith, fettle, fettleProcess, fileWith, newFolder } from './support/program.ts';
import { breachesOf } from './support/results.ts';
import { newWorkshop, type Workshop } from './support/workshop.ts';

const commands = buildProgram().commands.map((command) => command.name());

/** Records with jobs 12 and 13, of which 12 was changed, a photograph to attach, books, and a backup. */
async function workshopForExamples(): Promise<Workshop> {
  const workshop = newWorkshop();
  const { told, path } = workshop;
  for (const number of [12, 13]) {
    writeFileSync(path('in.yaml'), demoWith('tall-drum', ['number: 1\n', `number: ${number}\n`]));
    await told('import', path('in.yaml'));
  }
  writeFileSync(path('in.yaml'), demoWith('tall-drum', ['number: 1\n', 'number: 12\n'], ['180 L', '190 L']));
  await told('import', path('in.yaml'), '--revise');
  writeFileSync(path('photo.jpg'), inventedPicture(5));
  for (const name of ['shelf', 'settings']) writeFileSync(path(`${name}.yaml`), '{}\n');
  await told('backup');
  return workshop;
}

describe('help', () => {
  test('the program lists its commands and something to try', async () => {
    const { out } = await fettle('--help');
    for (const command of commands) expect(out).toMatch(new RegExp(`^ {2}${command} `, 'm'));
    expect(out).toContain('\nTry:\n  fettle demo\n');
  });

  test.each(commands)('%s shows an example of itself', async (command) => {
    const { code, out } = await fettle(command, '--help');
    expect(code).toBe(0);
    expect(out).toMatch(new RegExp(`\nExamples?:\n {2}fettle ${command}`));
    expect(out).toContain('--json');
    expect(out).toContain('--units');
    for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
  });

  /** Those that go on until they are stopped, or ask on a terminal; their own tests run them. */
  const apart = ['serve', 'accounts'];

  test.each(commands.filter((command) => !apart.includes(command)))(
    'the examples of %s work',
    async (command) => {
      const { out } = await fettle(command, '--help');
      const examples = [...out.matchAll(/^ {2}fettle (.+)$/gm)]
        .map(([, words = '']) => words)
        // What is named by an id is another one in each workshop; the tests of such a command run it.
        // So is what goes on until it is stopped.
        .filter((words) => !/\b[a-z0-9]{16}\b|--workbench/.test(words));
      for (const example of examples) {
        const { data, path } = await workshopForExamples();
        const file = path('job.yaml');
        writeFileSync(file, readFileSync(demo(command === 'assess' ? 'everything-wrong' : 'corner-box')));
        const [backup = ''] = readdirSync(join(data, 'backups'));
        const words = example
          .replace(/ < job\.yaml$/, '')
          .match(/(?:[^\s"]|"[^"]*")+/g)!
          .map((word) => word.replaceAll('"', ''))
          .map((word) => (word === 'job.yaml' && command === 'new' ? path('new.yaml') : word))
          .map((word) => (word === 'job.yaml' || word === '-' ? file : word))
          .map((word) => (/\.(?:svg|jpg|yaml)$/.test(word) && word !== file ? path(word) : word))
          .map((word) =>
            ['everything', 'two-jobs', 'pictures', 'written-up', 'sheets'].includes(word) ? path(word) : word,
          )
          .map((word) => (word.startsWith('backups/') ? join(data, 'backups', backup) : word));
        const extra = command === 'plan' ? ['--cap', '20'] : [];
        const inRecords = out.includes('--data') ? ['--data', data] : [];
        const ended = await fettle(...words, ...extra, ...inRecords);
        expect([example, ended.err]).toEqual([example, '']);
        expect(ended.code, example).toBe(example.includes('--fail-on') ? 1 : 0);
      }
    },
  );

  test('the version is that of the package', async () => {
    expect((await fettle('--version')).out).toBe(`${packageFile.version}\n`);
  });
});

describe('residence', () => {
  test.each(demos.map((path) => [basename(path), path]))(
    'of %s fits the published schema and has the figures of the assessment',
    async (_name, path) => {
      const { code, out } = await fettle('residence', path, '--json');
      expect(code).toBe(0);
      const { residence, ...rest } = JSON.parse(out);
      expect(breachesOf('residence', { ...rest, residence })).toEqual([]);
      const assessed = JSON.parse((await fettle('assess', path, '--json')).out);
      expect(residence).toMatchObject(assessed.residence);
      // The two settle the network from different starts: the last digits are the solver's.
      expect(residence.flow.value / assessed.dutyPoint.flow.value).toBeCloseTo(1, 9);
      expect(residence.points.at(-1).share.value).toBeCloseTo(0.999, 5);
    },
  );

  test('says the same in words, no line wider than 80 columns', async () => {
    const { out } = await fettle('residence', demo('corner-box'));
    const { residence } = JSON.parse((await fettle('residence', demo('corner-box'), '--json')).out);
    const said = out.replaceAll(/\s+/g, ' ');
    expect(said).toContain(`for ${Number(residence.mean.value.toPrecision(2))} s on average`);
    expect(said).toContain(`a tenth of it is through after ${Number(residence.t10.value.toPrecision(2))} s`);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('draws water that runs straight through as the longest bar, however soon it is past', async () => {
    const { out } = await fettle('residence', demo('corner-box'));
    const bars = out.split('\n').flatMap((line) => /^ *[\d.]+ s .* % *(#*)$/.exec(line)?.[1]?.length ?? []);
    expect(bars.length).toBeGreaterThan(10);
    expect(bars[1]).toBe(Math.max(...bars));
  });

  test('says where no water flows', async () => {
    const lifted = demoWith('tall-drum', ['outlet: { length', 'outlet: { lift: 4 m, length']);
    expect((await fettle('residence', fileWith(lifted))).out).toBe('No water flows.\n');
  });
});

describe('claims', () => {
  test.each(demos.map((path) => [basename(path), path]))(
    'of %s fit the published schema',
    async (_name, path) => {
      const { code, out } = await fettle('claims', path, '--json');
      expect(code).toBe(0);
      const result = JSON.parse(out);
      expect(breachesOf('claims', result)).toEqual([]);
      expect((await fettle('claims', path, '--json', '--units', 'us')).out).toBe(out);
      expect(result).toEqual({ claims: JSON.parse((await fettle('assess', path, '--json')).out).claims });
    },
  );

  test('papers that exchange gallons contradict themselves', async () => {
    const { claims } = JSON.parse((await fettle('claims', demo('everything-wrong'), '--json')).out);
    const of = (says: string) =>
      claims
        .filter((claim: { says: string }) => claim.says === says)
        .map((claim: { verdict: string }) => claim.verdict);
    expect(of('1150 L/h (253 US gal/h)')).toContain('contradicts-itself');
    expect(of('For 400 L (150 US gal)')).toContain('contradicts-itself');
  });

  test('no claims are told as none', async () => {
    const text = readFileSync(demo('tall-drum'), 'utf8').replace(/^ {2}claims:\n(?: {4}- .*\n)+/m, '');
    expect((await fettle('claims', fileWith(text))).out).toBe('The job states no claims of the maker.\n');
    expect(JSON.parse((await fettle('claims', fileWith(text), '--json')).out)).toEqual({ claims: [] });
  });
});

/** Pairs as papers print them, with slips that happen; each against what a checker says of it. */
describe('claims: slips of units are found', () => {
  const verdictsOf = async (claim: string): Promise<readonly string[]> => {
    const text = readFileSync(demo('tall-drum'), 'utf8').replace(
      /^( {2}claims:\n)(?: {4}- .*\n)+/m,
      `$1    - '${claim}'\n`,
    );
    const { claims } = JSON.parse((await fettle('claims', fileWith(text), '--json')).out);
    return claims.map(({ verdict }: { verdict: string }) => verdict);
  };

  test.each([
    ['litres with US gallons', '850 L/h (225 US gal/h)'],
    ['head in metres and feet', 'Head 1.35 m (4.4 ft)'],
    ['a tank in litres and gallons', 'For tanks up to 240 L (63 US gal)'],
  ])('%s that fit agree', async (_what, claim) => {
    expect(await verdictsOf(claim)).not.toContain('contradicts-itself');
    expect(await verdictsOf(claim)).toContain('agrees');
  });

  test.each([
    ['an imperial gallon called US', '850 L/h (187 US gal/h)'],
    ['two digits swapped', '850 L/h (252 US gal/h)'],
    ['a digit lost', '850 L/h (25 US gal/h)'],
    ['a digit added', '850 L/h (2250 US gal/h)'],
    ['feet taken for metres', 'Head 1.35 m (1.35 ft)'],
    ['litres a minute for litres an hour', '850 L/h (850 L/min)'],
    ['a rounded factor of four', 'For tanks up to 240 L (60 US gal)'],
  ])('%s', async (_what, claim) => {
    expect(await verdictsOf(claim)).toContain('contradicts-itself');
  });
});

describe('check', () => {
  test.each(demos.map((path) => [basename(path), path]))('%s has no problems', async (_name, path) => {
    expect((await fettle('check', path)).out).toMatch(/^No problems\./);
    const result = JSON.parse((await fettle('check', path, '--json')).out);
    expect(breachesOf('check', result)).toEqual([]);
    expect(result.problems).toEqual([]);
  });
});

describe('new', () => {
  test.each(families.map(({ id }) => id))(
    'a new %s reads clean, assesses and plans as it stands',
    async (family) => {
      const file = join(newFolder(), 'deep', 'job.yaml');
      const written = await fettle('new', '--family', family, '--out', file);
      expect([written.code, written.err]).toEqual([0, '']);
      expect(readFileSync(file, 'utf8')).toBe((await fettle('new', '--family', family)).out);
      expect(JSON.parse((await fettle('new', '--family', family, '--json')).out)).toEqual({
        family,
        text: readFileSync(file, 'utf8'),
      });
      expect((await fettle('check', file)).out).toMatch(/^No problems\./);
      for (const words of [
        ['assess', file],
        ['plan', file, '--cap', '10'],
      ]) {
        const { code, out, err } = await fettle(...words);
        expect([code, err]).toEqual([0, '']);
        expect(out).not.toMatch(/NaN|undefined|Infinity|\[object/);
      }
    },
  );

  test('--out never overwrites', async () => {
    const file = fileWith('kept');
    const { code, err } = await fettle('new', '--out', file);
    expect(code).toBe(2);
    expect(err).toContain('not overwritten');
    expect(readFileSync(file, 'utf8')).toBe('kept');
  });

  test('--out with --json names the file', async () => {
    const file = join(newFolder(), 'job.yaml');
    expect(JSON.parse((await fettle('new', '--out', file, '--json')).out)).toEqual({ file });
  });
});

describe('demo', () => {
  test('draws the water path before and after, in a file and in words', async () => {
    const file = join(newFolder(), 'drawing.svg');
    const { code, out, err } = await fettle('demo', '--out', file);
    expect([code, err]).toEqual([0, '']);
    const svg = readFileSync(file, 'utf8');
    expect(svg).toMatch(/^<svg [^>]*viewBox=/);
    expect(svg).not.toMatch(/NaN|undefined|Infinity|\[object/);
    const path = out.slice(out.indexOf('Water path, before and after'));
    expect(path).toMatch(
      /Cleaned, packed as before[\s\S]*from the tank[\s\S]*to the tank[\s\S]*As planned[\s\S]*from the tank/,
    );
    expect(path.replaceAll(/\s+/g, '')).toContain(file.replaceAll(/\s+/g, ''));
  });

  test('--json gives the assessment, the plans and where the drawing is', async () => {
    const file = join(newFolder(), 'drawing.svg');
    const result = JSON.parse((await fettle('demo', '--json', '--out', file)).out);
    expect(Object.keys(result)).toEqual(['assessment', 'plans', 'drawing']);
    expect(breachesOf('assessment', result.assessment)).toEqual([]);
    expect(breachesOf('plans', result.plans)).toEqual([]);
    expect(result.drawing).toBe(file);
  });
});

describe('reckon', () => {
  const words = ['hose-loss', 'flow=600 L/h', 'bore=12 mm', 'length=1.5 m'];

  test('lists every reckoning, on the screen and as JSON', async () => {
    const { reckonings } = JSON.parse((await fettle('reckon', '--json')).out);
    expect(reckonings.length).toBeGreaterThan(10);
    for (const { name } of reckonings) expect((await fettle('reckon')).out).toContain(`\n${name}: `);
  });

  test('works one out, and its JSON fits the published schema', async () => {
    const { out } = await fettle('reckon', ...words, '--json');
    expect(breachesOf('reckoning', JSON.parse(out))).toEqual([]);
    expect((await fettle('reckon', ...words)).out).toContain('Source: ');
  });

  test('a process gives the same bytes', async () => {
    expect(fettleProcess(['reckon', ...words]).out).toBe((await fettle('reckon', ...words)).out);
  });
});
