import type { Theme } from '@fettle/drawing/tokens.ts';
import type { Document } from '../content/document.ts';
import { cutDrawings, cutsPart } from '../parts/build/cutParts.ts';
import { leftOverPart } from '../parts/build/leftOver.ts';
import { alterStage, beforeStage, openStage } from '../parts/build/opening.ts';
import { packDrawings, packStage } from '../parts/build/packing.ts';
import { readyStage } from '../parts/build/ready.ts';
import { stageBlocks } from '../parts/build/stage.ts';
import { closeStage, hygieneStage, leakStage, runStage } from '../parts/build/testing.ts';
import { toGetPart } from '../parts/build/toGet.ts';
import { toolsPart } from '../parts/build/tools.ts';
import { familyName, filterName } from '../parts/summary.ts';
import { paragraph, tense, type Writer } from '../parts/writer.ts';
import { documentOf } from './frame.ts';

/** What the bench works by: parts, cuts to scale, steps with their cautions, tests with room for their results. */
export const buildDocument = (writer: Writer, theme: Theme): Document => {
  const { source } = writer;
  const form = tense(source);
  const first = [beforeStage(writer), openStage(writer), readyStage(writer), alterStage(writer)];
  const stepsBefore = first.reduce((sum, { steps }) => sum + steps.length, 0);
  const stages = [
    ...first,
    packStage(writer),
    closeStage(writer),
    leakStage(writer),
    runStage(writer),
    hygieneStage(writer),
  ];
  return documentOf(writer, {
    id: 'build',
    title: writer.say('build.title', { filter: filterName(writer) }),
    subtitle: writer.say(`build.subtitle.${form}`, {
      family: { name: familyName(source.document.filter.family) },
    }),
    description: writer.say('build.description', { filter: filterName(writer) }),
    blocks: [
      ...paragraph('build-lead', [writer.say(`build.lead.${form}`)], 'lead'),
      ...(form === 'found' ? [] : toGetPart(writer)),
      ...leftOverPart(writer),
      ...toolsPart(writer),
      ...cutsPart(writer),
      ...stageBlocks(writer, stages),
    ],
    drawings: { ...cutDrawings(writer, theme), ...packDrawings(writer, theme, stepsBefore) },
  });
};
