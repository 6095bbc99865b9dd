import { beforeAfterDrawing, type State } from '@fettle/drawing/beforeAfterDrawing.ts';
import { describeWaterPath } from '@fettle/drawing/describeWaterPath.ts';
import { sectionDrawing } from '@fettle/drawing/sectionDrawing.ts';
import type { Theme } from '@fettle/drawing/tokens.ts';
import type { Block } from '../content/document.ts';
import type { AssessedState } from '../source.ts';
import { flows, hasMechanical, missed } from './interval.ts';
import { heading, lastState, paragraph, tense, type Writer } from './writer.ts';

const stateOf = (writer: Writer, state: AssessedState, caption: string): State => ({
  layout: state.assessment.layout,
  packing: state.model.packing,
  assessment: state.assessment,
  caption: writer.say(caption),
});

/** The section through the filter: as found, and beside it as planned or as left at the same scale. */
export const waterPathDrawing = (writer: Writer, theme: Theme): string => {
  const { found, after } = writer.source;
  const media = { ...found.model.media, ...after?.model.media };
  const before = stateOf(writer, found, 'drawing.state.found');
  if (after === undefined)
    return sectionDrawing({ ...before, media, units: 'both', language: writer.language, theme });
  return beforeAfterDrawing({
    before,
    after: stateOf(writer, after, `drawing.state.${tense(writer.source)}`),
    media,
    units: 'both',
    language: writer.language,
    theme,
    title: writer.say('drawing.before-after'),
  });
};

/** The way of the water of a state in words. */
export const pathText = ({ language }: Writer, { model, assessment }: AssessedState): string =>
  describeWaterPath({
    layout: assessment.layout,
    packing: model.packing,
    media: model.media,
    assessment,
    units: 'both',
    language,
  });

/** The way of the water before and after, drawn and in words. */
export const waterPathPart = (writer: Writer): readonly Block[] => {
  const { source } = writer;
  const states: readonly (readonly [AssessedState, string])[] = [
    [source.found, 'found'],
    ...(source.after === undefined ? [] : ([[source.after, tense(source)]] as const)),
  ];
  const says = states.map(([state, form]) => writer.say(`path.${form}`, { path: pathText(writer, state) }));
  const { assessment } = lastState(source);
  return [
    heading(writer, 'water-path'),
    ...paragraph('water-path', [
      flows(assessment) && hasMechanical(assessment)
        ? writer.say(`path.misses.${tense(source)}`, { mechanical: missed(assessment) })
        : '',
    ]),
    {
      kind: 'drawing',
      id: 'water-path-drawing',
      drawing: 'water-path',
      caption: writer.say(states.length === 1 ? 'drawing.found' : 'drawing.before-after'),
      alternative: says.join(' '),
      width: states.length === 1 ? 'half' : 'full',
    },
  ];
};
