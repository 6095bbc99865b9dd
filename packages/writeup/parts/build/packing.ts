import { packingRowDrawing } from '@fettle/drawing/packingRowDrawing.ts';
import { placedBeds } from '@fettle/drawing/placedBeds.ts';
import { sectionDrawing } from '@fettle/drawing/sectionDrawing.ts';
import type { Theme } from '@fettle/drawing/tokens.ts';
import { bedShapes } from '@fettle/engine/families/bedShape.ts';
import type { Chamber } from '@fettle/engine/families/layout.ts';
import { inWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import { isUsedUp } from '@fettle/engine/model/medium.ts';
import { volumesOf } from '@fettle/engine/planning/candidates.ts';
import { handlingKind } from '@fettle/engine/planning/handling.ts';
import type { Block } from '../../content/document.ts';
import { cautionBlocks } from '../cautions.ts';
import { changeCost, goodMedia } from '../changes.ts';
import { cutLength } from '../cutLengths.ts';
import { mass, volume } from '../quantities.ts';
import { lastState, tense, type Writer } from '../writer.ts';
import { inHandOrder, layingOf } from './handOrder.ts';
import { NEGLIGIBLE_M3 } from './leftOver.ts';
import type { Stage } from './stage.ts';

const packedOf = (writer: Writer) => {
  const { model, assessment } = lastState(writer.source);
  return { layout: assessment.layout, packing: model.packing, media: model.media };
};

/** The layers of a chamber as hands lay them: from the bottom, from the tube outward, or from the pump's side. */
const layersOf = (writer: Writer, chamber: Chamber): readonly string[] => {
  const { model } = lastState(writer.source);
  const placed = placedBeds(packedOf(writer));
  const listed = model.packing[chamber.id] ?? [];
  const shapes = bedShapes(chamber, inWaterOrder(chamber, listed));
  const inOrder = inWaterOrder(chamber, listed).map((bed, at) => ({ bed, ...shapes[at]! }));
  const asListed = chamber.listedInWaterOrder ? inOrder : inOrder.toReversed();
  return (layingOf(chamber) === 'slot' ? asListed : asListed.toReversed()).map(({ bed, volumeM3 }) => {
    const medium = model.media[bed.medium]!;
    const isPoured = medium.form !== 'foam' && medium.form !== 'fibre';
    const layer = writer.say(isPoured ? 'layer.poured' : 'layer.cut', {
      tag: placed.find((one) => one.bed === bed)?.tag ?? '',
      depth: cutLength(writer, bed.depthM),
      medium: { name: medium.name },
      ...(isPoured
        ? { volume: volume(volumeM3), mass: mass(volumeM3 * medium.bulkDensityKgPerM3.value) }
        : {}),
    });
    const { cutGapM, bag } = bed.laying ?? {};
    if (bag !== undefined) return writer.say('bed.bag', { bed: layer });
    return cutGapM === undefined
      ? layer
      : writer.say('bed.cut', { bed: layer, gap: cutLength(writer, cutGapM) });
  });
};

const chamberStep = (writer: Writer, chamber: Chamber): string => {
  const layers = layersOf(writer, chamber);
  const label = { name: chamber.label };
  if (layers.length === 0) return writer.say('step.pack.empty', { chamber: label });
  const { found, after } = writer.source;
  const stays = after === undefined && handlingKind(found) === 'built-in';
  return writer.say(`step.pack.${stays ? 'stays' : layingOf(chamber)}`, {
    chamber: label,
    layers: layers.join('; '),
  });
};

const rowSays = (writer: Writer): string => writer.say('drawing.build-row');

const drawingBlock = (writer: Writer, name: 'build-section' | 'build-row'): Block => {
  const isRow = name === 'build-row';
  const caption = isRow ? rowSays(writer) : writer.say(`drawing.build-section.${tense(writer.source)}`);
  const steps = inHandOrder(packedOf(writer).layout).map((chamber) => chamberStep(writer, chamber));
  return {
    kind: 'drawing',
    id: name,
    drawing: name,
    caption,
    alternative: isRow ? steps.join(' ') : `${caption} ${steps.join(' ')}`,
    width: isRow ? 'full' : 'half',
  };
};

/** Whether media are bought, or some of what was good comes out: bacteria go with it. On what is used up none ripen. */
const replacesMedia = ({ source }: Writer): boolean => {
  const { after } = source;
  if (after === undefined) return false;
  const wanted = volumesOf(after.assessment.layout.chambers, after.model.packing);
  const comesOut = [...goodMedia(source)].some(
    ([medium, volumeM3]) => (wanted.get(medium) ?? 0) < volumeM3 - NEGLIGIBLE_M3,
  );
  return comesOut || changeCost(source).purchases.some(({ medium }) => !isUsedUp(after.model.media[medium]!));
};

/** Chambers one after another, with the packed filter and a small picture of each step. */
export const packStage = (writer: Writer): Stage => ({
  id: 'build-pack',
  before: [...cautionBlocks(writer, 'build', ['all-at-once']), drawingBlock(writer, 'build-section')],
  steps: [
    ...inHandOrder(packedOf(writer).layout).map((chamber) => chamberStep(writer, chamber)),
    ...(replacesMedia(writer) ? [writer.say('step.keep-third')] : []),
  ],
  after: [drawingBlock(writer, 'build-row')],
});

/** The filter as it is packed, and being packed. `before`: steps that come before this stage. */
export const packDrawings = (
  writer: Writer,
  theme: Theme,
  before: number,
): Readonly<Record<string, string>> => {
  const packed = packedOf(writer);
  const { assessment } = lastState(writer.source);
  const first = before + 1;
  const stages = inHandOrder(packed.layout).map((chamber, at) => ({
    chamber: chamber.id,
    says: writer.say('drawing.step', { number: first + at }),
  }));
  const steps = inHandOrder(packed.layout).map((chamber) => chamberStep(writer, chamber));
  return {
    'build-section': sectionDrawing({
      ...packed,
      assessment,
      units: 'both',
      language: writer.language,
      theme,
    }),
    'build-row': packingRowDrawing({
      ...packed,
      stages,
      title: rowSays(writer),
      says: steps.join(' '),
      theme,
    }),
  };
};
