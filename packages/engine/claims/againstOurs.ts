import { quantity as fact, number } from '../wording/facts.ts';
import { type Said, said } from '../wording/said.ts';
import { type Computed, type Holding, holding, type Told } from './holding.ts';
import type { Claim, ClaimedQuantity } from './readClaims.ts';

/**
 * Share by which ours may differ from a claim that is still met.
 * Common practice, no source: careful timed volumes and plug meters are good to a few per cent.
 */
export const claimTolerance = 0.1;

/**
 * Largest area per volume that bacteria can use, m²/m³; more is an area found by gas adsorption.
 * Common practice, no source: coarse and fine foams and grains have 300 to 3000 m²/m³.
 */
export const mostUsableAreaPerM = 3000;

/** Ours against the claim: met within the tolerance, or not. */
function compare(ours: number, claimed: number, sentence: (share: Said) => Said): Told {
  if (claimed === 0) return { verdict: 'not-checked', said: said('claim.zero') };
  const ratio = ours / claimed;
  const verdict = isWithin(ratio, claimTolerance) ? 'agrees' : 'differs-from-ours';
  return { verdict, said: sentence(said('claim.share', { ratio: number(ratio) })), ratio };
}

const isWithin = (ratio: number, share: number): boolean => Math.abs(ratio - 1) <= share + 1e-9;

/** A claim that lies within the doubt of our own figure is not told to differ from it. */
function allowDoubt(told: Told, doubtRatio = 0): Told {
  const { verdict, ratio } = told;
  if (verdict !== 'differs-from-ours' || ratio === undefined || !isWithin(1 / ratio, doubtRatio)) return told;
  const doubt = fact(doubtRatio, 'fraction');
  return { ...told, verdict: 'agrees', said: said('claim.within-doubt', { detail: told.said, doubt }) };
}

/** A figure claimed, as one number or a range. */
interface Claimed {
  readonly value: number;
  readonly from?: number;
}

function holdFlow(claimed: number, computed: Computed): Told | undefined {
  const { flowM3PerS, ratedFlowM3PerS, flowDoubtRatio } = computed;
  if (flowM3PerS !== undefined) {
    const ours = fact(flowM3PerS, 'flow');
    const told = compare(flowM3PerS, claimed, (share) =>
      ratedFlowM3PerS === undefined
        ? said('claim.flow', { ours, share })
        : said('claim.flow-and-rated', { ours, share, rated: fact(ratedFlowM3PerS, 'flow') }),
    );
    return allowDoubt(told, flowDoubtRatio);
  }
  if (ratedFlowM3PerS === undefined) return undefined;
  const ours = fact(ratedFlowM3PerS, 'flow');
  return compare(ratedFlowM3PerS, claimed, (share) => said('claim.pump-flow', { ours, share }));
}

/** Two statements of one flow in different units differ by their rounding, which is half a per cent at most. */
const sameStatement = 0.005;

/** A statement about the pump alone is held against the pump alone; what the head leaves of it is told beside. */
function holdPumpFlow(claimed: number, computed: Computed): Told | undefined {
  const { flowM3PerS, ratedFlowM3PerS, ratedFlowMeasured } = computed;
  const atTank = (detail: Said): Said =>
    claimed > 0 && flowM3PerS !== undefined
      ? said('claim.at-the-tank', {
          detail,
          flow: fact(flowM3PerS, 'flow'),
          ratio: number(flowM3PerS / claimed),
        })
      : detail;
  if (ratedFlowM3PerS === undefined) {
    if (!(claimed > 0) || flowM3PerS === undefined) return undefined;
    return { verdict: 'not-checked', said: atTank(said('claim.pump-not-measured')) };
  }
  if (isTheClaim(ratedFlowM3PerS, claimed, ratedFlowMeasured))
    return { verdict: 'not-checked', said: atTank(said('claim.is-the-rating')) };
  const ours = fact(ratedFlowM3PerS, 'flow');
  return compare(ratedFlowM3PerS, claimed, (share) => atTank(said('claim.pump-flow', { ours, share })));
}

function holdTank({ value, from }: Claimed, { servedM3 }: Computed): Told | undefined {
  if (!servedM3) return undefined;
  const served = {
    light: fact(servedM3.light, 'volume'),
    normal: fact(servedM3.normal, 'volume'),
    heavy: fact(servedM3.heavy, 'volume'),
  };
  const sentence = (share: Said): Said => said('claim.tank', { ...served, share });
  if (from !== undefined) return holdTankRange({ ours: servedM3.normal, from, to: value }, sentence);
  const told = compare(servedM3.normal, value, sentence);
  // Serving more than is claimed keeps the claim.
  return servedM3.normal >= value && value > 0 ? { ...told, verdict: 'agrees' } : told;
}

function holdTankRange(
  { ours, from, to }: { readonly ours: number; readonly from: number; readonly to: number },
  sentence: (where: Said) => Said,
): Told {
  const ratio = ours / to;
  if (ours > to) {
    return {
      verdict: 'agrees',
      said: sentence(said('claim.above-range', { ratio: number(ratio) })),
      ratio,
    };
  }
  if (ours >= from) {
    const percent = Math.round((100 * (ours - from)) / (to - from));
    return { verdict: 'agrees', said: sentence(said('claim.inside-range', { percent })), ratio };
  }
  const below = compare(ours, from, () =>
    sentence(said('claim.below-range', { ratio: number(ours / from) })),
  );
  return { ...below, ratio };
}

/** Whether what we have is nothing but the claim again, because it was not measured. */
const isTheClaim = (ours: number, claimed: number, isMeasured: boolean | undefined): boolean =>
  isMeasured !== true && claimed > 0 && Math.abs(ours / claimed - 1) <= sameStatement;

const notIndependent: Told = { verdict: 'not-checked', said: said('claim.not-independent') };

function holdHead(claimed: number, { shutoffHeadM, shutoffHeadMeasured }: Computed): Told | undefined {
  if (shutoffHeadM === undefined) return undefined;
  if (isTheClaim(shutoffHeadM, claimed, shutoffHeadMeasured)) return notIndependent;
  return compare(shutoffHeadM, claimed, (share) =>
    said('claim.head', { ours: fact(shutoffHeadM, 'length'), share }),
  );
}

function holdPower(claimed: number, { powerW, powerMeasured }: Computed): Told | undefined {
  if (powerW === undefined) return undefined;
  if (isTheClaim(powerW, claimed, powerMeasured)) return notIndependent;
  const code = powerMeasured === true ? 'claim.power-measured' : 'claim.power';
  return compare(powerW, claimed, (share) => said(code, { ours: fact(powerW, 'power'), share }));
}

function areaPerVolume(quantity: ClaimedQuantity, mediaVolumeM3: number | undefined): number | undefined {
  if (quantity.dimension === 'specific-area') return quantity.value;
  const shared = quantity.dimension === 'area' && quantity.value !== undefined && mediaVolumeM3;
  return shared ? quantity.value / mediaVolumeM3 : undefined;
}

function holdSurface(quantity: ClaimedQuantity, { mediaVolumeM3 }: Computed): Told | undefined {
  if (quantity.dimension === 'area-per-mass')
    return { verdict: 'not-checked', said: said('claim.area-per-mass') };
  const claimed = areaPerVolume(quantity, mediaVolumeM3);
  if (claimed === undefined) return undefined;
  if (claimed <= mostUsableAreaPerM) return { verdict: 'not-checked', said: said('claim.area-usable') };
  const times = Number((claimed / mostUsableAreaPerM).toPrecision(2));
  return {
    verdict: 'differs-from-ours',
    said: said('claim.area-by-gas', { times }),
    ratio: mostUsableAreaPerM / claimed,
  };
}

function holdQuantity(
  quantity: ClaimedQuantity,
  { value, from }: Claimed,
  computed: Computed,
): Told | undefined {
  const { subject } = quantity;
  const { mediaVolumeM3 } = computed;
  switch (subject) {
    case 'flow':
      return quantity.of === 'pump' ? holdPumpFlow(value, computed) : holdFlow(value, computed);
    case 'tank-volume':
      return holdTank({ value, ...(from === undefined ? {} : { from }) }, computed);
    case 'power':
      return holdPower(value, computed);
    case 'surface':
      return holdSurface(quantity, computed);
    case 'head':
      return holdHead(value, computed);
    case 'media-volume':
      return mediaVolumeM3 === undefined
        ? undefined
        : compare(mediaVolumeM3, value, (share) =>
            said('claim.media', { ours: fact(mediaVolumeM3, 'volume'), share }),
          );
    case 'weight':
    case 'unknown':
      return undefined;
  }
}

/** Holds each of the meanings of a figure; only where all come to the same is there a verdict. */
function holdEither(quantity: ClaimedQuantity, computed: Computed): Told | undefined {
  const meanings = (quantity.either ?? []).flatMap((meaning) => {
    const told = holdQuantity({ ...quantity, value: meaning.value }, meaning, computed);
    return told ? [{ meaning, told }] : [];
  });
  const [first] = meanings;
  if (first === undefined) return undefined;
  const alike = meanings.every(({ told }) => told.verdict === first.told.verdict);
  const all = meanings.map(({ meaning, told }) =>
    said('claim.meaning', {
      unit: meaning.unit,
      claimed: fact(meaning.value, quantity.dimension),
      detail: told.said,
    }),
  );
  return {
    verdict: alike ? first.told.verdict : 'not-checked',
    said: said('claim.either', { text: quantity.text, meanings: { all, by: ' ' } }),
  };
}

/**
 * Holds a statement against ours: the first quantity of each subject, the pump's and the filter's flow apart, that can
 * be read without asking; where there is none, the first that may mean two, in both its meanings.
 */
export function holdAgainstOurs(claim: Claim, computed: Computed): readonly Holding[] {
  const seen = new Set<string>();
  const certain = claim.quantities.filter(({ value }) => value !== undefined);
  const open = claim.quantities.filter(({ value }) => value === undefined);
  return [...certain, ...open].flatMap((quantity) => {
    const key = `${quantity.subject} ${quantity.of ?? ''}`;
    if (seen.has(key)) return [];
    seen.add(key);
    const { value, from } = quantity;
    const told =
      value === undefined
        ? holdEither(quantity, computed)
        : holdQuantity(quantity, { value, ...(from === undefined ? {} : { from }) }, computed);
    return told ? [holding({ says: claim.says, subject: quantity.subject }, told)] : [];
  });
}
