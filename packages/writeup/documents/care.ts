import type { Theme } from '@fettle/drawing/tokens.ts';
import type { Document } from '../content/document.ts';
import { advicePart } from '../parts/care/advice.ts';
import { calendarPart, troublePart, waterTestsPart } from '../parts/care/calendar.ts';
import { careDrawings, cleaningPart } from '../parts/care/cleaning.ts';
import { jugPart } from '../parts/care/jug.ts';
import { familyName, filterName } from '../parts/summary.ts';
import { paragraph, tense, type Writer } from '../parts/writer.ts';
import { documentOf } from './frame.ts';

/** How its owner keeps a filter running: what to time, what to rinse, what to test, and when to ask. */
export const careDocument = (writer: Writer, theme: Theme): Document => {
  const form = tense(writer.source);
  return documentOf(writer, {
    id: 'care',
    title: writer.say('care.title', { filter: filterName(writer) }),
    subtitle: writer.say(`build.subtitle.${form}`, {
      family: { name: familyName(writer.source.document.filter.family) },
    }),
    description: writer.say('care.description', { filter: filterName(writer) }),
    blocks: [
      ...paragraph('care-lead', [writer.say(`care.lead.${form}`)], 'lead'),
      ...jugPart(writer),
      ...advicePart(writer),
      ...cleaningPart(writer),
      ...waterTestsPart(writer),
      ...calendarPart(writer),
      ...troublePart(writer),
    ],
    drawings: careDrawings(writer, theme),
  });
};
