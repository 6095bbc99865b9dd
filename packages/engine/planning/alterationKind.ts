import type { Layout } from '../families/layout.ts';
import { withMeasurement } from '../model/changes.ts';
import type { Model } from '../model/model.ts';
import { chamberGap, SEALED_GAP_M, sealedGap } from '../packing/seal.ts';
import type { Said } from '../wording/said.ts';

/** A part of an alteration: how many and at what price each. */
export interface PartNeed {
  readonly part: string;
  readonly count: number;
  readonly price: number;
}

/** One kind of permitted change to the hardware: adding one is adding an entry here. */
export interface AlterationKind {
  readonly id: string;
  readonly says: string;
  /** Settings in SI units that it needs, by name. */
  readonly settings: readonly string[];
  /** True where hands may do it and no figure follows: no plan is tried with it and without it. */
  readonly handsOnly?: true;
  /** True where every plan makes it that may: what it is for is no figure that plans are compared by. */
  readonly always?: true;
  /** Where on the filter hands do it: ids of ways and `gap:<chamber>`, or `pump`, `intake`, `outlet`, `packing`. */
  where(layout: Layout): readonly string[];
  apply(model: Model, layout: Layout, settings: Readonly<Record<string, number>>): Model;
  /** Whether there is nothing here for it to change; absent where that cannot be, or hangs on its settings. */
  isIdle?(model: Model, layout: Layout): boolean;
  parts(model: Model, layout: Layout): readonly Omit<PartNeed, 'price'>[];
  /** What hands do. */
  steps(settings: Readonly<Record<string, number>>): readonly Said[];
}

/** An alteration that needs no parts, or no steps. */
export const none = (): readonly [] => [];

/** So many of a part; no entry where none is wanted. */
export const needed = (part: string, count: number): readonly Omit<PartNeed, 'price'>[] =>
  count > 0 ? [{ part, count }] : [];

/** An alteration that is made at one place in every filter. */
export const at =
  (place: string): AlterationKind['where'] =>
  () => [place];

/** Gaps past chambers, and leaks, that a strip would make tighter. */
export const openGaps = (model: Model, layout: Layout) => ({
  chambers: layout.chambers.filter((chamber) => chamberGap(model, chamber) > SEALED_GAP_M),
  leaks: layout.leaks.filter((leak) => leak.thicknessM > SEALED_GAP_M),
});

/** The same job with leaks as tight as a strip or a ring makes them. */
export const withSealedLeaks = (model: Model, leaks: Layout['leaks']): Model =>
  leaks.reduce(
    (sealed, { measurement, thicknessM }) => withMeasurement(sealed, measurement, sealedGap(thicknessM)),
    model,
  );
