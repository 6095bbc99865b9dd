import type { Block } from '../../content/document.ts';
import { heading, type Writer } from '../writer.ts';

/** One stage of the work: what is dangerous at it comes before its steps. */
export interface Stage {
  readonly id: string;
  readonly before?: readonly Block[];
  readonly steps: readonly string[];
  readonly after?: readonly Block[];
}

/** Stages one after another, their steps numbered through; a stage without steps keeps its blocks. */
export const stageBlocks = (writer: Writer, stages: readonly Stage[]): readonly Block[] => {
  const blocks: Block[] = [];
  let first = 1;
  for (const { id, before = [], steps, after = [] } of stages) {
    if (before.length + steps.length + after.length === 0) continue;
    blocks.push(heading(writer, id), ...before);
    if (steps.length > 0) blocks.push({ kind: 'steps', id: `${id}-steps`, first, items: steps });
    blocks.push(...after);
    first += steps.length;
  }
  return blocks;
};
