import type { PairCheck } from '../quantities/checkPair.ts';
import { checkPair } from '../quantities/checkPair.ts';
import type { PairSlip } from '../quantities/pairSlips.ts';
import type { Holding } from './holding.ts';
import type { Claim, ClaimedQuantity } from './readClaims.ts';

const explanations: Readonly<Record<PairSlip, string>> = {
  'imperial-gallon': 'The number fits the imperial gallon.',
  'us-gallon': 'The number fits the US gallon.',
  'swapped-digits': 'Two digits seem to have changed places.',
  'factor-ten': 'A digit or a nought seems to have been lost or added.',
  'factor-sixty': 'Minutes and hours seem to have been exchanged.',
  'not-converted': 'The number was not converted at all.',
  'rounded-factor': 'They are half a per cent apart or less, as a rounded factor leaves them.',
  'digit-slip': 'One digit seems to be wrong.',
  unrelated: 'No single slip explains it.',
};

interface Pair {
  readonly first: ClaimedQuantity;
  readonly second: ClaimedQuantity;
  /** Names of the two in the sentence. */
  readonly names: readonly [string, string];
}

function describe(check: PairCheck, pair: Pair): Pick<Holding, 'verdict' | 'detail' | 'ratio'> {
  const { ratio } = check;
  const both = pair.names.join(' and ');
  if (check.agrees) return { verdict: 'agrees', detail: `${both} are the same within rounding.`, ratio };
  if (check.fits !== undefined)
    return {
      verdict: 'not-checked',
      detail: `${both} fit if ${check.fits} is meant; the statement does not say so.`,
      ratio,
    };
  // In one unit nothing was converted, so there is no slip of conversion to explain.
  const converted = pair.first.unit !== pair.second.unit && check.likely !== 'same';
  const slip = converted ? ` ${explanations[check.likely]}` : '';
  const detail = `${both} are not the same: the first is ${ratio.toPrecision(3)} of the second.${slip}`;
  return { verdict: 'contradicts-itself', detail, ratio };
}

function holdPair(claim: Claim, first: ClaimedQuantity, second: ClaimedQuantity): Holding {
  const { says } = claim;
  const names = [`"${first.text}"`, `"${second.text}"`] as const;
  const check = checkPair(first.text, second.text);
  if (!check.ok) return { says, subject: first.subject, verdict: 'not-checked', detail: check.says };
  return { says, subject: first.subject, ...describe(check, { first, second, names }) };
}

/** Holds the quantities that a statement gives twice against each other. */
export function holdPairs(claim: Claim): readonly Holding[] {
  return claim.quantities.slice(1).flatMap((second, at) => {
    const first = claim.quantities[at];
    return first && second.again ? [holdPair(claim, first, second)] : [];
  });
}

function firstOfSubject(claim: Claim): ClaimedQuantity | undefined {
  return claim.quantities.find((each) => each.subject !== 'unknown' && each.value !== undefined);
}

/** Holds a statement against the earlier ones on the same subject and under the same conditions. */
export function holdAgainstEarlier(claim: Claim, earlier: readonly Claim[]): readonly Holding[] {
  const mine = firstOfSubject(claim);
  if (!mine) return [];
  return earlier.flatMap((other) => {
    const theirs = firstOfSubject(other);
    const comparable = theirs?.subject === mine.subject && theirs.dimension === mine.dimension;
    if (!comparable || other.conditions !== claim.conditions) return [];
    // The flow of the pump alone and that of the whole filter are two figures.
    if (theirs.of !== undefined && mine.of !== undefined && theirs.of !== mine.of) return [];
    const check = checkPair(theirs.text, mine.text);
    if (!check.ok) return [];
    const names = [`"${theirs.text}" (said before)`, `"${mine.text}"`] as const;
    const told = describe(check, { first: theirs, second: mine, names });
    return [{ says: claim.says, subject: mine.subject, ...told }];
  });
}
