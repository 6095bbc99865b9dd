import { handlingKind, isDrivenByAir, worksInTank } from '@fettle/engine/planning/handling.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Block } from '../../content/document.ts';
import { breaksSiphon, cautionBlocks } from '../cautions.ts';
import { dayIn, heading, paragraph, type Writer } from '../writer.ts';
import { hasAirHole, spillsPart } from './spills.ts';

const DAY_S = 86_400;

/** Days after the work on which the water is tested (common practice, no source). */
const testDays = [1, 3, 5, 7, 14] as const;

/** The day so many days after another, both as `2026-11-20`. */
export const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * DAY_S * 1000).toISOString().slice(0, 10);

/** The first day on which it can run in the tank again, as far as the job tells: promised, and not before it is built. */
const returnDay = ({ job, asLeft }: JobDocument): string | undefined =>
  [job?.promised, asLeft?.day]
    .filter((day) => day !== undefined)
    .toSorted()
    .at(-1);

/** Ammonia and nitrite in the two weeks after media were touched, with room for what was read. */
export const waterTestsPart = (writer: Writer): readonly Block[] => {
  const day = returnDay(writer.source.document);
  return [
    heading(writer, 'care-tests'),
    ...paragraph('care-tests', [
      writer.say('care.tests.why'),
      writer.say('care.tests.rise'),
      day === undefined
        ? writer.say('care.tests.count')
        : writer.say('care.tests.dated', { day: dayIn(writer, day) }),
    ]),
    {
      kind: 'table',
      id: 'water-tests',
      caption: writer.say('table.water-tests'),
      roomy: true,
      columns: [
        { head: writer.say('column.day'), align: 'left', share: 0.5 },
        { head: writer.say('column.date'), align: 'left' },
        { head: writer.say('column.ammonia'), align: 'left' },
        { head: writer.say('column.nitrite'), align: 'left' },
        { head: writer.say('column.done'), align: 'left', share: 1.6 },
      ],
      rows: testDays.map((days) => [
        String(days),
        day === undefined ? '' : dayIn(writer, dayAfter(day, days)),
        '',
        '',
        '',
      ]),
    },
  ];
};

/** What is looked at, by the calendar. */
export const calendarPart = (writer: Writer): readonly Block[] => {
  const kind = handlingKind(writer.source.found);
  const isClosed = kind === 'canister';
  const isAir = isDrivenByAir(writer.source.found.model);
  const when = (applies: boolean, what: string, every: string): readonly (readonly [string, string])[] =>
    applies ? [[what, every]] : [];
  const rows = [
    ...when(!isAir, 'strainer', 'week'),
    ...when(!worksInTank(kind), `leaks.${kind}`, 'week'),
    ...when(true, 'drip-loop', 'month'),
    ...when(breaksSiphon(writer) || hasAirHole(writer), 'siphon-hole', 'month'),
    ...when(isAir, 'air', 'month'),
    ...when(true, 'flow', 'month'),
    ...when(true, 'rcd', 'month'),
    ...when(!isAir, 'rotor', 'year'),
    ...when(isClosed, 'hoses', 'year'),
    ...when(isClosed, 'seal', 'year'),
  ];
  return [
    heading(writer, 'care-calendar'),
    {
      kind: 'table',
      id: 'care-calendar',
      caption: writer.say('table.care-calendar'),
      columns: [
        { head: writer.say('column.what'), align: 'left', share: 3 },
        { head: writer.say('column.every'), align: 'left' },
      ],
      rows: rows.map(([what, every]) => [writer.say(`calendar.${what}`), writer.say(`every.${every}`)]),
    },
  ];
};

/** What to do after a power cut, and when to ask for help. */
export const troublePart = (writer: Writer): readonly Block[] => {
  const by = writer.source.document.writeUp?.by;
  const kind = handlingKind(writer.source.found);
  const damp = worksInTank(kind) ? [] : [`damp.${kind}`];
  const noise = isDrivenByAir(writer.source.found.model) ? 'noise.air' : 'noise';
  const calls = ['flow', ...damp, noise, 'device', 'smell', 'animals'];
  return [
    ...spillsPart(writer),
    heading(writer, 'care-power-cut'),
    ...cautionBlocks(writer, 'care', ['stopped', 'stopped-open']),
    heading(writer, 'care-call'),
    ...paragraph('care-call', [
      by === undefined ? writer.say('care.call') : writer.say('care.call.by', { by }),
    ]),
    {
      kind: 'list',
      id: 'care-call-list',
      items: calls.map((call) => writer.say(`call.${call}`)),
    },
  ];
};
