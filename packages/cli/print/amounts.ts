import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { figures, intervalText } from '@fettle/workflows/amounts.ts';

const DAY_S = 86_400;
const L_PER_H = 3.6e6;
const US_GALLON_L = 3.785411784;

export const days = (timeS: number): string => `${figures(timeS / DAY_S, 3)} days`;

interface Change {
  readonly before: number;
  readonly after: number;
}

const percentOf = ({ before, after }: Change): string => {
  if (before <= 0) return '';
  const percent = Math.round(100 * (after / before - 1));
  return ` (${percent >= 0 ? '+' : '−'}${Math.abs(percent)} %)`;
};

/** Both in one unit, with the difference in per cent. */
const changeText = (change: Change, perSi: number, unit: string): string =>
  `${figures(change.before * perSi, 3)} -> ${figures(change.after * perSi, 3)} ${unit}${percentOf(change)}`;

export const flowChange = (change: Change, system: System): string =>
  system === 'us'
    ? changeText(change, L_PER_H / US_GALLON_L, 'US gal/h')
    : changeText(change, L_PER_H, 'L/h');

export const feedChange = (change: Change): string => changeText(change, 1000 * DAY_S, 'g/d');

export const intervalChange = (
  change: Change & { readonly beforeBeyond: boolean; readonly afterBeyond: boolean },
): string =>
  `${intervalText(change.before, change.beforeBeyond)} -> ${intervalText(change.after, change.afterBeyond)}`;
