import type { SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { PumpAndSystem } from '@fettle/engine/assessment/hydraulics/curves.ts';
import type { residenceCurve } from '@fettle/engine/assessment/residence/residence.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { Note } from '@fettle/job/notes.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import type { Problem } from '@fettle/job/problems.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';

/** How figures and drawings are to look. */
export interface Shown {
  readonly system: System;
  /** Which packing of the job; where it describes no such state, the one before it in the work. */
  readonly state: PackedState;
}

/** What follows a hand: the figures of one packing, and its drawing. */
export interface QuickFigures {
  readonly model: Model;
  readonly assessment: Assessment;
  readonly notes: readonly Note[];
  /** SVG. */
  readonly drawing: string;
  readonly places: SectionPlaces;
}

/** The curves of pump and system of one packing, and where they meet. */
export interface Curves extends PumpAndSystem {
  readonly duty: Assessment['dutyPoint'];
}

/** What takes longer: faults and their cures, claims, bench tests, and the curves to plot. */
export interface WholeFigures extends AssessedJob {
  readonly curves: Curves;
  /** How long water stays in it; absent where none flows. */
  readonly times?: NonNullable<ReturnType<typeof residenceCurve>>;
  /** Of the packing that is planned, beside another one; absent where the job describes none. */
  readonly plannedCurves?: Curves;
}

/** A packing to be held against another one: a document, and the state of the filter that is meant. */
export interface Packed {
  readonly document: unknown;
  readonly state: PackedState;
  /** Over its drawing. */
  readonly name: string;
}

/** One of two packings that are held against each other. */
export interface ComparedFigures extends Pick<QuickFigures, 'model' | 'assessment' | 'notes'> {
  /** That of the packing that was computed: another one may be chosen by then. */
  readonly name: string;
  readonly curves: Curves;
  readonly dirt: DirtDrawn;
}

/** How dirt comes into a packing, drawn and said. */
export interface DirtDrawn {
  /** SVG. */
  readonly drawing: string;
  readonly says: string;
}

/** Two packings beside each other. */
export interface BothFigures {
  readonly first: ComparedFigures;
  readonly second: ComparedFigures;
  /** SVG of both at one scale. */
  readonly drawing: string;
}

/** What was made of a document, or what is wrong with it. */
export type Computed<Figures> =
  | { readonly ok: true; readonly figures: Figures }
  | { readonly ok: false; readonly problems: readonly Problem[] };
