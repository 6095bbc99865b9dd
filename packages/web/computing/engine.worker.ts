import { sectionDrawing } from '@fettle/drawing/sectionDrawing.ts';
import { sectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import { assess } from '@fettle/engine/assessment/assess.ts';
import { assessJob } from '@fettle/workflows/assessJob.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { expose } from 'comlink';
import type { Computed, QuickFigures, Shown, WholeFigures } from './assessed.ts';

/** What the worker does; everything that goes in and out is plain data. */
const engine = {
  quick(document: unknown, shown: Shown): Computed<QuickFigures> {
    const opened = openJob({ document });
    if (!opened.ok) return opened;
    const { model, notes } = opened;
    const assessment = assess(model);
    const section = {
      layout: assessment.layout,
      packing: model.packing,
      media: model.media,
      assessment,
      units: shown.system,
      theme: shown.theme,
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

  whole(document: unknown, { system }: Shown): Computed<WholeFigures> {
    const opened = openJob({ document });
    return opened.ok ? { ok: true, figures: assessJob(opened.model, { system }) } : opened;
  },
};

export type Engine = typeof engine;

expose(engine);
