import type { Box, Chamber, Point } from '@fettle/engine/families/layout.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { type DimensionPlace, dimensionPlaces } from './dimensionLines.ts';
import { type Packed, placedBeds } from './placedBeds.ts';
import { sectionSheet, type TitledSection } from './sectionDrawing.ts';
import { labelledSides } from './sheet.ts';

/** A chamber on the sheet. */
export interface ChamberPlace {
  readonly chamber: Chamber;
  /** Millimetres of the sheet from its upper left corner, y downward. */
  readonly box: Box;
}

/** A bed on the sheet. */
export interface BedPlace {
  readonly chamber: Chamber;
  /** Place among the beds of its chamber as the packing lists them, from 0. */
  readonly place: number;
  /** `M1`, `B2`, as the drawing writes it. */
  readonly tag: string;
  readonly name: string;
  readonly medium: string;
  readonly depthM: number;
  readonly box: Box;
}

/** Where on a section drawing things are, for those who point at them. */
export interface SectionPlaces {
  /** Millimetres of sheet per metre. */
  readonly scale: number;
  /** Left before right, from the top down. */
  readonly chambers: readonly ChamberPlace[];
  /** In the order in which the water meets them. */
  readonly beds: readonly BedPlace[];
  /** Openings, leaks and weirs, each at its point of the sheet. */
  readonly ways: readonly { readonly id: string; readonly label: string; readonly at: Point }[];
  /** Dimension lines with their inscriptions. */
  readonly dimensions: readonly DimensionPlace[];
}

/** Edges nearer to each other than this stand in one column, mm. */
const oneColumnMm = 0.5;

/** Left before right, the top before what lies under it. */
const asHandsMeet = ({ box: one }: ChamberPlace, { box: other }: ChamberPlace): number =>
  Math.abs(one.x - other.x) > oneColumnMm ? one.x - other.x : one.y - other.y;

/** Where chambers, beds and ways lie on the sheet that `sectionDrawing` draws of the same section. */
export function sectionPlaces(section: Packed & TitledSection & { readonly units: System }): SectionPlaces {
  const { layout, packing, units } = section;
  const sheet = sectionSheet(section);
  return {
    scale: sheet.scale,
    chambers: layout.chambers
      .map((chamber) => ({ chamber, box: sheet.box(chamber.box) }))
      .toSorted(asHandsMeet),
    beds: placedBeds(section).map(({ bed, chamber, tag, name, box }) => ({
      chamber,
      place: (packing[chamber.id] ?? []).indexOf(bed),
      tag,
      name,
      medium: bed.medium,
      depthM: bed.depthM,
      box: sheet.box(box),
    })),
    ways: [...layout.openings, ...layout.leaks, ...layout.weirs].map(({ id, label, at }) => ({
      id,
      label,
      at: sheet.at(at),
    })),
    dimensions: dimensionPlaces(sheet, { units, labelled: labelledSides(layout) }),
  };
}
