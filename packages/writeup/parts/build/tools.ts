import { handlingKind, worksInTank } from '@fettle/engine/planning/handling.ts';
import type { Block } from '../../content/document.ts';
import { cutsAnything } from '../../cuts/cutList.ts';
import { heading, type Writer } from '../writer.ts';

/** What is laid out before the work begins. */
export const toolsPart = (writer: Writer): readonly Block[] => {
  const { source } = writer;
  const kind = handlingKind(source.found);
  const isClosed = kind === 'canister';
  const tools = [
    'measuring',
    'buckets',
    isClosed ? 'brushes.hoses' : 'brushes.intake',
    kind === 'built-in' ? 'bag.built-in' : worksInTank(kind) ? 'bag' : 'paper',
    ...(isClosed ? ['grease'] : []),
    ...(cutsAnything(source) ? ['knife'] : []),
  ];
  const items = tools.map((tool) => writer.say(`tool.${tool}`));
  return [heading(writer, 'build-tools'), { kind: 'list', id: 'build-tools-list', items }];
};
