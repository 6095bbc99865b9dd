import type { PairCheck } from '../quantities/checkPair.ts';
import { checkPair } from '../quantities/checkPair.ts';
import { number } from '../wording/facts.ts';
import { type Said, said } from '../wording/said.ts';
import { type Holding, holding, type Told } from './holding.ts';
import type { Claim, ClaimedQuantity } from './readClaims.ts';

interface Pair {
  readonly first: ClaimedQuantity;
  readonly second: ClaimedQuantity;
  /** Whether the first was said in an earlier statement. */
  readonly before?: boolean;
}

const namesOf = ({
  first,
  second,
  before = false,
}: Pair): { readonly first: Said; readonly second: Said } => ({
  first: said(before ? 'claim.quoted-before' : 'claim.quoted', { text: first.text }),
  second: said('claim.quoted', { text: second.text }),
});

function describe(check: PairCheck, pair: Pair): Told {
  const names = namesOf(pair);
  const { ratio } = check;
  if (check.agrees) return { verdict: 'agrees', said: said('claim.pair.same', names), ratio };
  if (check.fits !== undefined) {
    const meant = { all: check.fits.split(' and ') };
    return { verdict: 'not-checked', said: said('claim.pair.fits', { ...names, meant }), ratio };
  }
  // In one unit nothing was converted, so there is no slip of conversion to explain.
  const converted = pair.first.unit !== pair.second.unit && check.likely !== 'same';
  const facts = { ...names, ratio: number(ratio) };
  return {
    verdict: 'contradicts-itself',
    said: converted
      ? said('claim.pair.differs-by', { ...facts, slip: said(`slip.${check.likely}`) })
      : said('claim.pair.differs', facts),
    ratio,
  };
}

function holdPair(claim: Claim, first: ClaimedQuantity, second: ClaimedQuantity): Holding {
  const of = { says: claim.says, subject: first.subject };
  const check = checkPair(first.text, second.text);
  if (check.ok) return holding(of, describe(check, { first, second }));
  const unclear = said('claim.pair.unclear', namesOf({ first, second }));
  // What is wrong with the pair is said more exactly, in English alone.
  return { ...holding(of, { verdict: 'not-checked', said: unclear }), detail: check.says };
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
    const told = describe(check, { first: theirs, second: mine, before: true });
    return [holding({ says: claim.says, subject: mine.subject }, told)];
  });
}
