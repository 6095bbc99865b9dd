import type { Model } from '../model/model.ts';
import { quantity } from '../wording/facts.ts';
import { type Fact, type Said, said } from '../wording/said.ts';
import type { Doubts, InputShare } from './doubtOf.ts';
import type { Measurement } from './measurements.ts';
import type { Range } from './ranges.ts';

/** So many inputs are named; one that makes less of the range than this is not. */
const NAMED = 3;
const LEAST_NAMED = 0.05;

/** What a field of the job is called; its path where nobody has a better name for it. */
export type FieldNaming = (path: string) => Fact;

const byPath: FieldNaming = (path) => path;

/** What an input is called. */
export const inputName = (
  { id, kind }: Pick<InputShare, 'id' | 'kind'>,
  { media }: Model,
  named: FieldNaming = byPath,
): Fact => {
  if (kind === 'constant') return said(`doubt.constant.${id}`);
  if (kind === 'job') return named(id);
  const at = id.lastIndexOf('.');
  const medium = media[id.slice(0, at)]?.name ?? id.slice(0, at);
  return said('doubt.medium', { figure: said(`doubt.figure.${id.slice(at + 1)}`), medium: { name: medium } });
};

/** Ends and middle of a range are known to two figures at the best. */
const rangeFacts = ({ low, median, high }: Range) => ({
  low: { ...quantity(low, 'volume'), digits: 2 },
  median: { ...quantity(median, 'volume'), digits: 2 },
  high: { ...quantity(high, 'volume'), digits: 2 },
});

/** How one measurement is taken. */
export const howSaid = ({ kind, of }: Measurement, { media }: Model, named: FieldNaming = byPath): Said => {
  const name: Fact =
    of === undefined ? '' : kind === 'find-pore-space' ? { name: media[of]?.name ?? of } : named(of);
  return said(`doubt.how.${kind}`, { of: name });
};

/** How sure the served volume is, what makes its range, and what to measure next. */
export const doubtSaid = (
  { ranges, tested, inputs, measureNext, ...of }: Doubts,
  model: Model,
  named: FieldNaming = byPath,
): readonly Said[] => {
  const served = ranges['intervalEnd.servedM3'];
  if (served.high <= 0) return [said('doubt.serves.nothing')];
  const sayings = [said('doubt.serves', rangeFacts(served))];
  if (tested?.agrees) sayings.push(said('doubt.tested', rangeFacts(tested.ranges['intervalEnd.servedM3'])));
  if (tested && !tested.agrees) sayings.push(said('doubt.tested.contradicts'));
  const greatest = inputs.slice(0, NAMED).filter(({ share }) => share >= LEAST_NAMED);
  const all = greatest.map((input) =>
    said('doubt.input', { what: inputName(input, model, named), share: { share: input.share } }),
  );
  if (all.length > 0) sayings.push(said('doubt.makes', { inputs: { all } }));
  const [next] = measureNext;
  sayings.push(
    next === undefined
      ? said('doubt.next.none')
      : said('doubt.next', { how: howSaid(next, model, named), left: { share: next.widthLeft } }),
  );
  if (of.unsolved > 0)
    sayings.push(said('doubt.unsolved', { count: of.unsolved, draws: of.unsolved + of.draws }));
  return sayings;
};
