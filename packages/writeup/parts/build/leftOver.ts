import { isUsedUp } from '@fettle/engine/model/medium.ts';
import { volumesOf } from '@fettle/engine/planning/candidates.ts';
import type { Block } from '../../content/document.ts';
import { volume } from '../quantities.ts';
import { heading, paragraph, type Writer } from '../writer.ts';

/** Less than this is what rounding depths to tenths of a millimetre takes off a bed, m³. */
export const NEGLIGIBLE_M3 = 1e-5;

/** Media that come out of the filter and do not go back, and what becomes of each. */
export const leftOverPart = (writer: Writer): readonly Block[] => {
  const { found, after } = writer.source;
  if (after === undefined) return [];
  const held = volumesOf(found.assessment.layout.chambers, found.model.packing);
  const wanted = volumesOf(after.assessment.layout.chambers, after.model.packing);
  const items = [...held].flatMap(([id, volumeM3]) => {
    const medium = found.model.media[id]!;
    const isSpent = isUsedUp(medium);
    const over = isSpent ? volumeM3 : volumeM3 - (wanted.get(id) ?? 0);
    if (over <= NEGLIGIBLE_M3) return [];
    const facts = { amount: volume(over), medium: { name: medium.name } };
    return [writer.say(isSpent ? 'left-over.spent' : 'left-over.good', facts)];
  });
  if (items.length === 0) return [];
  return [
    heading(writer, 'build-left-over'),
    { kind: 'list', id: 'left-over', items },
    ...paragraph('left-over-notes', [writer.say('left-over.notes')], 'soft'),
  ];
};
