import { cutOutlineDrawing } from '@fettle/drawing/cutOutline.ts';
import type { Theme } from '@fettle/drawing/tokens.ts';
import type { Block } from '../../content/document.ts';
import { COVER_LAP_M } from '../../cuts/coverCuts.ts';
import type { CoverCut, Cut, HoseCut, PadCut, StripCut } from '../../cuts/cut.ts';
import { cutList, STRIP_WIDTH_M } from '../../cuts/cutList.ts';
import { FOAM_OVERSIZE_M } from '../../cuts/padCuts.ts';
import { cutLength, cutSides } from '../cutLengths.ts';
import { heading, lastState, paragraph, type Writer } from '../writer.ts';
import { layingOf } from './handOrder.ts';

/** What a cut is called. */
const nameOf = (writer: Writer, cut: Cut): string => {
  if (cut.kind === 'pad') return writer.name(cut.medium.name);
  return writer.say(cut.kind === 'hose' ? `cut.hose.${cut.side}` : `cut.${cut.kind}`);
};

/** Differences below this are no difference to a knife, m. */
const NOTHING_M = 1e-4;

/** Whether a piece is cut to another outline than that of its room, because the job says so. */
const isOtherOutline = ({ asStated, acrossM, chamber }: PadCut): boolean =>
  asStated && Math.abs(acrossM - chamber.acrossM) > NOTHING_M;

const isPressedThinner = ({ thicknessM, liesM }: PadCut): boolean => thicknessM - liesM > NOTHING_M;

const padOutline = (writer: Writer, cut: PadCut): string => {
  const outline = cutSides(writer, cut.acrossM, cut.otherM);
  const room = (): string => cutSides(writer, cut.chamber.acrossM, cut.chamber.otherM);
  return isOtherOutline(cut) ? writer.say('cut.sides.into', { outline, room: room() }) : outline;
};

const padThickness = (writer: Writer, cut: PadCut): string => {
  const thickness = cutLength(writer, cut.thicknessM);
  if (!isPressedThinner(cut)) return thickness;
  return writer.say('cut.thick.pressed', { thickness, lies: cutLength(writer, cut.liesM) });
};

const outlineOf = (writer: Writer, cut: Cut): string => {
  if (cut.kind === 'pad') return padOutline(writer, cut);
  return cut.kind === 'hose' ? cutLength(writer, cut.lengthM) : cutSides(writer, cut.lengthM, cut.widthM);
};

const thicknessOf = (writer: Writer, cut: Cut): string => {
  if (cut.kind === 'pad') return padThickness(writer, cut);
  if (cut.kind === 'cover') return writer.say('cut.cover.thick');
  return cut.kind === 'strip'
    ? writer.say('cut.strip.fills', { gap: cutLength(writer, cut.gapM) })
    : writer.say('cut.hose.bore', { bore: cutLength(writer, cut.boreM) });
};

const countOf = (cut: Cut): number => (cut.kind === 'hose' ? 1 : cut.count);

const placesOf = (writer: Writer, cut: Cut): string => {
  if (cut.kind === 'hose') return '';
  const labels = cut.kind === 'pad' ? cut.chambers : cut.places;
  return writer.fact({ all: labels.map((name) => ({ name })) });
};

const row = (writer: Writer, cut: Cut, at: number): readonly string[] => [
  String(at + 1),
  writer.say(`cut.from.${'from' in cut ? cut.from : 'bought'}`, { what: nameOf(writer, cut) }),
  outlineOf(writer, cut),
  thicknessOf(writer, cut),
  String(countOf(cut)),
  placesOf(writer, cut),
];

const cutTable = (writer: Writer, cuts: readonly Cut[]): Block => ({
  kind: 'table',
  id: 'cuts',
  caption: writer.say('table.cuts'),
  columns: [
    { head: writer.say('column.order'), align: 'right', share: 0.3 },
    { head: writer.say('column.piece'), align: 'left', share: 1.5 },
    { head: writer.say('column.outline'), align: 'left', share: 1.6 },
    { head: writer.say('column.thickness'), align: 'left', share: 1.2 },
    { head: writer.say('column.count'), align: 'right', share: 0.45 },
    { head: writer.say('column.for'), align: 'left', share: 1.4 },
  ],
  rows: cuts.map((cut, at) => row(writer, cut, at)),
});

const notes = (writer: Writer, cuts: readonly Cut[]): readonly string[] => {
  const padCuts = cuts.filter((cut) => cut.kind === 'pad');
  const pads = padCuts.map(({ medium }) => medium.form);
  const isUsual = padCuts.some((cut) => cut.medium.form === 'foam' && !isOtherOutline(cut));
  const laid = lastState(writer.source).assessment.layout.chambers.map(layingOf);
  return [
    isUsual ? writer.say('build.cuts.foam', { over: cutLength(writer, FOAM_OVERSIZE_M) }) : '',
    padCuts.some((cut) => isPressedThinner(cut) || cut.asStated) ? writer.say('build.cuts.pressed') : '',
    pads.includes('foam') && laid.includes('slot') ? writer.say('build.cuts.slot') : '',
    pads.length > 0 && laid.includes('tube') ? writer.say('build.cuts.tube') : '',
    pads.includes('fibre') ? writer.say('build.cuts.fibre') : '',
    cuts.some(({ kind }) => kind === 'strip')
      ? writer.say('build.cuts.strip', { width: cutLength(writer, STRIP_WIDTH_M) })
      : '',
    cuts.some(({ kind }) => kind === 'cover')
      ? writer.say('build.cuts.cover', { lap: cutLength(writer, COVER_LAP_M) })
      : '',
    pads.length > 0 ? writer.say('build.cuts.measure') : '',
  ];
};

/** Many cuts are drawn smaller, so that a sheet does not become a book, mm of paper. */
const roomFor = (count: number): { readonly width: number; readonly height: number } =>
  count > 8 ? { width: 100, height: 50 } : { width: 110, height: 95 };

const lengthsOf = (writer: Writer, cut: Cut) => {
  const drawn = (lengthM: number) => ({ lengthM, says: cutLength(writer, lengthM) });
  const padLengths = (pad: PadCut) => {
    const { acrossM, otherM, thicknessM, liesM, chamber, medium } = pad;
    return {
      across: drawn(acrossM),
      upright: drawn(otherM),
      thickness: drawn(thicknessM),
      medium,
      ...(isPressedThinner(pad) ? { pressedM: liesM } : {}),
      ...(medium.form === 'foam' || isOtherOutline(pad)
        ? { chamber: { acrossM: chamber.acrossM, uprightM: chamber.otherM } }
        : {}),
    };
  };
  const stripLengths = ({ lengthM, widthM }: StripCut) => ({
    across: drawn(lengthM),
    upright: drawn(widthM),
  });
  const coverLengths = ({ lengthM, widthM, slots }: CoverCut) => ({
    across: drawn(lengthM),
    upright: drawn(widthM),
    chamber: { acrossM: slots.acrossM, uprightM: slots.otherM },
  });
  const hoseLengths = ({ lengthM, boreM }: HoseCut) => ({
    across: drawn(lengthM),
    upright: { lengthM: boreM, says: writer.say('cut.hose.bore', { bore: cutLength(writer, boreM) }) },
  });
  if (cut.kind === 'pad') return padLengths(cut);
  if (cut.kind === 'cover') return coverLengths(cut);
  return cut.kind === 'strip' ? stripLengths(cut) : hoseLengths(cut);
};

const titleOf = (writer: Writer, cut: Cut, at: number): string => {
  const count = countOf(cut);
  const facts = { number: at + 1, what: nameOf(writer, cut) };
  return count === 1 ? writer.say('cut.title.one', facts) : writer.say('cut.title.many', { ...facts, count });
};

const saysOf = (writer: Writer, cut: Cut): string => {
  const facts = { what: nameOf(writer, cut), outline: outlineOf(writer, cut) };
  if (cut.kind !== 'pad') return writer.say('cut.says', facts);
  const thickness = cutLength(writer, cut.thicknessM);
  if (!isPressedThinner(cut)) return writer.say('cut.says.thick', { ...facts, thickness });
  return writer.say('cut.says.pressed', { ...facts, thickness, lies: cutLength(writer, cut.liesM) });
};

const drawingName = (at: number): string => `cut-${at + 1}`;

/** The outline of every cut, to scale, by the name of its drawing. */
export const cutDrawings = (writer: Writer, theme: Theme): Readonly<Record<string, string>> => {
  const cuts = cutList(writer.source);
  const room = roomFor(cuts.length);
  return Object.fromEntries(
    cuts.map((cut, at) => [
      drawingName(at),
      cutOutlineDrawing({
        title: titleOf(writer, cut, at),
        ...lengthsOf(writer, cut),
        words: {
          scale: (ratio) => writer.say('drawing.scale', { ratio }),
          bar: writer.say('drawing.ruler'),
          says: saysOf(writer, cut),
        },
        room,
        theme,
      }),
    ]),
  );
};

/** What is cut, in a list and each piece drawn to scale; nothing where nothing is cut. */
export const cutsPart = (writer: Writer): readonly Block[] => {
  const cuts = cutList(writer.source);
  if (cuts.length === 0) return [];
  return [
    heading(writer, 'build-cuts'),
    cutTable(writer, cuts),
    ...paragraph('build-cut-notes', notes(writer, cuts)),
    ...cuts.map(
      (cut, at): Block => ({
        kind: 'drawing',
        id: `build-${drawingName(at)}`,
        drawing: drawingName(at),
        caption:
          cut.kind === 'hose'
            ? writer.say('cut.caption.hose')
            : writer.say('cut.caption', { places: placesOf(writer, cut) }),
        alternative: saysOf(writer, cut),
        width: 'true',
      }),
    ),
  ];
};
