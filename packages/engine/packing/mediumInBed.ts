import { pressedFoam } from '../laws/hydraulics/compression.ts';
import {
  type Mixture,
  type OneSize,
  sizeOfMixtureSauter1928,
  voidageOfMixtureWestman1936,
} from '../laws/hydraulics/mixture.ts';
import type { Figure } from '../model/figure.ts';
import type { Medium, Resistance } from '../model/medium.ts';
import type { Bed } from '../model/model.ts';

/** A figure of a medium as it is in a bed. */
const became = ({ value: before, doubt }: Figure, value: number, text: string): Figure => ({
  value,
  source: { kind: 'computed', text },
  ...(doubt?.kind === 'plus-minus' ? { doubt: { ...doubt, size: (doubt.size * value) / before } } : {}),
  ...(doubt?.kind === 'factor' ? { doubt } : {}),
});

const times = (figure: Figure, factor: number, text: string): Figure =>
  became(figure, figure.value * factor, text);

const PRESSED = 'solid and surface stay when it is pressed';
const MIXED = 'shares of the solids of both media';

const pressedResistance = (resistance: Resistance, pressedRatio: number): Resistance => {
  if (resistance.law === 'foam') {
    const { cellM, voidage } = resistance;
    const as = pressedFoam({ cellM: cellM.value, voidage: voidage.value, pressedRatio });
    return {
      law: 'foam',
      cellM: became(cellM, as.cellM, PRESSED),
      voidage: became(voidage, as.voidage, PRESSED),
    };
  }
  if (resistance.law !== 'fibre') return resistance;
  const { fibreM, solidFraction } = resistance;
  return { law: 'fibre', fibreM, solidFraction: times(solidFraction, pressedRatio, PRESSED) };
};

const pressed = (medium: Medium, ratio: number): Medium => ({
  ...medium,
  resistance: pressedResistance(medium.resistance, ratio),
  areaPerM: times(medium.areaPerM, ratio, PRESSED),
  bulkDensityKgPerM3: times(medium.bulkDensityKgPerM3, ratio, PRESSED),
  pricePerM3: times(medium.pricePerM3, ratio, PRESSED),
});

/** A medium of pieces: grains, or rings and other hollow ones. */
type Pieces = Extract<Resistance, { law: 'grains' | 'hollow' }>;

export const isOfPieces = (resistance: Resistance): resistance is Pieces =>
  resistance.law === 'grains' || resistance.law === 'hollow';

const oneSize = ({ sizeM, voidage }: Pieces): OneSize => ({ sizeM: sizeM.value, voidage: voidage.value });

/** Outer surface per volume of bed, 1/m. */
const surfaceOf = (pieces: Pieces): number =>
  pieces.law === 'hollow' ? pieces.surfacePerM.value : (6 * (1 - pieces.voidage.value)) / pieces.sizeM.value;

/** Two media of pieces mixed: `share` of the second in the volumes before. */
interface Mixed {
  readonly first: Medium;
  readonly second: Medium;
  readonly pieces: readonly [Pieces, Pieces];
  /** Share of the second in the solids, 0 to 1. */
  readonly solidShare: number;
  readonly voidage: number;
  readonly sizeM: number;
}

const mix = (first: Medium, second: Medium, share: number): Mixed | undefined => {
  const [one, other] = [first.resistance, second.resistance];
  if (!isOfPieces(one) || !isOfPieces(other)) return undefined;
  const [firstSolid, secondSolid] = [
    (1 - share) * (1 - one.voidage.value),
    share * (1 - other.voidage.value),
  ];
  const solidShare = secondSolid / (firstSolid + secondSolid);
  const isFirstCoarse = one.sizeM.value >= other.sizeM.value;
  const mixture: Mixture = isFirstCoarse
    ? { coarse: oneSize(one), fine: oneSize(other), coarseShare: 1 - solidShare }
    : { coarse: oneSize(other), fine: oneSize(one), coarseShare: solidShare };
  return {
    first,
    second,
    pieces: [one, other],
    solidShare,
    voidage: voidageOfMixtureWestman1936(mixture),
    sizeM: sizeOfMixtureSauter1928(mixture),
  };
};

/** What is known per volume of each bed alone, per volume of the mixed one: it goes with the solids. */
const perVolume = ({ pieces, solidShare, voidage }: Mixed, values: readonly [number, number]): number => {
  const [first, second] = pieces.map((one, place) => values[place]! / (1 - one.voidage.value));
  return (1 - voidage) * ((1 - solidShare) * first! + solidShare * second!);
};

const mixedResistance = (mixed: Mixed): Resistance => {
  const [one, other] = mixed.pieces;
  const sizeM = became(one.sizeM, mixed.sizeM, MIXED);
  const voidage = became(one.voidage, mixed.voidage, MIXED);
  if (one.law === 'grains' && other.law === 'grains') return { law: 'grains', sizeM, voidage };
  const surface = perVolume(mixed, [surfaceOf(one), surfaceOf(other)]);
  const hollow = one.law === 'hollow' ? one : other;
  const known = hollow.law === 'hollow' ? hollow.surfacePerM : one.sizeM;
  return { law: 'hollow', sizeM, voidage, surfacePerM: became(known, surface, MIXED) };
};

/** What the mixture takes out: the first medium's substance, else the second's, by its share of the mass. */
const removesOf = (mixed: Mixed, densityKgPerM3: number): Pick<Medium, 'removes'> => {
  const { first, second, solidShare, voidage, pieces } = mixed;
  const isFirst = first.removes !== undefined;
  const from = isFirst ? first : second;
  if (from.removes === undefined) return {};
  const ofSolids = isFirst ? 1 - solidShare : solidShare;
  const alone = from.bulkDensityKgPerM3.value / (1 - pieces[isFirst ? 0 : 1].voidage.value);
  const massShare = ((1 - voidage) * ofSolids * alone) / densityKgPerM3;
  const { substance, capacityRatio } = from.removes;
  return { removes: { substance, capacityRatio: times(capacityRatio, massShare, MIXED) } };
};

const mixture = (mixed: Mixed): Medium => {
  const { first, second, solidShare } = mixed;
  const ofBoth = (figure: (medium: Medium) => Figure): Figure =>
    became(figure(first), perVolume(mixed, [figure(first).value, figure(second).value]), MIXED);
  const between = (figure: (medium: Medium) => Figure): Figure => {
    const [one, other] = [figure(first), figure(second)];
    return became(one, (1 - solidShare) * one.value + solidShare * other.value, MIXED);
  };
  const { removes: _, ...rest } = first;
  const bulkDensityKgPerM3 = ofBoth((medium) => medium.bulkDensityKgPerM3);
  return {
    ...rest,
    resistance: mixedResistance(mixed),
    areaPerM: ofBoth((medium) => medium.areaPerM),
    bulkDensityKgPerM3,
    depositFactor: between((medium) => medium.depositFactor),
    bacteriaKept: between((medium) => medium.bacteriaKept),
    pricePerM3: ofBoth((medium) => medium.pricePerM3),
    ...removesOf(mixed, bulkDensityKgPerM3.value),
  };
};

/** A bed's medium as it is in the bed: pressed, or mixed with another one. */
export const mediumInBed = ({ medium: id, laying }: Bed, media: Readonly<Record<string, Medium>>): Medium => {
  const medium = media[id]!;
  if (laying?.mixed) {
    const both = mix(medium, media[laying.mixed.medium]!, laying.mixed.share);
    return both === undefined ? medium : mixture(both);
  }
  const ratio = laying?.pressedRatio ?? 1;
  return ratio === 1 ? medium : pressed(medium, ratio);
};
