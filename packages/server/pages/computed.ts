import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { toSi, unitOf } from '@fettle/engine/quantities/units.ts';
import { type PackedState, stateInWords } from '@fettle/job/packedStates.ts';
import { figures, intervalDoubt, intervalText, rangesMissing } from '@fettle/workflows/amounts.ts';
import type { AssessmentResult } from '@fettle/workflows/results/assessment.ts';
import type { Figure } from '@fettle/workflows/results/figures.ts';
import { html } from 'hono/html';
import { fact } from './facts.ts';
import type { Markup } from './page.ts';

const inSi = ({ value, unit }: Figure, dimension: Dimension): number => toSi(value, unitOf(unit), dimension);

/** Without its range no figure is known better than to two digits. */
const about = (figure: Figure, dimension: Dimension, system: System): string =>
  `about ${printQuantity({ value: inSi(figure, dimension), dimension, system, digits: 2 })}`;

/** A share with two figures; below a thousandth the models know no more than that it is small. */
const percent = ({ value }: Figure): string =>
  value > 0 && value < 0.001 ? 'less than 0.1 %' : `about ${figures(100 * value, 2)} %`;

const flowing = ({ dutyPoint, turnover, bypass }: AssessmentResult, system: System): Markup =>
  dutyPoint.flow.value <= 0
    ? html`${fact('Flow', 'no water goes through it')}`
    : html`${fact('Flow, clean', about(dutyPoint.flow, 'flow', system))}
${fact('Turnover', `about ${figures(turnover.value, 2)} times an hour`)}
${fact('Past the mechanical media', percent(bypass.mechanical))}`;

const carrying = ({ carries, cleaningInterval }: AssessmentResult, system: System): Markup => {
  if (carries.feed.value <= 0) return html`${fact('Carries', 'nothing')}`;
  const interval = intervalText(inSi(cleaningInterval, 'time'), cleaningInterval.beyond);
  return html`${fact('Carries', `${about(carries.feed, 'mass-rate', system)} of dry feed`)}
${fact('Enough for', `${about(carries.served.normal, 'volume', system)} at a normal stock`)}
${fact('Cleaning', cleaningInterval.beyond ? `after ${interval}` : `after about ${interval}, ${intervalDoubt}`)}`;
};

const costs = ({ perYear: { value, unit } }: AssessmentResult['cost']): string =>
  `about ${figures(value, 2)} ${unit.replace(/\/a$/, '')} a year`;

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
<p class="soft">${rangesMissing}</p></section>`;
