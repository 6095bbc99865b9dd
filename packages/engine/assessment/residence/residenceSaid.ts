import { number, quantity } from '../../wording/facts.ts';
import { type Fact, type Said, said } from '../../wording/said.ts';
import type { DyeComparison } from './dye.ts';
import type { ResidenceFigures } from './residence.ts';

/** A time in a filter to two figures, all in seconds: the model's volumes are no better known. */
const time = (timeS: number): Fact => ({ ...quantity(timeS, 'time'), sizedLike: 1 });

/** To a tenth: no pulse gives it better. */
const morrill = (index: number): Fact => number(index, index < 10 ? 2 : 3);

/** Morrill index of one mixed vessel, to its full figure: ln 0.1/ln 0.9. */
const MIXED_VESSEL = Math.log(0.1) / Math.log(0.9);

/** Where water spreads more than one vessel spreads it, some goes a much shorter way than the rest. */
const timesSaid = ({ whole }: ResidenceFigures): Said =>
  said(whole.morrillIndex > MIXED_VESSEL ? 'residence.times.beyond-mixed' : 'residence.times', {
    mean: time(whole.meanS),
    tenth: time(whole.t10S),
    half: time(whole.t50S),
    nine: time(whole.t90S),
    index: morrill(whole.morrillIndex),
  });

const volumeSaid = ({ volumeM3, hosesM3, deadShare }: ResidenceFigures): Said => {
  const dead =
    deadShare > 0 ? said('residence.dead', { share: { share: deadShare } }) : said('residence.dead.none');
  const facts = { volume: quantity(volumeM3, 'volume'), dead };
  return hosesM3 > 0
    ? said('residence.volume.hoses', { ...facts, hoses: quantity(hosesM3, 'volume') })
    : said('residence.volume', facts);
};

/** How long water stays in the filter, and how much of it there is. */
export const residenceSaid = (residence: ResidenceFigures): readonly Said[] => [
  timesSaid(residence),
  volumeSaid(residence),
];

type TimeKey = 't10S' | 't50S' | 't90S' | 'meanS';

const pair = ({ measured, doubt, computed }: DyeComparison, key: TimeKey): Fact => {
  const facts = { measured: time(measured[key]), doubt: time(doubt[key]) };
  return computed === undefined
    ? said('dye.time', facts)
    : said('dye.time.and-map', { ...facts, computed: time(computed[key]) });
};

const dyeSaid = (one: DyeComparison): readonly Said[] => {
  const { test, measured, doubt, deadShare, isCutOff } = one;
  const standing =
    deadShare !== undefined && deadShare > 0 && !isCutOff
      ? [said('dye.standing', { share: { share: deadShare } })]
      : [];
  return [
    said('dye.found', {
      state: said(`dye.state.${test.state}`),
      tenth: pair(one, 't10S'),
      half: pair(one, 't50S'),
      nine: pair(one, 't90S'),
      mean: pair(one, 'meanS'),
      index: morrill(measured.morrillIndex),
      doubt: morrill(doubt.morrillIndex),
    }),
    ...standing,
    ...(isCutOff ? [said('dye.cut-off')] : []),
  ];
};

/** Each dye test beside what the map says of the same flow, and what to mind about dye, said once. */
export const dyesSaid = (dyes: readonly DyeComparison[]): readonly (readonly Said[])[] =>
  dyes.length === 0 ? [] : [...dyes.map(dyeSaid), [said('dye.caution')]];
