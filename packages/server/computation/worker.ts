import { sectionDrawing } from '@fettle/drawing/sectionDrawing.ts';
import { writeJob } from '@fettle/job/write.ts';
import { assessDocument, type Outcome } from '@fettle/workflows/assessDocument.ts';
import { assessJob } from '@fettle/workflows/assessJob.ts';
import { forecastDocument } from '@fettle/workflows/forecastDocument.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { openState } from '@fettle/workflows/openState.ts';
import { resultText } from '@fettle/workflows/resultText.ts';
import { kindNamed } from '../work/kinds/kinds.ts';
import { standsBackFor } from './answering.ts';
import type {
  AssessTask,
  DrawTask,
  ForecastTask,
  LongTask,
  PlainReading,
  ReadTask,
  TaskResults,
  UsualTask,
} from './tasks.ts';

/** Progress is told at most this often, ms. */
const PROGRESS_EVERY_MS = 200;
/** A checkpoint is handed over at most this often, ms. */
const CHECKPOINT_EVERY_MS = 3000;

const read = ({ bytes }: ReadTask): PlainReading => {
  const reading = openJob(bytes);
  return reading.ok ? { ok: true, document: reading.document, notes: reading.notes } : reading;
};

const assess = ({ document, day, units, state }: AssessTask): Outcome<string> => {
  const assessed = assessDocument({ document }, { day, system: units, state });
  return assessed.ok ? { ok: true, result: resultText(assessed.result) } : assessed;
};

const forecast = ({ document, days, clean, state }: ForecastTask): Outcome<string> => {
  const forecast = forecastDocument({ document }, { days, clean, state });
  return forecast.ok ? { ok: true, result: resultText(forecast.result) } : forecast;
};

const draw = ({ document, theme, units, state }: DrawTask): Outcome<string> => {
  const opened = openState({ document }, state);
  if (!opened.ok) return opened;
  const { model } = opened;
  const { assessment } = assessJob(model);
  const result = sectionDrawing({
    layout: assessment.layout,
    packing: model.packing,
    media: model.media,
    assessment,
    units,
    theme,
    caption: model.filter.name,
  });
  return { ok: true, result };
};

const atMostEvery = (ms: number) => {
  let last = performance.now();
  return (): boolean => {
    const now = performance.now();
    if (now - last < ms) return false;
    last = now;
    return true;
  };
};

const work = ({ kind, document, request, checkpoints, answering, port }: LongTask): Outcome<unknown> => {
  const found = kindNamed(kind);
  if (found === undefined) throw new Error(`no kind of work is called ${kind}`);
  const progressDue = atMostEvery(PROGRESS_EVERY_MS);
  const checkpointDue = atMostEvery(CHECKPOINT_EVERY_MS);
  return found.run({
    document,
    request,
    checkpoints,
    onStep: standsBackFor(answering),
    onProgress: (assessed, planned) => {
      if (progressDue()) port.postMessage({ progress: { assessed, planned } });
    },
    onCheckpoint: (take) => {
      if (checkpointDue()) port.postMessage({ checkpoint: take() });
    },
  });
};

/** What a thread does with one task; runs in a worker thread. */
export default function perform(task: UsualTask): TaskResults[UsualTask['task']] {
  switch (task.task) {
    case 'read':
      return read(task);
    case 'write':
      return writeJob(task.document);
    case 'assess':
      return assess(task);
    case 'forecast':
      return forecast(task);
    case 'draw':
      return draw(task);
    case 'work':
      return work(task);
  }
}
