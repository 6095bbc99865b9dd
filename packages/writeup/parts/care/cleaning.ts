import { sectionDrawing } from '@fettle/drawing/sectionDrawing.ts';
import type { Theme } from '@fettle/drawing/tokens.ts';
import type { BedState, Replacement } from '@fettle/engine/assessment/assessment.ts';
import { isSewn } from '@fettle/engine/packing/holding.ts';
import { handlingKind } from '@fettle/engine/planning/handling.ts';
import type { Block } from '../../content/document.ts';
import { isColumn } from '../build/handOrder.ts';
import { cautionBlocks, mediaCautions } from '../cautions.ts';
import { hasInterval } from '../interval.ts';
import { duration, share } from '../quantities.ts';
import { heading, lastState, paragraph, placeIn, type Writer } from '../writer.ts';
import { ownersFlow } from './jug.ts';
import { CLEAN_AT } from './jugTimes.ts';

const replacementOf = (writer: Writer, { id }: BedState): Replacement | undefined =>
  lastState(writer.source).assessment.replaced.find(({ bed }) => bed === id);

/** Whether a bed is cleaned, or replaced because it clogs, at each cleaning, and not replaced before. */
const isEachTime = (writer: Writer, bed: BedState): boolean => {
  const { assessment } = lastState(writer.source);
  const { cleanedEachTime, timeS } = assessment.cleaning;
  const { everyS = Infinity } = replacementOf(writer, bed) ?? {};
  return hasInterval(assessment) && cleanedEachTime.includes(bed.id) && timeS <= everyS;
};

/** Whether water or air keeps a bed's media moving: nothing settles in it, and nobody swishes it. */
const isMoved = (writer: Writer, { chamber }: BedState): boolean =>
  lastState(writer.source).assessment.layout.chambers.find(({ id }) => id === chamber)?.moved !== undefined;

/** How a bed is cleaned: pressed out where it gives way, rinsed where it is hard, or swished; a sock is changed for a clean one. */
const cleanedText = (writer: Writer, bed: BedState): string => {
  if (isMoved(writer, bed)) return writer.say('care.moved');
  if (handlingKind(writer.source.found) === 'built-in') return writer.say('care.draw-off');
  const chamber = lastState(writer.source).assessment.layout.chambers.find(({ id }) => id === bed.chamber);
  if (chamber !== undefined && isSewn(chamber)) return writer.say('care.sock');
  if (bed.stage === 'biological') return writer.say('care.swish');
  const { form } = lastState(writer.source).model.media[bed.medium]!;
  return writer.say(form === 'foam' || form === 'fibre' ? 'care.press' : 'care.rinse');
};

/** What is done to a bed: replaced, cleaned, or cleaned each time and replaced in the end. */
const careText = (writer: Writer, bed: BedState): string => {
  const replacement = replacementOf(writer, bed);
  if (replacement === undefined) return cleanedText(writer, bed);
  return replacement.because !== 'clogs' && isEachTime(writer, bed)
    ? writer.say('care.clean-then-replace', { clean: cleanedText(writer, bed) })
    : writer.say('care.replace');
};

/** Code of when a bed wants it by its looks. */
const looksText = (writer: Writer, bed: BedState): string => {
  if (isMoved(writer, bed)) return 'care.when-moved';
  const isAlone = lastState(writer.source).assessment.beds.length === 1;
  return isAlone ? 'care.when-dirty.alone' : 'care.when-dirty';
};

/** When a bed wants it, and what decides that: each cleaning, its end, both of them, or its looks. */
const whenText = (writer: Writer, bed: BedState): string => {
  const { cleaning } = lastState(writer.source).assessment;
  const replacement = replacementOf(writer, bed);
  const ends =
    replacement === undefined
      ? undefined
      : writer.say(`care.ends.${replacement.because}`, { time: duration(replacement.everyS) });
  if (replacement?.because === 'clogs') return ends ?? '';
  if (!isEachTime(writer, bed)) return ends ?? writer.say(looksText(writer, bed));
  const each = writer.say('care.each-time', { interval: duration(cleaning.timeS) });
  return ends === undefined ? each : writer.say('care.each-time-then', { each, ends });
};

/** Whether the flow shows that it is time, or the calendar must: a gap may carry the water past a full bed. */
const whatDecides = (writer: Writer): string => {
  if (ownersFlow(writer).flowM3PerS <= 0) return '';
  const { assessment } = lastState(writer.source);
  const { flowRatio } = assessment.cleaning;
  return hasInterval(assessment) && flowRatio > CLEAN_AT
    ? writer.say('care.calendar-decides', { flow: share(flowRatio) })
    : writer.say('care.flow-decides');
};

const bedsTable = (writer: Writer): readonly Block[] => {
  const state = lastState(writer.source);
  if (state.assessment.beds.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'care-beds',
      caption: writer.say('table.care-beds'),
      columns: [
        { head: writer.say('column.bed'), align: 'left', share: 1.4 },
        { head: writer.say('column.care'), align: 'left' },
        { head: writer.say('column.when'), align: 'left', share: 1.3 },
      ],
      rows: state.assessment.beds.map((bed) => [
        placeIn(writer, state, bed.id),
        careText(writer, bed),
        whenText(writer, bed),
      ]),
    },
    ...paragraph(
      'care-beds-notes',
      [
        state.assessment.beds.some((bed) => isEachTime(writer, bed)) ? writer.say('doubt.interval') : '',
        whatDecides(writer),
      ],
      'soft',
    ),
  ];
};

/** The filter with its media in it, so that each goes back to its place. */
export const careDrawings = (writer: Writer, theme: Theme): Readonly<Record<string, string>> => {
  const { model, assessment } = lastState(writer.source);
  const { packing, media } = model;
  return {
    'care-section': sectionDrawing({
      layout: assessment.layout,
      packing,
      media,
      assessment,
      units: 'both',
      language: writer.language,
      theme,
    }),
  };
};

const sectionBlock = (writer: Writer): Block => {
  const state = lastState(writer.source);
  const beds = state.assessment.beds.map(({ id }) => placeIn(writer, state, id));
  const caption = writer.say('drawing.care');
  return {
    kind: 'drawing',
    id: 'care-section',
    drawing: 'care-section',
    caption,
    alternative: beds.length === 0 ? caption : `${caption} ${beds.join('; ')}.`,
    width: 'half',
  };
};

/** Whether the usual pattern touches every bed at each cleaning. */
const namesAll = (writer: Writer): boolean => {
  const { beds, cleaning } = lastState(writer.source).assessment;
  return beds.length > 1 && !cleaning.beyond && beds.every(({ id }) => cleaning.cleanedEachTime.includes(id));
};

/** How the filter is opened, its media cleaned, and it is started again. */
const cleaningSteps = (writer: Writer, allMoved: boolean): readonly string[] => {
  const { found } = writer.source;
  const kind = handlingKind(found);
  const staying = kind === 'built-in' ? '.built-in' : '';
  return [
    `open.${kind}`,
    allMoved ? 'rinse.moved' : `rinse${staying}`,
    `back${staying}`,
    isColumn(found) ? `start.${kind}.column` : `start.${kind}`,
    `look.${kind}`,
  ].map((step) => writer.say(`care.step.${step}`));
};

/** What is rinsed when, in what water, and how it is opened and closed for that. */
export const cleaningPart = (writer: Writer): readonly Block[] => {
  const minded = mediaCautions(writer);
  const { beds } = lastState(writer.source).assessment;
  const allMoved = beds.length > 0 && beds.every((bed) => isMoved(writer, bed));
  return [
    heading(writer, 'care-cleaning'),
    ...bedsTable(writer),
    ...cautionBlocks(writer, 'care', ['all-at-once']),
    ...paragraph('care-stagger', [namesAll(writer) ? writer.say('care.stagger') : '']),
    ...(minded.length === 0 ? [] : [heading(writer, 'care-media', 3), ...minded]),
    heading(writer, 'care-steps', 3),
    ...paragraph('care-steps-when', [allMoved ? writer.say('care.steps.moved') : '']),
    ...cautionBlocks(writer, 'care', [
      'mains',
      'cable',
      'air-line',
      'siphon',
      'siphon-break',
      'sump',
      'overflow',
      'weight',
      'skin',
      'seal',
    ]),
    { kind: 'steps', id: 'care-steps', first: 1, items: cleaningSteps(writer, allMoved) },
    sectionBlock(writer),
  ];
};
