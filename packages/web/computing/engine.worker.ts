import { beforeAfterDrawing } from '@fettle/drawing/beforeAfterDrawing.ts';
import { describeDirt, dirtRowDrawing } from '@fettle/drawing/dirtRowDrawing.ts';
import { sectionDrawing } from '@fettle/drawing/sectionDrawing.ts';
import { sectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import type { Theme } from '@fettle/drawing/tokens.ts';
import { assess } from '@fettle/engine/assessment/assess.ts';
import { dirtTimes } from '@fettle/engine/assessment/dirt/dirtTimes.ts';
import { pumpAndSystem } from '@fettle/engine/assessment/hydraulics/curves.ts';
import { residenceCurve } from '@fettle/engine/assessment/residence/residence.ts';
import type { Doubts } from '@fettle/engine/doubt/doubtOf.ts';
import type { Layout } from '@fettle/engine/families/layout.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { alike } from '@fettle/job/changes/alike.ts';
import { type PackedState, packedStates } from '@fettle/job/packedStates.ts';
import type { Problem } from '@fettle/job/problems.ts';
import type { JobReading } from '@fettle/job/read.ts';
import { stateModel } from '@fettle/job/toModel/stateModel.ts';
import { assessJob, usualDoubts } from '@fettle/workflows/assessJob.ts';
import { type FadedCase, fadedFlow } from '@fettle/workflows/fadedFlow.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { writeUpSource } from '@fettle/workflows/writeUpSource.ts';
import type { Document } from '@fettle/writeup/content/document.ts';
import { tellsRanges } from '@fettle/writeup/fileNames.ts';
import { type DocumentName, writeUpDocument } from '@fettle/writeup/writeUp.ts';
import { expose } from 'comlink';
import { type ForecastAsked, type ForecastShown, forecastShown } from '../forecast/forecastShown.ts';
import { problemInWords } from '../forms/problemInWords.ts';
import { fieldInWords } from '../history/fieldInWords.ts';
import type {
  BothFigures,
  ComparedFigures,
  Computed,
  Curves,
  DirtDrawn,
  Packed,
  QuickFigures,
  Shown,
  WholeFigures,
} from './assessed.ts';

/** A job with the model of one state, or of the last state before it that the job describes. */
const opened = (document: unknown, state: PackedState): JobReading => {
  const reading = openJob({ document });
  if (!reading.ok || state === 'as-found') return reading;
  const before = packedStates.slice(0, packedStates.indexOf(state) + 1).toReversed();
  const found = before.map((each) => stateModel(reading.document, each)).find((each) => each !== undefined);
  return { ...reading, ...found };
};

/** Two drawings one under the other, where a page is too narrow for both. */
interface Stacked {
  readonly stacked: boolean;
}

const curvesOf = (model: Model, duty: Curves['duty']): Curves => ({ duty, ...pumpAndSystem(model, duty) });

/** The curves of what is planned, to be seen beside those of the packing as found. */
const plannedCurves = (reading: Extract<JobReading, { ok: true }>, state: PackedState) => {
  const planned = state === 'as-found' ? stateModel(reading.document, 'planned')?.model : undefined;
  return planned === undefined ? {} : { plannedCurves: curvesOf(planned, assess(planned).dutyPoint) };
};

/** Drawings follow the page that they stand in. */
const theme: Theme = 'page';

/** Parts into which a cleaning interval is divided where dirt is drawn. */
const dirtSteps = 4;

const dirtOf = (model: Model, layout: Layout): DirtDrawn => {
  const { packing, media } = model;
  const drawn = { layout, packing, media, times: dirtTimes(model, dirtSteps), theme };
  return { drawing: dirtRowDrawing(drawn), says: describeDirt(drawn) };
};

const compared = ({ model, notes }: Extract<JobReading, { ok: true }>, { name }: Packed): ComparedFigures => {
  const assessment = assess(model);
  const dirt = dirtOf(model, assessment.layout);
  return { name, model, notes, assessment, dirt, curves: curvesOf(model, assessment.dutyPoint) };
};

/** Which of two packings cannot be computed, and why, in words that need no paths. */
const hindered = (problems: readonly Problem[], { name, document }: Packed): Computed<never> => ({
  ok: false,
  problems: problems.map((problem) => ({
    ...problem,
    says: `${name} cannot be computed: ${problemInWords(problem, fieldInWords(document, problem.path))}`,
  })),
});

let lastDrawn: { readonly of: Model; readonly doubts: Doubts } | undefined;

/** Ranges are not drawn anew while only the words of a write-up change. */
const keptDoubts = (model: Model): Doubts => {
  if (lastDrawn === undefined || !alike(lastDrawn.of, model))
    lastDrawn = { of: model, doubts: usualDoubts(model) };
  return lastDrawn.doubts;
};

/** What the worker does; everything that goes in and out is plain data. */
const engine = {
  quick(document: unknown, shown: Shown): Computed<QuickFigures> {
    const reading = opened(document, shown.state);
    if (!reading.ok) return reading;
    const { model, notes } = reading;
    const assessment = assess(model);
    const section = {
      layout: assessment.layout,
      packing: model.packing,
      media: model.media,
      assessment,
      units: shown.system,
      theme,
    };
    const figures = {
      model,
      assessment,
      notes,
      drawing: sectionDrawing(section),
      places: sectionPlaces(section),
    };
    return { ok: true, figures };
  },

  whole(document: unknown, { system, state }: Pick<Shown, 'system' | 'state'>): Computed<WholeFigures> {
    const reading = opened(document, state);
    if (!reading.ok) return reading;
    const job = assessJob(reading.model, { system });
    const curves = curvesOf(reading.model, job.assessment.dutyPoint);
    const times = residenceCurve(reading.model);
    const figures = { ...job, curves, ...(times && { times }), ...plannedCurves(reading, state) };
    return { ok: true, figures };
  },

  /** How sure the figures are: takes as long as a few hundred assessments. */
  doubts(document: unknown, state: PackedState): Computed<Doubts> {
    const reading = opened(document, state);
    if (!reading.ok) return reading;
    return { ok: true, figures: usualDoubts(reading.model) };
  },

  dirt(document: unknown, state: PackedState): Computed<DirtDrawn> {
    const reading = opened(document, state);
    if (!reading.ok) return reading;
    const { layout } = assess(reading.model);
    return { ok: true, figures: dirtOf(reading.model, layout) };
  },

  /** Why the flow has faded; nothing where nobody knows the flow now. */
  faded(document: unknown): Computed<FadedCase | undefined> {
    const reading = openJob({ document });
    if (!reading.ok) return reading;
    return { ok: true, figures: fadedFlow(reading.document, reading.model) };
  },

  forecast(document: unknown, asked: ForecastAsked): Computed<ForecastShown> {
    return forecastShown(document, asked);
  },

  writeUp(document: unknown, name: DocumentName, workshop: string | undefined): Computed<Document> {
    const reading = openJob({ document });
    if (!reading.ok) return reading;
    const signed = workshop === undefined ? {} : { workshop };
    const ranged = tellsRanges(name) ? { doubtsOf: keptDoubts } : {};
    const source = { ...writeUpSource(reading.document, reading.model, ranged), ...signed };
    return { ok: true, figures: writeUpDocument(source, { name, theme }) };
  },

  both(one: Packed, other: Packed, shown: Pick<Shown, 'system'> & Stacked): Computed<BothFigures> {
    const [before, after] = [opened(one.document, one.state), opened(other.document, other.state)];
    if (!before.ok) return hindered(before.problems, one);
    if (!after.ok) return hindered(after.problems, other);
    const [first, second] = [compared(before, one), compared(after, other)];
    const stateOf = ({ name, model, assessment }: ComparedFigures) => ({
      layout: assessment.layout,
      packing: model.packing,
      assessment,
      caption: name,
    });
    const drawing = beforeAfterDrawing({
      before: stateOf(first),
      after: stateOf(second),
      media: { ...first.model.media, ...second.model.media },
      units: shown.system,
      theme,
      title: `${one.name} and ${other.name}`,
      stacked: shown.stacked,
    });
    return { ok: true, figures: { first, second, drawing } };
  },
};

export type Engine = typeof engine;

expose(engine);
