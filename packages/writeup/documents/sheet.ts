import type { Theme } from '@fettle/drawing/tokens.ts';
import type { Document } from '../content/document.ts';
import { carriesPart } from '../parts/carries.ts';
import { cautionBlocks, mediaCautions } from '../parts/cautions.ts';
import { changesPart } from '../parts/changes.ts';
import { claimsPart } from '../parts/claims.ts';
import { costsPart } from '../parts/costs.ts';
import { findingsPart } from '../parts/findings.ts';
import { forecastPart } from '../parts/forecast/forecast.ts';
import { forecastDrawings } from '../parts/forecast/plot.ts';
import { forbiddenPart, limitsPart } from '../parts/limits.ts';
import { measuredPart } from '../parts/measured.ts';
import { mediaPart } from '../parts/media.ts';
import { photographsOf, photographsPart } from '../parts/photographs.ts';
import { volume } from '../parts/quantities.ts';
import { sitePart } from '../parts/site.ts';
import { datesPart, familyName, figuresPart, filterName, summaryPart } from '../parts/summary.ts';
import { waterPathDrawing, waterPathPart } from '../parts/waterPath.ts';
import { workingsPart } from '../parts/workings.ts';
import { heading, lastState, type Writer } from '../parts/writer.ts';
import { documentOf } from './frame.ts';

/** The owner's sheet and the published article: what was found, what was changed, what it does now. */
export const sheetDocument = (writer: Writer, theme: Theme): Document => {
  const { source } = writer;
  return documentOf(writer, {
    id: 'sheet',
    title: writer.say('sheet.title', { filter: filterName(writer) }),
    subtitle: writer.say('sheet.subtitle', {
      family: { name: familyName(source.document.filter.family) },
      volume: volume(lastState(source).model.tank.volumeM3, 3),
    }),
    description: writer.say('sheet.description', { filter: filterName(writer) }),
    blocks: [
      ...summaryPart(writer),
      ...figuresPart(writer),
      ...datesPart(writer),
      ...waterPathPart(writer),
      ...findingsPart(writer),
      ...photographsPart(writer),
      ...(source.after === undefined ? [] : changesPart(writer)),
      ...mediaPart(writer),
      ...measuredPart(writer),
      ...carriesPart(writer),
      ...forecastPart(writer),
      ...sitePart(writer),
      ...costsPart(writer),
      ...claimsPart(writer),
      heading(writer, 'cautions'),
      ...cautionBlocks(writer, 'care'),
      ...mediaCautions(writer),
      ...forbiddenPart(writer),
      ...limitsPart(writer),
      ...workingsPart(writer),
    ],
    photographs: photographsOf(writer),
    drawings: { 'water-path': waterPathDrawing(writer, theme), ...forecastDrawings(writer, theme) },
  });
};
