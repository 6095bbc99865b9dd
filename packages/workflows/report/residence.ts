import type {
  Residence,
  ResidenceCurve,
  ResidenceFigures,
} from '@fettle/engine/assessment/residence/residence.ts';
import type { AssessedJob } from '../assessJob.ts';
import { type Print, share } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

/** A time in a filter, s, to two figures: the model's volumes are no better known. */
const seconds = (timeS: number): string => `${Number(timeS.toPrecision(2))} s`;

const timesSentence = ({ whole }: ResidenceFigures): string =>
  `From the tank and back to it, water is under way for ${seconds(whole.meanS)} on average: a tenth of it is through after ${seconds(whole.t10S)}, half after ${seconds(whole.t50S)}, nine tenths after ${seconds(whole.t90S)} (Morrill index ${whole.morrillIndex.toFixed(1)}; 1 is plug flow, 22 one mixed vessel).`;

const volumeSentence = ({ volumeM3, hosesM3, deadShare }: ResidenceFigures, print: Print): string => {
  const hoses = hosesM3 > 0 ? `, ${print(hosesM3, 'volume')} of it in the hoses` : '';
  const dead =
    deadShare > 0
      ? `no water passes through ${share(deadShare)} of it`
      : 'water passes through all of it by the map';
  return `It holds ${print(volumeM3, 'volume')} of water${hoses}; ${dead}. Only a dye test shows corners that stand still.`;
};

/** How long water stays in the filter, and how much of it there is; nothing where no water flows. */
export const residenceSentences = (
  { residence }: Pick<AssessedJob, 'residence'>,
  print: Print,
): readonly string[] =>
  residence === undefined ? [] : [timesSentence(residence), volumeSentence(residence, print)];

const row = (name: string, part: number, curve: Omit<ResidenceCurve, 'points'>): readonly string[] => [
  name,
  share(part),
  seconds(curve.meanS),
  seconds(curve.t10S),
  seconds(curve.t50S),
  seconds(curve.t90S),
  curve.morrillIndex.toFixed(1),
];

/** Times of the whole filter and of each of its routes. */
export const residenceTable = ({ whole, routes }: Residence): ReportTable => ({
  columns: [
    { head: 'route' },
    { head: 'share', align: 'right' },
    { head: 'mean', align: 'right' },
    { head: 'a tenth', align: 'right' },
    { head: 'half', align: 'right' },
    { head: 'nine tenths', align: 'right' },
    { head: 'Morrill', align: 'right' },
  ],
  rows: [row('all water', 1, whole), ...routes.map((route) => row(route.id, route.share, route))],
});
