import type { Block, Document } from '../content/document.ts';
import { filterName } from '../parts/summary.ts';
import { heading, paragraph, type Writer } from '../parts/writer.ts';
import { clockText, speakingTimeS, WORDS_PER_MINUTE, wordCount } from '../talk/speaking.ts';
import { type TalkSection, talkSections } from '../talk/talk.ts';
import { documentOf } from './frame.ts';

const wordsIn = ({ facts }: TalkSection): number => facts.reduce((sum, fact) => sum + wordCount(fact), 0);

const sectionBlocks = (writer: Writer, section: TalkSection): readonly Block[] => [
  {
    kind: 'heading',
    id: section.id,
    level: 3,
    text: writer.say('talk.heading', {
      heading: section.heading,
      time: clockText(speakingTimeS(wordsIn(section))),
    }),
  },
  { kind: 'list', id: `${section.id}-facts`, items: section.facts },
];

const planTable = (writer: Writer, sections: readonly TalkSection[]): Block => {
  let startS = 0;
  const rows = sections.map((section) => {
    const lastsS = speakingTimeS(wordsIn(section));
    const row = [clockText(startS), section.heading, clockText(lastsS)];
    startS += lastsS;
    return row;
  });
  return {
    kind: 'table',
    id: 'talk-plan',
    caption: writer.say('table.talk'),
    columns: [
      { head: writer.say('column.from'), align: 'right', share: 0.4 },
      { head: writer.say('column.part'), align: 'left', share: 3 },
      { head: writer.say('column.lasts'), align: 'right', share: 0.6 },
    ],
    rows,
    foot: ['', writer.say('media.total'), clockText(startS)],
  };
};

/** Facts for a recorded walk-through, in the order of the work, with the time that saying them takes. */
export const talkDocument = (writer: Writer): Document => {
  const sections = talkSections(writer);
  return documentOf(writer, {
    id: 'talk',
    title: writer.say('talk.title', { filter: filterName(writer) }),
    subtitle: writer.say('talk.subtitle'),
    description: writer.say('talk.description', { filter: filterName(writer) }),
    blocks: [
      ...paragraph('talk-lead', [writer.say('talk.lead', { rate: WORDS_PER_MINUTE })]),
      planTable(writer, sections),
      heading(writer, 'talk-facts'),
      ...sections.flatMap((section) => sectionBlocks(writer, section)),
    ],
  });
};
