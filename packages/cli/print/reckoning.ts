import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { answerText } from '@fettle/engine/reckonings/answerText.ts';
import { type Reckoned, shelves } from '@fettle/engine/reckonings/reckon.ts';
import type { Reckoning } from '@fettle/engine/reckonings/reckoning.ts';
import { reckonings } from '@fettle/engine/reckonings/reckonings.ts';
import { inTradeWords } from '@fettle/engine/reckonings/seenWords.ts';
import { wrap } from './layout.ts';

/** A result block of at most 80 columns: answers, warnings, source. */
export const printReckoned = (reckoned: Reckoned, system: System): string => {
  const { reckoning, answers, warnings, source } = reckoned;
  const lines = Object.entries(answers).flatMap(([key, answer]) => {
    const facts = reckoning.results[key];
    return facts ? [wrap(`${facts.label}: ${answerText(answer, facts, system)}`, 2)] : [];
  });
  return [
    ...lines,
    ...warnings.map((warning) => wrap(`Warning: ${warning}`, 2)),
    wrap(`Source: ${inTradeWords(source)}.`, 2),
  ].join('\n');
};

const keysOf = ({ inputs }: Reckoning): string =>
  Object.entries(inputs)
    .map(([key, { required, repeats }]) => `${required ? key : `[${key}]`}${repeats ? '…' : ''}`)
    .join(' ');

const shelf = (heading: string, entries: readonly { readonly id: string }[]): string =>
  wrap(`${heading}: ${entries.map(({ id }) => id).join(', ')}`, 2);

/** All reckonings with their keys, and what the catalogue has for them. */
export const printReckonings = (): string =>
  [
    wrap('Reckonings with their keys; those in brackets may be left out.'),
    ...Object.values(reckonings).map(
      (one) => `
${wrap(`${one.name}: ${one.says}`, 2)}
${wrap(`- ${keysOf(one)}`, 2)}`,
    ),
    `
${shelf('Fittings', shelves.fittings)}`,
    shelf('Media', shelves.media),
    '\nExample: fettle reckon hose-loss flow="600 L/h" bore="12 mm" length="1.5 m"',
  ].join('\n');
