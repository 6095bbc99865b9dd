import { familyById } from '@fettle/engine/families/families.ts';
import type { Family, Layout, Measurement } from '@fettle/engine/families/layout.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Measurements } from '@fettle/engine/model/model.ts';
import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import { type QuantityReading, readQuantityValue } from '@fettle/engine/quantities/readQuantity.ts';
import { nearestWord } from '@fettle/engine/quantities/spelling.ts';
import type { Draft } from './draft.ts';
import { driveIn } from './drive.ts';
import type { FieldPath } from './fieldPath.ts';
import { ownMedia } from './ownMedia.ts';
import { type Problem, problem, problemOfQuantity } from './problems.ts';
import { shown } from './schema/issues.ts';

/** What the parts of a document are checked and built against. */
export interface Context {
  /** Absent where the document names none that is known. */
  readonly family?: Family;
  /** The measurements that are given, SI. */
  readonly measurements: Readonly<Record<string, ReadMeasurement>>;
  /** Absent where the family or a measurement is missing, or they do not fit together. */
  readonly layout?: Layout;
  /** Names of the chambers, which are known even where some other measurement is wrong. */
  readonly chamberIds?: readonly string[];
  /** Catalogue and the technician's own. */
  readonly media: Readonly<Record<string, Medium>>;
  readonly problems: readonly Problem[];
}

/** A measurement as read. */
export type ReadMeasurement = Extract<QuantityReading, { readonly ok: true }>;

/** Reads from a document what the rest of it is checked against. */
export function contextOf(draft: Draft): Context {
  const own = ownMedia(draft.media ?? {});
  const problems = [...own.problems];
  const id = draft.filter?.family;
  const family = id === undefined ? undefined : familyById(id);
  if (family === undefined) return { measurements: {}, media: own.media, problems };
  const read = readMeasurements(draft.filter?.measurements ?? {}, family);
  problems.push(...read.problems);
  const drive = driveIn(draft.filter?.pump, family);
  const layout = read.sound
    ? family.layOut(completeMeasurements(family, read.measurements), drive)
    : undefined;
  const chamberIds = layout === undefined ? roughChamberIds(family, read) : chamberIdsOf(layout);
  return {
    family,
    measurements: read.measurements,
    ...(layout === undefined ? {} : { layout }),
    ...(chamberIds === undefined ? {} : { chamberIds }),
    media: own.media,
    problems,
  };
}

const dimensionOf: Readonly<Record<Measurement['kind'], Dimension>> = {
  length: 'length',
  area: 'area',
  count: 'count',
  fraction: 'fraction',
  'yes-no': 'count',
};

function readMeasurements(given: Readonly<Record<string, unknown>>, family: Family) {
  const problems: Problem[] = [];
  const measurements: Record<string, ReadMeasurement> = {};
  const wrong: string[] = [];
  const meant = new Map<string, string>();
  const keys = family.measurements.map(({ key }) => key);
  for (const key of Object.keys(given)) {
    if (keys.includes(key)) continue;
    const nearest = nearestWord(key, keys);
    // A misspelt measurement still serves the checks of the rest.
    if (nearest !== undefined && !Object.hasOwn(given, nearest)) meant.set(nearest, key);
    const facts = { nearest };
    problems.push(problem('unknown-field', measurementPath(key), { facts, allowed: keys.join(', ') }));
  }
  for (const measurement of family.measurements) {
    const key = meant.get(measurement.key) ?? measurement.key;
    const path = measurementPath(key);
    const written = Object.hasOwn(given, key) ? given[key] : undefined;
    if (written === undefined) {
      if (measurement.assumed !== undefined) continue;
      const how = measurement.how.replace(/\.$/, '').replace(/^./, (letter) => letter.toLowerCase());
      problems.push(problem('measurement-missing', path, { facts: { how } }));
      wrong.push(measurement.key);
      continue;
    }
    const reading = readMeasurement(measurement, written);
    if (reading.ok) measurements[measurement.key] = reading;
    else {
      problems.push(measurementProblem(path, written, reading));
      wrong.push(measurement.key);
    }
  }
  return { problems, measurements, wrong, sound: wrong.length === 0 };
}

function chamberIdsOf(layout: Layout): readonly string[] {
  return layout.chambers.map(({ id }) => id);
}

/** The chambers' names follow from what is counted, so that a wrong length or area does not hide them. */
function roughChamberIds(
  family: Family,
  read: { readonly measurements: Context['measurements']; readonly wrong: readonly string[] },
): readonly string[] | undefined {
  const doubtful = family.measurements.filter(({ key }) => read.wrong.includes(key));
  if (doubtful.some(({ kind }) => kind !== 'length' && kind !== 'area' && kind !== 'fraction'))
    return undefined;
  const middle = doubtful.map(({ key, assumed, least, most }) => [
    key,
    assumed?.value ?? Math.sqrt(least * most),
  ]);
  const complete = { ...completeMeasurements(family, read.measurements), ...Object.fromEntries(middle) };
  return chamberIdsOf(family.layOut(complete));
}

function measurementPath(key: string): FieldPath {
  return ['filter', 'measurements', key];
}

function measurementProblem(
  path: FieldPath,
  written: unknown,
  reading: Extract<QuantityReading, { readonly ok: false }>,
): Problem {
  if (written === null) return problem('empty-field', path, { facts: {} });
  return problemOfQuantity(path, shown(written), reading);
}

/** Reads one measurement of a family by its kind and limits. */
export function readMeasurement(measurement: Measurement, written: unknown): QuantityReading {
  const { kind, least, most } = measurement;
  if (kind === 'yes-no') return readYesNo(written);
  const reading = readQuantityValue(written, dimensionOf[kind], { least, most });
  if (kind === 'count' && reading.ok && !Number.isInteger(reading.value)) {
    const allowed = `a whole number from ${least} to ${most}`;
    return { ok: false, code: 'not-a-number', says: `${reading.written} is not a whole number`, allowed };
  }
  return reading;
}

function readYesNo(written: unknown): QuantityReading {
  const yes = written === true || written === 'yes';
  if (yes || written === false || written === 'no') {
    return { ok: true, value: yes ? 1 : 0, unit: '', written: yes ? 'yes' : 'no' };
  }
  return {
    ok: false,
    code: 'not-text',
    says: `${shown(written)} is neither yes nor no`,
    allowed: 'yes or no',
  };
}

/** The measurements with the family's own assumptions in the places of missing ones, SI. */
export function completeMeasurements(
  family: Family,
  given: Readonly<Record<string, ReadMeasurement>>,
): Measurements {
  const complete: Record<string, number> = {};
  for (const { key, assumed } of family.measurements) {
    const value = given[key]?.value ?? assumed?.value;
    if (value !== undefined) complete[key] = value;
  }
  return complete;
}
