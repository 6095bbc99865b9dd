import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { toSi, unitOf } from '@fettle/engine/quantities/units.ts';
import { type PackedState, stateInWords } from '@fettle/job/packedStates.ts';
import { figures, intervalDoubt, intervalText, rangesKey, rangesMissing } from '@fettle/workflows/amounts.ts';
import type { AssessmentResult } from '@fettle/workflows/results/assessment.ts';
import type { Figure } from '@fettle/workflows/results/figures.ts';
import { html } from 'hono/html';
import { fact } from './facts.ts';
import type { Markup } from './page.ts';

const DAY_S = 86_400;
const YEAR_S = 365 * DAY_S;

const inSi = ({ value, unit }: Figure, dimension: Dimension): number => toSi(value, unitOf(unit), dimension);

/** A figure with its range behind it; without one no figure is known better than to two digits. */
const about = (figure: Figure, dimension: Dimension, system: System): string => {
  const { low, high } = figure;
  const ends =
    low === undefined || high === undefined
      ? {}
      : {
          low: inSi({ ...figure, value: low }, dimension),
          high: inSi({ ...figure, value: high }, dimension),
        };
  return `about ${printQuantity({ value: inSi(figure, dimension), dimension, system, digits: 2, ...ends })}`;
};

/** The range of a figure in brackets; nothing where none was drawn. */
const range = ({ low, high }: Figure, print: (value: number) => string): string =>
  low === undefined || high === undefined ? '' : ` (${print(low)} to ${print(high)})`;

const twoFigures = (value: number): string => figures(value, 2);

/** A share with two figures; below a thousandth the models know no more than that it is small. */
const percent = (share: Figure): string =>
  share.value > 0 && share.value < 0.001
    ? 'less than 0.1 %'
    : `about ${twoFigures(100 * share.value)} %${range(share, (value) => twoFigures(100 * value))}`;

const flowing = ({ dutyPoint, turnover, bypass }: AssessmentResult, system: System): Markup =>
  dutyPoint.flow.value <= 0
    ? html`${fact('Flow', 'no water goes through it')}`
    : html`${fact('Flow, clean', about(dutyPoint.flow, 'flow', system))}
${fact('Turnover', `about ${twoFigures(turnover.value)} times an hour${range(turnover, twoFigures)}`)}
${fact('Past the mechanical media', percent(bypass.mechanical))}`;

const carrying = ({ carries, cleaningInterval }: AssessmentResult, system: System): Markup => {
  if (carries.feed.value <= 0) return html`${fact('Carries', 'nothing')}`;
  const interval = intervalText(inSi(cleaningInterval, 'time'), cleaningInterval.beyond);
  const spread = range(cleaningInterval, (days) => intervalText(days * DAY_S, days * DAY_S >= YEAR_S));
  const sure = spread === '' ? `, ${intervalDoubt}` : spread;
  return html`${fact('Carries', `${about(carries.feed, 'mass-rate', system)} of dry feed`)}
${fact('Enough for', `${about(carries.served.normal, 'volume', system)} at a normal stock`)}
${fact('Cleaning', cleaningInterval.beyond ? `after ${interval}` : `after about ${interval}${sure}`)}`;
};

const costs = ({ perYear: { value, unit } }: AssessmentResult['cost']): string =>
  `about ${twoFigures(value)} ${unit.replace(/\/a$/, '')} a year`;

/** How sure the served volume is, what makes its range and what to measure next; nothing where none was drawn. */
const howSure = ({ doubt }: AssessmentResult): Markup | string =>
  doubt === undefined
    ? ''
    : html`<h3>How sure, and what to measure next</h3>
<ul>${doubt.says.map((says) => html`<li>${says}</li>`)}</ul>`;

/** What a filter does, each figure to no more digits than it is known, and what is said of all of them. */
export const computedSection = (
  result: AssessmentResult,
  { system, state }: { readonly system: System; readonly state: PackedState },
): Markup => html`
<section aria-labelledby="does"><h2 id="does">What it does, ${stateInWords(state)}</h2>
<dl class="facts-list">
${flowing(result, system)}
${carrying(result, system)}
${fact('Cost', costs(result.cost))}
</dl>
<p class="soft">${result.doubt === undefined ? rangesMissing : rangesKey}</p>
${howSure(result)}</section>`;
