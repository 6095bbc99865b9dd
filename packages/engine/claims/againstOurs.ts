import type { Dimension } from '../quantities/dimensions.ts';
import { printBoth } from '../quantities/printQuantity.ts';
import type { Computed, Holding } from './holding.ts';
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

type Told = Pick<Holding, 'verdict' | 'detail' | 'ratio'>;

function print(value: number, dimension: Dimension): string {
  return printBoth({ value, dimension });
}

/** Ours against the claim: met within the tolerance, or not. */
function compare(ours: number, claimed: number, sentence: (share: string) => string): Told {
  if (claimed === 0) return { verdict: 'not-checked', detail: 'Nothing can be held against a claim of 0.' };
  const ratio = ours / claimed;
  const verdict = Math.abs(ratio - 1) <= claimTolerance + 1e-9 ? 'agrees' : 'differs-from-ours';
  return { verdict, detail: sentence(`${ratio.toPrecision(3)} of the claim`), ratio };
}

/** A figure claimed, as one number or a range. */
interface Claimed {
  readonly value: number;
  readonly from?: number;
}

function holdFlow(claimed: number, { flowM3PerS, ratedFlowM3PerS }: Computed): Told | undefined {
  if (flowM3PerS !== undefined) {
    const rated =
      ratedFlowM3PerS === undefined
        ? ''
        : ` The pump alone, at no head, gives ${print(ratedFlowM3PerS, 'flow')}.`;
    return compare(
      flowM3PerS,
      claimed,
      (share) => `At the tank it is ${print(flowM3PerS, 'flow')}, ${share}.${rated}`,
    );
  }
  if (ratedFlowM3PerS === undefined) return undefined;
  const ours = print(ratedFlowM3PerS, 'flow');
  return compare(ratedFlowM3PerS, claimed, (share) => `The pump alone, at no head, gives ${ours}, ${share}.`);
}

/** Two statements of one flow in different units differ by their rounding, which is half a per cent at most. */
const sameStatement = 0.005;

/** A statement about the pump alone is held against the pump alone; what the head leaves of it is told beside. */
function holdPumpFlow(claimed: number, computed: Computed): Told | undefined {
  const { flowM3PerS, ratedFlowM3PerS, ratedFlowMeasured } = computed;
  const share = claimed > 0 && flowM3PerS !== undefined ? (flowM3PerS / claimed).toPrecision(3) : undefined;
  const atTank =
    share === undefined || flowM3PerS === undefined
      ? ''
      : ` At the tank, after the head of hoses, lift and media, it is ${print(flowM3PerS, 'flow')}, ${share} of that.`;
  if (ratedFlowM3PerS === undefined) {
    if (atTank === '') return undefined;
    return { verdict: 'not-checked', detail: `The pump alone was not measured.${atTank}` };
  }
  const same = claimed > 0 && Math.abs(ratedFlowM3PerS / claimed - 1) <= sameStatement;
  if (same && ratedFlowMeasured !== true) {
    const detail = `This is the statement that the job takes as the pump's rated flow, so it cannot be held against that.${atTank}`;
    return { verdict: 'not-checked', detail };
  }
  const ours = print(ratedFlowM3PerS, 'flow');
  return compare(
    ratedFlowM3PerS,
    claimed,
    (part) => `The pump alone, at no head, gives ${ours}, ${part}.${atTank}`,
  );
}

function holdTank({ value, from }: Claimed, { servedM3 }: Computed): Told | undefined {
  if (!servedM3) return undefined;
  const [light, normal, heavy] = [servedM3.light, servedM3.normal, servedM3.heavy].map((each) =>
    print(each, 'volume'),
  );
  const others = `; at a light one ${light}, at a heavy one ${heavy}.`;
  const said = (share: string) => `At a normal stock it serves ${normal}, ${share}${others}`;
  if (from !== undefined) return holdTankRange({ ours: servedM3.normal, from, to: value }, said);
  const told = compare(servedM3.normal, value, said);
  // Serving more than is claimed keeps the claim.
  return servedM3.normal >= value && value > 0 ? { ...told, verdict: 'agrees' } : told;
}

function holdTankRange(
  { ours, from, to }: { readonly ours: number; readonly from: number; readonly to: number },
  said: (where: string) => string,
): Told {
  const ratio = ours / to;
  if (ours > to) {
    return {
      verdict: 'agrees',
      detail: said(`above the range, ${ratio.toPrecision(3)} of its upper end`),
      ratio,
    };
  }
  if (ours >= from) {
    const part = Math.round((100 * (ours - from)) / (to - from));
    return { verdict: 'agrees', detail: said(`inside the range, ${part} % of the way up`), ratio };
  }
  const below = compare(ours, from, () =>
    said(`below the range, ${(ours / from).toPrecision(3)} of its lower end`),
  );
  return { ...below, ratio };
}

function holdPower(claimed: number, { powerW, powerMeasured }: Computed): Told | undefined {
  if (powerW === undefined) return undefined;
  const how = powerMeasured === true ? 'Measured at the plug it is' : 'We reckon with';
  return compare(powerW, claimed, (share) => `${how} ${print(powerW, 'power')}, ${share}.`);
}

function areaPerVolume(quantity: ClaimedQuantity, mediaVolumeM3: number | undefined): number | undefined {
  if (quantity.dimension === 'specific-area') return quantity.value;
  const shared = quantity.dimension === 'area' && quantity.value !== undefined && mediaVolumeM3;
  return shared ? quantity.value / mediaVolumeM3 : undefined;
}

const gasAdsorption =
  'Such an area is found by gas adsorption and lies in pores that are too fine for bacteria to enter; ' +
  'they live on the outer surface.';

function holdSurface(quantity: ClaimedQuantity, { mediaVolumeM3 }: Computed): Told | undefined {
  if (quantity.dimension === 'area-per-mass')
    return {
      verdict: 'not-checked',
      detail: `An area per mass is not an area in the filter. ${gasAdsorption}`,
    };
  const claimed = areaPerVolume(quantity, mediaVolumeM3);
  if (claimed === undefined) return undefined;
  if (claimed <= mostUsableAreaPerM) {
    const detail = 'It is within what the outer surface of a medium can offer (3 m2/L).';
    return { verdict: 'not-checked', detail };
  }
  const times = (claimed / mostUsableAreaPerM).toPrecision(2);
  const detail = `It is ${Number(times)} times the 3 m2/L that bacteria can use at most. ${gasAdsorption}`;
  return { verdict: 'differs-from-ours', detail, ratio: mostUsableAreaPerM / claimed };
}

function holdQuantity(
  quantity: ClaimedQuantity,
  { value, from }: Claimed,
  computed: Computed,
): Told | undefined {
  const { subject } = quantity;
  const { shutoffHeadM, mediaVolumeM3 } = computed;
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
      return shutoffHeadM === undefined
        ? undefined
        : compare(
            shutoffHeadM,
            value,
            (share) => `Its flow stops at ${print(shutoffHeadM, 'length')}, ${share}.`,
          );
    case 'media-volume':
      return mediaVolumeM3 === undefined
        ? undefined
        : compare(
            mediaVolumeM3,
            value,
            (share) => `It holds ${print(mediaVolumeM3, 'volume')} of media, ${share}.`,
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
  const each = meanings.map(
    ({ meaning, told }) =>
      `In ${meaning.unit} it says ${print(meaning.value, quantity.dimension)}: ${told.detail}`,
  );
  const detail = `"${quantity.text}" does not say which unit is meant. ${each.join(' ')}`;
  return { verdict: alike ? first.told.verdict : 'not-checked', detail };
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
    return told ? [{ says: claim.says, subject: quantity.subject, ...told }] : [];
  });
}
