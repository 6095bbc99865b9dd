import type { Model } from '@fettle/engine/model/model.ts';
import { type PackedState, packedStateFields, stateField } from '@fettle/job/packedStates.ts';
import type { RevisionSummary } from '@fettle/store/contract/jobs.ts';
import { plannedState } from '@fettle/workflows/plannedState.ts';
import type { PlansResult } from '@fettle/workflows/results/plans.ts';
import { asLabel } from '../forms/labels.ts';
import { momentInWords, revisionWords } from '../history/revisionWords.ts';
import { withoutFields } from '../mending/readablePart.ts';
import { stateInWords, statesOf } from '../rooms/job/lookedState.ts';

/** One of the packings that can be held against each other. */
export interface Side {
  /** As the address has it: `as-found`, `plan-2`, `revision-3`. */
  readonly id: string;
  readonly name: string;
  readonly state: PackedState;
  /** The job with that packing in that state; absent where it has to be asked for. */
  readonly document?: Readonly<Record<string, unknown>>;
  /** The revision to ask for. */
  readonly revision?: number;
}

type Document = Readonly<Record<string, unknown>>;

/** A job with one state of its filter and without those that do not matter to it: what is wrong in them hinders nothing. */
const only = (document: Document, state: PackedState): Document =>
  withoutFields(
    document,
    packedStateFields.filter((field) => state === 'as-found' || field !== stateField(state)),
  );

const planSides = (document: Document, plans: PlansResult, model: Model): readonly Side[] =>
  plans.plans.map((plan) => ({
    id: plan.id,
    name: `${plan.id.charAt(0).toUpperCase()}${plan.id.slice(1).replace('-', ' ')}`,
    state: 'planned',
    document: only({ ...document, planned: plannedState(plan, model) }, 'planned'),
  }));

const revisionSides = (revisions: readonly RevisionSummary[]): readonly Side[] =>
  revisions
    .slice(0, -1)
    .toReversed()
    .map((summary) => ({
      id: `revision-${summary.revision}`,
      name: `Revision ${summary.revision}, ${revisionWords(summary)} ${momentInWords(summary.at)}`,
      state: 'as-left',
      revision: summary.revision,
    }));

/** Everything that a packing of this job can be held against. */
export const sidesOf = (of: {
  readonly document: Document;
  readonly plans?: { readonly found: PlansResult; readonly model: Model } | undefined;
  readonly revisions: readonly RevisionSummary[];
}): readonly Side[] => {
  const { document, plans, revisions } = of;
  const described: readonly Side[] = statesOf(document).map((state) => ({
    id: state,
    name: asLabel(stateInWords(state)),
    state,
    document: only(document, state),
  }));
  const planned = plans === undefined ? [] : planSides(document, plans.found, plans.model);
  return [...described, ...planned, ...revisionSides(revisions)];
};

/** The two that are looked at: those of the address, else the filter as found and the last that is described. */
export const chosenSides = (
  sides: readonly Side[],
  asked: { readonly first: string | null; readonly second: string | null },
): { readonly first: Side | undefined; readonly second: Side | undefined } => {
  const named = (id: string | null): Side | undefined => sides.find((side) => side.id === id);
  const [first] = sides;
  const last = sides.findLast(({ id }) => id === 'as-left' || id === 'planned');
  const next = sides.find(({ id }) => id.startsWith('plan-'));
  return { first: named(asked.first) ?? first, second: named(asked.second) ?? last ?? next };
};
