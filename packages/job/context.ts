import { familyById } from '@fettle/engine/families/families.ts';
import type { Family, Layout, Measurement } from '@fettle/engine/families/layout.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Measurements } from '@fettle/engine/model/model.ts';
import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import { type QuantityReading, readQuantityValue } from '@fettle/engine/quantities/readQuantity.ts';
import { nearestWord } from '@fettle/engine/quantities/spelling.ts';
import type { Draft } from './draft.ts';
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
  const complete = read.problems.length === 0;
  const layout = complete ? layOut(family, read.measurements) : undefined;
  if (layout !== undefined) problems.push(...layout.problems);
  return {
    family,
    measurements: read.measurements,
    ...(layout?.layout === undefined ? {} : { layout: layout.layout }),
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
  const keys = family.measurements.map(({ key }) => key);
  for (const key of Object.keys(given)) {
    if (keys.includes(key)) continue;
    const facts = { nearest: nearestWord(key, keys) };
    problems.push(problem('unknown-field', measurementPath(key), { facts, allowed: keys.join(', ') }));
  }
  for (const measurement of family.measurements) {
    const path = measurementPath(measurement.key);
    const written = Object.hasOwn(given, measurement.key) ? given[measurement.key] : undefined;
    if (written === undefined) {
      if (measurement.assumed !== undefined) continue;
      const how = measurement.how.replace(/\.$/, '').replace(/^./, (letter) => letter.toLowerCase());
      problems.push(problem('measurement-missing', path, { facts: { how } }));
      continue;
    }
    const reading = readMeasurement(measurement, written);
    if (reading.ok) measurements[measurement.key] = reading;
    else problems.push(measurementProblem(path, written, reading));
  }
  return { problems, measurements };
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

function layOut(family: Family, given: Readonly<Record<string, ReadMeasurement>>) {
  const layout = family.layOut(completeMeasurements(family, given));
  const path = ['filter', 'measurements'];
  const problems: Problem[] = [];
  const crest = (purpose: 'outlet' | 'overflow') => layout.weirs.find((weir) => weir.purpose === purpose);
  const outlet = crest('outlet');
  const overflow = crest('overflow');
  if (outlet !== undefined && overflow !== undefined && overflow.crestHeightM <= outlet.crestHeightM) {
    const detail = `${overflow.label} does not stand above ${outlet.label}`;
    problems.push(problem('measurements-impossible', path, { facts: { detail } }));
  }
  return problems.length > 0 ? { problems } : { problems, layout };
}
