import type { Residence, ResidencePoint } from '@fettle/engine/assessment/residence/residence.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { said } from '@fettle/engine/wording/said.ts';
import { word } from '@fettle/engine/wording/word.ts';
import type { Print } from '@fettle/workflows/printing.ts';
import { share } from '@fettle/workflows/printing.ts';
import { residenceSentences, residenceTable } from '@fettle/workflows/report/residence.ts';
import { reportTable, table, wrap } from './layout.ts';

/** Rows of the curve, and columns of its longest bar. */
const ROWS = 20;
const BAR = 44;
/** The rest comes out in a long thin tail. */
const SHOWN = 0.99;

/** The curve as bars: how much has come through since the row above, so that no short peak is passed over. */
const curve = (points: readonly ResidencePoint[]): string => {
  const last = points.findIndex(({ share: out }) => out > SHOWN);
  const every = Math.max(1, Math.round(last / ROWS));
  const shown = points.filter((_, place) => place <= last && place % every === 0);
  const since = shown.map((point, row) => point.share - (shown[row - 1]?.share ?? 0));
  const most = Math.max(...since);
  return table(
    [
      { head: 'after', width: 9, align: 'right' },
      { head: 'come out', width: 9, align: 'right' },
      { head: 'since the row above', width: BAR },
    ],
    shown.map((point, row) => [
      `${Number(point.timeS.toPrecision(3))} s`,
      share(point.share),
      '#'.repeat(Math.round((BAR * since[row]!) / most)),
    ]),
  );
};

/** How long water stays in a filter, at most 80 columns wide. */
export const printResidence = (residence: Residence, print: Print): string =>
  [
    ...residenceSentences({ residence }, print).map((text) => wrap(text)),
    '',
    reportTable(residenceTable(residence), [12, 8, 8, 8, 8, 12, 8]),
    '',
    curve(residence.whole.points),
    '',
    wrap(word(said('residence.basis'), { language: engineEnglish, units: print.system })),
  ].join('\n');
