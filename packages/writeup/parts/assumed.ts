import { familyById } from '@fettle/engine/families/families.ts';
import type { Given } from '@fettle/engine/model/model.ts';
import { givenDimensions } from '@fettle/engine/quantities/givenDimensions.ts';
import { inTradeWords } from '@fettle/engine/reckonings/seenWords.ts';
import { type Fact, said } from '@fettle/engine/wording/said.ts';
import { readPath } from '@fettle/job/fieldPath.ts';
import { fieldFacts, inner } from '@fettle/job/schema/fields.ts';
import { jobSchema } from '@fettle/job/schema/job.ts';
import { schemaAt } from '@fettle/job/schema/walk.ts';
import type { Block } from '../content/document.ts';
import { duration, share } from './quantities.ts';
import { lastState, type Writer } from './writer.ts';

const YEAR_S = 365 * 86_400;

/** An assumed value with its doubt, as a fact. */
const givenFact = (writer: Writer, { value, unit, doubt }: Given): Fact => {
  const dimension = givenDimensions[unit];
  if (dimension !== undefined) return { value, dimension, ...(doubt === undefined ? {} : { doubt }) };
  const price = /^([A-Z]{3})\/(s|J)$/.exec(unit);
  if (price?.[1] !== undefined)
    return {
      value,
      dimension: price[2] === 's' ? 'price-per-time' : 'price-per-energy',
      currency: price[1],
    };
  if (unit === 'yes or no') return writer.say(value === 0 ? 'given.no' : 'given.yes');
  if (unit === 'a') return duration(value * YEAR_S);
  if (unit === '1/s')
    return writer.say('given.a-week', { share: share(Number((value * 7 * 86_400).toPrecision(3))) });
  return unit === '1' || unit === ''
    ? { value, dimension: 'count', ...(doubt === undefined ? {} : { doubt }) }
    : `${Number(value.toPrecision(3))} ${unit}`;
};

/** Fields whose label in the schema is not that of the value that is taken. */
const relabelled: readonly string[] = ['tank.waterChange', 'tank.altitude'];

/** What the schema calls a field; its path where it has no name. */
const schemaLabel = (writer: Writer, path: string): string => {
  const schema = schemaAt(jobSchema, writer.source.document, readPath(path));
  return (schema && fieldFacts.get(inner(schema))?.says) ?? path;
};

/** A field of the document in words. */
export const fieldFact = (writer: Writer, path: string): Fact => {
  if (relabelled.includes(path)) return said(`field.${path}`);
  const [, kind, of = '', key = ''] = path.split('.');
  if (kind === 'measurements') {
    const { family } = writer.source.document.filter;
    return { name: familyById(family)?.measurements.find((one) => one.key === of)?.label ?? path };
  }
  // What stands behind a colon or a semicolon helps who fills it in, not who reads it.
  const field = writer.name(schemaLabel(writer, path)).replace(/[:;].*$/, '');
  return kind === 'hoses' && key !== '' ? said('field.of-hose', { hose: said(`hose.${of}`), field }) : field;
};

const otherCurrency = /^(.*); the number for pounds sterling taken for ([A-Z]{3})$/;

/** Why a value was taken. */
const reasonText = (writer: Writer, assumedBecause: string): string => {
  const reason = assumedBecause.replace(/^not stated: /, '');
  const [, because, currency] = otherCurrency.exec(reason) ?? [];
  const text =
    because === undefined || currency === undefined
      ? writer.name(reason)
      : writer.say('reason.other-currency', { reason: writer.name(because), currency });
  return inTradeWords(text);
};

const byFactor =
  /^(?<value>\S+) ×\/÷ (?<factor>\S+)(?: (?<unit>[^(]+?))?(?: \((?<us>\S+) ×\/÷ \S+ (?<usUnit>[^)]+)\))?$/;

/** A doubt by a factor behind the figure in both its units, `12.8 mm (0.50 in), ×/÷ 1.1`: a factor has no unit. */
const factorBehind = (text: string): string => {
  const found = byFactor.exec(text)?.groups;
  if (found === undefined) return text;
  const { value, factor, unit, us, usUnit } = found;
  const metric = unit === undefined ? value : `${value} ${unit}`;
  return `${metric}${us === undefined ? '' : ` (${us} ${usUnit})`}, ×/÷ ${factor}`;
};

/** What the job does not state, what was taken instead, and why. */
export const assumedTable = (writer: Writer): readonly Block[] => {
  const givens = lastState(writer.source).model.givens.filter(({ assumedBecause }) => assumedBecause);
  if (givens.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'assumed',
      caption: writer.say('table.assumed'),
      columns: [
        { head: writer.say('column.field'), align: 'left', share: 1.5 },
        { head: writer.say('column.taken'), align: 'left' },
        { head: writer.say('column.because'), align: 'left', share: 2 },
      ],
      rows: givens.map((given) => [
        writer.fact(fieldFact(writer, given.path)),
        factorBehind(writer.fact(givenFact(writer, given))),
        reasonText(writer, given.assumedBecause ?? ''),
      ]),
    },
  ];
};
