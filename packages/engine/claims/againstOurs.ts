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

function holdTank(claimed: number, { servedM3 }: Computed): Told | undefined {
  if (!servedM3) return undefined;
  const [light, normal, heavy] = [servedM3.light, servedM3.normal, servedM3.heavy].map((each) =>
    print(each, 'volume'),
  );
  const told = compare(
    servedM3.normal,
    claimed,
    (share) =>
      `At a normal stock it serves ${normal}, ${share}; at a light one ${light}, at a heavy one ${heavy}.`,
  );
  // Serving more than is claimed keeps the claim.
  return servedM3.normal >= claimed && claimed > 0 ? { ...told, verdict: 'agrees' } : told;
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

function holdQuantity(quantity: ClaimedQuantity, computed: Computed): Told | undefined {
  const { subject, value } = quantity;
  if (value === undefined) return undefined;
  const { shutoffHeadM, mediaVolumeM3 } = computed;
  switch (subject) {
    case 'flow':
      return holdFlow(value, computed);
    case 'tank-volume':
      return holdTank(value, computed);
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

/** Holds a statement against ours: the first quantity of each subject that can be read without asking. */
export function holdAgainstOurs(claim: Claim, computed: Computed): readonly Holding[] {
  const seen = new Set<string>();
  return claim.quantities.flatMap((quantity) => {
    if (seen.has(quantity.subject) || quantity.value === undefined) return [];
    seen.add(quantity.subject);
    const told = holdQuantity(quantity, computed);
    return told ? [{ says: claim.says, subject: quantity.subject, ...told }] : [];
  });
}
