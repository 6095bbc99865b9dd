import type { CompiledBed } from '@fettle/engine/assessment/compiled.ts';
import { placesNamed } from '@fettle/engine/assessment/tank/happen.ts';
import type { Happening, TankScenario, TankStart } from '@fettle/engine/assessment/tank/scenario.ts';
import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import { type Problem, problem } from '@fettle/job/problems.ts';

const USUAL_DAYS = 90;
const MOST_DAYS = 730;
const MOST_HAPPENINGS = 50;

/** What a tank is put through, as people write it. */
export interface TankHow {
  /** 1 to 730 days, whole; 90 where left out. */
  readonly days?: number | undefined;
  /** new, ripe, or seeded 20 %; ripe where left out. */
  readonly start?: string | undefined;
  /** One a thing that happens, as `10 replace biological 50 %`. */
  readonly happens?: readonly string[] | undefined;
  /** Water changes on set days, as `30 %/7`; the job's steady ones where left out. */
  readonly changes?: string | undefined;
}

export const happeningForms =
  'DAY replace BEDS [SHARE %]; DAY clean BEDS tank|tap; DAY feed TIMES [for DAYS]; DAY temperature TEMPERATURE [for DAYS]; DAY harm SHARE % [leaving SHARE % for DAYS]; DAY stop HOURS h [rinsed]; DAY change SHARE %; DAY dose CONCENTRATION; as 10 replace biological 50 %';

const share = (text: string | undefined): number | undefined => {
  const percent = Number(text);
  return text !== undefined && percent >= 0 && percent <= 100 ? percent / 100 : undefined;
};

const NUMBER = String.raw`(\d{1,6}(?:\.\d{1,4})?)`;
const FOR = `(?: for ${NUMBER}(?: d| days)?)?`;

const siOf = (
  text: string,
  dimension: Dimension,
  within: { least: number; most: number },
): number | undefined => {
  const reading = readQuantity(text, dimension, within);
  return reading.ok ? reading.value : undefined;
};

const forDays = (text: string | undefined): { readonly forDays?: number } =>
  text === undefined ? {} : { forDays: Number(text) };

type Reader = (parts: readonly (string | undefined)[], day: number) => Happening | undefined;

const COLDEST_K = 278.15;
const WARMEST_K = 308.15;
const MOST_TIMES = 20;
const MOST_HOURS = 240;
const MOST_DOSE = 0.02;

/** Each thing that may happen: how it is written, and how it is read. */
const forms: readonly (readonly [RegExp, Reader])[] = [
  [
    new RegExp(`^replace (\\S+)(?: ${NUMBER} ?%)?$`),
    ([beds, part], day) => {
      const replaced = part === undefined ? 1 : share(part);
      return replaced === undefined ? undefined : { day, kind: 'replace', beds: beds!, share: replaced };
    },
  ],
  [
    /^clean (\S+) (tank|tap)$/,
    ([beds, water], day) => ({ day, kind: 'clean', beds: beds!, water: water === 'tap' ? 'tap' : 'tank' }),
  ],
  [
    new RegExp(`^feed ${NUMBER}${FOR}$`),
    ([times, span], day) =>
      Number(times) <= MOST_TIMES
        ? { day, kind: 'feed', factor: Number(times), ...forDays(span) }
        : undefined,
  ],
  [
    new RegExp(`^temperature (.+?)${FOR}$`),
    ([text, span], day) => {
      const temperatureK = siOf(text!, 'temperature', { least: COLDEST_K, most: WARMEST_K });
      return temperatureK === undefined
        ? undefined
        : { day, kind: 'temperature', temperatureK, ...forDays(span) };
    },
  ],
  [
    new RegExp(`^harm ${NUMBER} ?%(?: leaving ${NUMBER} ?% for ${NUMBER}(?: d| days)?)?$`),
    ([dead, left, span], day) => {
      const [killed, activity] = [share(dead), left === undefined ? 1 : share(left)];
      return killed === undefined || activity === undefined
        ? undefined
        : { day, kind: 'harm', killed, activity, forDays: Number(span ?? 0) };
    },
  ],
  [
    new RegExp(`^stop ${NUMBER} ?h(?: (rinsed))?$`),
    ([hours, rinsed], day) =>
      Number(hours) > 0 && Number(hours) <= MOST_HOURS
        ? { day, kind: 'stop', hours: Number(hours), rinsed: rinsed !== undefined }
        : undefined,
  ],
  [
    new RegExp(`^change ${NUMBER} ?%$`),
    ([part], day) => {
      const changed = share(part);
      return changed === undefined ? undefined : { day, kind: 'change', share: changed };
    },
  ],
  [
    /^dose (.+)$/,
    ([text], day) => {
      const riseKgNPerM3 = siOf(text!, 'concentration', { least: 0, most: MOST_DOSE });
      return riseKgNPerM3 === undefined ? undefined : { day, kind: 'dose', riseKgNPerM3 };
    },
  ],
];

const readHappening = (text: string): Happening | undefined => {
  const [, dayText, what] = /^(?:day )?(\d{1,3}(?:\.\d{1,3})?) (.+)$/.exec(text.trim()) ?? [];
  const day = Number(dayText);
  if (what === undefined || day > MOST_DAYS) return undefined;
  for (const [form, read] of forms) {
    const match = form.exec(what.trim());
    if (match) return read(match.slice(1), day);
  }
  return undefined;
};

const readStart = (text: string): TankStart | undefined => {
  if (text === 'new') return { kind: 'new' };
  if (text === 'ripe') return { kind: 'mature' };
  const seeded = share(/^seeded (\d{1,3}(?:\.\d{1,3})?) ?%$/.exec(text)?.[1]);
  return seeded === undefined ? undefined : { kind: 'seeded', share: seeded };
};

const readChanges = (text: string): NonNullable<TankScenario['changes']> | undefined => {
  const [, part, every] = /^(\d{1,3}(?:\.\d{1,3})?) ?% ?\/ ?(\d{1,3})$/.exec(text.trim()) ?? [];
  const changed = share(part);
  return changed === undefined || !(Number(every) >= 1)
    ? undefined
    : { share: changed, everyDays: Number(every) };
};

const bedsNamed = (happenings: readonly Happening[]): readonly string[] =>
  happenings.flatMap((one) => (one.kind === 'replace' || one.kind === 'clean' ? [one.beds] : []));

const happeningProblems = (texts: readonly string[], beds: readonly CompiledBed[]): readonly Problem[] => {
  const read = texts.map(readHappening);
  const bad = texts.filter((_, place) => read[place] === undefined);
  if (bad.length > 0)
    return bad.map((found) =>
      problem('bad-happening', ['happens'], { facts: { found }, allowed: happeningForms }),
    );
  if (texts.length > MOST_HAPPENINGS)
    return [problem('list-too-long', ['happens'], { facts: { most: MOST_HAPPENINGS } })];
  const named = bedsNamed(read.filter((one) => one !== undefined));
  const allowed = [
    ...new Set(['all', ...beds.flatMap(({ chamber, medium }) => [medium.stage, chamber, medium.id])]),
  ].join(', ');
  return named
    .filter((name) => placesNamed(beds, name).length === 0)
    .map((found) => problem('happening-place', ['happens'], { facts: { found }, allowed }));
};

/** What a tank is put through, for a filter with these beds; or what is wrong with it. */
export const readTankScenario = (
  how: TankHow,
  beds: readonly CompiledBed[],
): { readonly scenario: TankScenario } | { readonly problems: readonly Problem[] } => {
  const texts = how.happens ?? [];
  const start = readStart(how.start ?? 'ripe');
  const changes = how.changes === undefined ? undefined : readChanges(how.changes);
  const problems: Problem[] = [...happeningProblems(texts, beds)];
  if (start === undefined)
    problems.push(
      problem('bad-tank-start', ['start'], {
        facts: { found: how.start ?? '' },
        allowed: 'new; ripe; seeded 20 %',
      }),
    );
  if (how.changes !== undefined && changes === undefined)
    problems.push(
      problem('bad-tank-changes', ['changes'], {
        facts: { found: how.changes },
        allowed: 'a share and days, as 30 %/7',
      }),
    );
  if (problems.length > 0 || start === undefined) return { problems };
  return {
    scenario: {
      days: how.days ?? USUAL_DAYS,
      start,
      happenings: texts.flatMap((text) => readHappening(text) ?? []),
      ...(changes === undefined ? {} : { changes }),
    },
  };
};
