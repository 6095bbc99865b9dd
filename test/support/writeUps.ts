import { readdirSync, readFileSync } from 'node:fs';
import { doubtOf } from '@fettle/engine/doubt/doubtOf.ts';
import { searchPlans } from '@fettle/engine/planning/search.ts';
import { readDocument } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { plannedState } from '@fettle/workflows/plannedState.ts';
import { toPlansResult } from '@fettle/workflows/results/plans.ts';
import { writeUpSource } from '@fettle/workflows/writeUpSource.ts';
import type { Block, Document } from '@fettle/writeup/content/document.ts';
import type { WriteUpSource } from '@fettle/writeup/source.ts';
import { inProject } from './program.ts';

/** The write-up's source of a job document; fails where it does not read. */
export const sourceOf = (document: unknown): WriteUpSource => {
  const reading = readDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return writeUpSource(reading.document, reading.model, {
    // Few draws: what is asked here is how ranges are written, not how good they are.
    doubtsOf: (model) => doubtOf(model, { draws: 32 }),
  });
};

export const demoNames: readonly string[] = readdirSync(inProject('demo')).map((file) =>
  file.replace(/\.yaml$/, ''),
);

export const demoDocument = (name: string): JobDocument => {
  const reading = openJob(readFileSync(inProject(`demo/${name}.yaml`)));
  if (!reading.ok) throw new Error(`${name} does not read`);
  return reading.document;
};

/** A demo job with the best plan of a short search taken, where it is not built yet. */
const withPlan = (document: JobDocument): JobDocument => {
  const reading = readDocument(document);
  if (!reading.ok || document.asLeft !== undefined) return document;
  const { currency } = reading.model.money;
  const plans = searchPlans(reading.model, { budget: 15, cap: 200 });
  const [best] = toPlansResult(plans, currency).plans;
  return best === undefined ? document : { ...document, planned: plannedState(best, reading.model) };
};

/** Every demo job as it was found, and with what is planned or was built. */
export const demoSources: readonly { readonly name: string; readonly source: WriteUpSource }[] =
  demoNames.flatMap((name) => {
    const document = demoDocument(name);
    const { asLeft: _, planned: __, ...found } = document;
    return [
      { name: `${name} as found`, source: sourceOf(found) },
      { name: `${name} with its re-pack`, source: sourceOf(withPlan(document)) },
    ];
  });

/** Every text of a block, in its order; pairs of a key figure as one text. */
const textsOfBlock = (block: Block): readonly string[] => {
  switch (block.kind) {
    case 'heading':
    case 'caution':
      return [block.text];
    case 'paragraph':
      return [block.label ?? '', block.text];
    case 'list':
    case 'steps':
      return block.items;
    case 'figures':
      return block.figures.flatMap(({ label, metric, us, note }) => [
        us === undefined ? metric : `${metric} (${us})`,
        label,
        note ?? '',
      ]);
    case 'table':
      return [
        block.caption,
        ...block.columns.map(({ head }) => head),
        ...block.rows.flat(),
        ...(block.foot ?? []),
      ];
    case 'drawing':
      return [block.alternative, block.caption];
    case 'blanks':
      return block.labels;
    case 'photographs':
      return block.shown.map(({ caption }) => caption);
  }
};

/** Every text of a document. */
export const textsOf = ({ title, subtitle, blocks }: Document): readonly string[] =>
  [title, subtitle, ...blocks.flatMap(textsOfBlock)].filter((text) => text !== '');
