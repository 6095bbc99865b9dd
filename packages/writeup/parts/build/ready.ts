import type { Cut } from '../../cuts/cut.ts';
import { cutList, cutsSleeve } from '../../cuts/cutList.ts';
import { cautionBlocks } from '../cautions.ts';
import { changeCost } from '../changes.ts';
import type { Writer } from '../writer.ts';
import type { Stage } from './stage.ts';

/** Whether an edge of a cut is hard, and so has burrs that chafe or come loose. */
const hasBurrs = ({ kind }: Cut): boolean => kind === 'hose' || kind === 'cover';

const isNew = (cut: Cut): boolean =>
  cut.kind === 'strip' || cut.kind === 'cover' || cut.from === 'bought' || cut.from === 'both';

/** What is cut from media that were in the filter, with their bacteria. */
const isLiving = (cut: Cut): boolean => cut.kind === 'pad' && cut.from !== 'bought';

/** Everything is cut, smoothed and rinsed before any of it is laid in; nothing where nothing is new and nothing cut. */
export const readyStage = (writer: Writer): Stage => {
  const cuts = cutList(writer.source);
  const rinsesNew = changeCost(writer.source).purchases.length > 0 || cuts.some(isNew);
  return {
    id: 'build-ready',
    before: cautionBlocks(writer, 'build', ['blade', 'foam']),
    steps: [
      ...(cuts.length > 0 ? [writer.say('step.cut')] : []),
      ...(cutsSleeve(writer.source) ? [writer.say('step.cut-sleeve')] : []),
      ...(cuts.some(hasBurrs) ? [writer.say('step.deburr')] : []),
      ...(rinsesNew ? [writer.say('step.rinse-new')] : []),
      ...(cuts.some(isLiving) ? [writer.say('step.rinse-there')] : []),
    ],
  };
};
