import type { Box, Chamber, Layout } from '@fettle/engine/families/layout.ts';
import { chambersInWaterOrder, inWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import { type Medium, type Stage, stages } from '@fettle/engine/model/medium.ts';
import type { Bed, Packing } from '@fettle/engine/model/model.ts';
import { said } from '@fettle/engine/wording/said.ts';
import { type Speech, spoken } from './speech.ts';

/** The letter that stands for a stage on drawings. */
const stageLetters: Readonly<Record<Stage, string>> = {
  mechanical: 'M',
  biological: 'B',
  chemical: 'C',
};

/** A packing with the media that it names. */
export interface Packed {
  readonly layout: Layout;
  readonly packing: Packing;
  readonly media: Readonly<Record<string, Medium>>;
}

/** A bed where it lies. */
export interface PlacedBed {
  readonly bed: Bed;
  readonly chamber: Chamber;
  /** Undefined where the media do not hold the bed's medium. */
  readonly medium: Medium | undefined;
  /** Stage letter and place in the water's order: `M1`, `B2`; `?` for a medium that is not known. */
  readonly tag: string;
  readonly name: string;
  /** Section of the bed, m. */
  readonly box: Box;
  /** Where the section cuts it a second time, about a tube. */
  readonly twin?: Box;
}

/** All beds in the order in which the water meets them; a bed of an unknown chamber is left out. */
export function placedBeds(packed: Packed): readonly PlacedBed[] {
  const placed: PlacedBed[] = [];
  for (const chamber of chambersInWaterOrder(packed.layout)) {
    const listed = packed.packing[chamber.id] ?? [];
    const boxes = new Map(boxesOf(chamber, listed));
    for (const bed of inWaterOrder(chamber, listed)) {
      const medium = Object.hasOwn(packed.media, bed.medium) ? packed.media[bed.medium] : undefined;
      const letter = medium ? stageLetters[medium.stage] : '?';
      const box = boxes.get(bed) ?? chamber.box;
      placed.push({
        bed,
        chamber,
        medium,
        tag: `${letter}${placed.length + 1}`,
        name: medium?.name ?? bed.medium,
        box,
        ...(chamber.twin === undefined ? {} : { twin: mirrored(box, chamber.box, chamber.twin) }),
      });
    }
  }
  return placed;
}

/** A part of one box where the other, its mirror image, has it. */
function mirrored(part: Box, box: Box, twin: Box): Box {
  return { ...part, x: box.x + twin.x + twin.width - part.x - part.width };
}

/**
 * Beds lie on the floor of an upright chamber, against the pump's side of a slot, and on the tube that a chamber
 * lies about.
 */
function boxesOf(chamber: Chamber, listed: readonly Bed[]): readonly (readonly [Bed, Box])[] {
  const sum = listed.reduce((total, bed) => total + bed.depthM, 0);
  // More than fits is squeezed: the drawing still shows each bed inside its chamber.
  const squeeze = sum > chamber.depthM ? chamber.depthM / sum : 1;
  const { x, y, width, height } = chamber.box;
  const upright = chamber.flow === 'up' || chamber.flow === 'down';
  let behind = chamber.ring ? Math.max(0, chamber.depthM - sum) : 0;
  return (upright ? listed.toReversed() : listed).map((bed) => {
    const depth = bed.depthM * squeeze;
    const box = upright
      ? { x, y: y + behind, width, height: depth }
      : { x: x + behind, y, width: depth, height };
    behind += depth;
    return [bed, box] as const;
  });
}

/** What the letters of these beds' tags mean, in words; empty without beds. */
export function stagesNote(beds: readonly PlacedBed[], speech: Pick<Speech, 'language'> = {}): string {
  const held = new Set(beds.flatMap((placed) => (placed.medium ? [placed.medium.stage] : [])));
  const all = stages
    .filter((stage) => held.has(stage))
    .map((stage) => said('section.stage', { letter: stageLetters[stage], stage: { name: stage } }));
  return all.length === 0 ? '' : spoken(speech, 'section.stages', { stages: { all, by: ', ' } });
}
