import { carriesConditions } from '../parts/carries.ts';
import { changeCost } from '../parts/changes.ts';
import { partLines } from '../parts/partLines.ts';
import { money, volume } from '../parts/quantities.ts';
import { filterName, summarySentences } from '../parts/summary.ts';
import { lastState, type Writer } from '../parts/writer.ts';
import { chaptersOf } from './chapters.ts';
import { clockText } from './speaking.ts';

const boughtLines = (writer: Writer): readonly string[] => {
  const { purchases, currency } = changeCost(writer.source);
  const { model } = lastState(writer.source);
  return [
    ...purchases.map(({ medium, volumeM3, price }) =>
      writer.say('description.medium', {
        amount: volume(volumeM3),
        medium: { name: model.media[medium]!.name },
        price: money(price, currency),
      }),
    ),
    ...partLines(writer).map(({ name, amount, price }) =>
      writer.say('description.part', { count: amount, part: name, price: money(price, currency) }),
    ),
  ];
};

const list = (heading: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [[heading, ...lines.map((line) => `- ${line}`)].join('\n')];

/** Text that stands under a recording: what it shows, parts, conditions, chapters; plain, with nothing of the owner. */
export const descriptionText = (writer: Writer): string => {
  const chapters = chaptersOf(writer.source.document);
  const times = chapters.map(({ fromS, says }) => `${clockText(fromS)} ${says.replace(/\s+/g, ' ').trim()}`);
  const by = writer.source.document.writeUp?.by;
  return [
    filterName(writer),
    summarySentences(writer).join(' '),
    ...list(writer.say('description.parts'), boughtLines(writer)),
    [writer.say('carries.conditions', carriesConditions(writer)), writer.say('doubt.computed')].join(' '),
    [writer.say('limits.one-unit'), writer.say('limits.advice'), writer.say('description.safety')].join(' '),
    // Chapter lists are read by players line by line, so that nothing may stand before a time.
    ...(times.length === 0 ? [] : [[writer.say('description.chapters'), ...times].join('\n')]),
    ...(by === undefined ? [] : [by]),
  ]
    .join('\n\n')
    .concat('\n');
};
