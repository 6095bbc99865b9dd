import { type ReadingKind, readingKinds } from '@fettle/store/contract/readings.ts';
import { html } from 'hono/html';
import type { Markup } from '../pages/page.ts';
import type { FieldProblem } from '../problems.ts';
import { basisForms, mostIn, readingFacts } from './readReading.ts';

/** Fields of the form as they were filled in, and what is wrong with them. */
export interface FormState {
  readonly typed: Readonly<Record<string, string>>;
  readonly problems: readonly (FieldProblem & { readonly kind?: string })[];
}

const asOfTest = (kind: ReadingKind): string =>
  `As the test says, with its unit and, where the test tells it, as what it is counted (${basisForms(kind)}): ${readingFacts[kind].example}.`;

const hints: Readonly<Record<ReadingKind, string>> = {
  'jug-flow':
    'Volume of the jug by the time to fill it, as 8 L/min, 480 L/h or 2 US gal/min; 0 L/h where no water comes.',
  ammonia: asOfTest('ammonia'),
  nitrite: asOfTest('nitrite'),
};

interface Field {
  readonly name: string;
  readonly label: string;
  readonly hint: string;
  readonly faults: readonly string[];
  /** The input, given the attributes that tie hint and faults to it. */
  readonly input: (tied: Markup) => Markup;
}

const field = ({ name, label, hint, faults, input }: Field): Markup => {
  const isWrong = faults.length > 0;
  const tied = html`aria-describedby="${isWrong ? `${name}-fault ` : ''}${name}-hint" ${isWrong ? html`aria-invalid="true"` : ''}`;
  const fault = html`<span class="fault" id="${name}-fault">${faults.join(' ')}</span>`;
  return html`<p class="field"><label for="${name}">${label}</label>
<span class="hint" id="${name}-hint">${hint}</span>
${isWrong ? fault : ''}
${input(tied)}</p>`;
};

/** Faults of one value by its kind; day and note are the same for all, so each fault is told once. */
const faultsOf = ({ problems }: FormState, name: string): readonly string[] => [
  ...new Set(
    problems
      .filter(({ path, kind }) => (path === 'value' ? kind === name : path === name))
      .map(({ says }) => says),
  ),
];

const valueField = (state: FormState) => (kind: ReadingKind) =>
  field({
    name: kind,
    label: readingFacts[kind].label,
    hint: hints[kind],
    faults: faultsOf(state, kind),
    input: (tied) =>
      html`<input id="${kind}" name="${kind}" value="${state.typed[kind] ?? ''}" maxlength="${mostIn.value}" autocomplete="off" ${tied}>`,
  });

/** The form by which an owner enters readings. */
export const readingForm = (at: string, state: FormState): Markup => {
  const { day = '', note = '' } = state.typed;
  const general = faultsOf(state, '');
  const wrong = state.problems.length > 0;
  const above = wrong
    ? html`<p class="fault" role="alert">Nothing was taken down yet. ${general.length > 0 ? general.join(' ') : 'See the fields below.'}</p>`
    : '';
  return html`<section aria-labelledby="enter"><h2 id="enter">Enter readings</h2>
<form class="entry" method="post" action="${at}/readings">
${above}
${readingKinds.map(valueField(state))}
${field({
  name: 'day',
  label: 'Day',
  hint: 'On which it was measured.',
  faults: faultsOf(state, 'day'),
  input: (tied) => html`<input id="day" name="day" type="date" value="${day}" required ${tied}>`,
})}
${field({
  name: 'note',
  label: 'Note',
  hint: 'Anything that you saw; may stay empty.',
  faults: faultsOf(state, 'note'),
  input: (tied) =>
    html`<textarea id="note" name="note" rows="3" maxlength="${mostIn.note}" ${tied}>${note}</textarea>`,
})}
<p><button type="submit">Take them down</button></p>
</form></section>`;
};
