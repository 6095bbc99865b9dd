import type { SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import type { Box, Layout, Point } from '@fettle/engine/families/layout.ts';

/** What of a section drawing is pointed at: areas, or points with nothing of their own to outline. Sheet mm. */
export interface Spots {
  readonly boxes: readonly Box[];
  readonly points: readonly Point[];
}

/** A section as it was drawn. */
export interface DrawnSection {
  readonly places: SectionPlaces;
  readonly layout: Layout;
}

const none: Spots = { boxes: [], points: [] };

/** The way from metres of the section to the sheet, as one chamber shows it; the sheet's y runs downward. */
const ontoSheet = ({ places }: DrawnSection): ((point: Point) => Point) | undefined => {
  const [first] = places.chambers;
  if (first === undefined) return undefined;
  const { box, chamber } = first;
  const { scale } = places;
  return ({ x, y }) => ({
    x: box.x + scale * (x - chamber.box.x),
    y: box.y + scale * (chamber.box.y + chamber.box.height - y),
  });
};

const pumpSpot = (section: DrawnSection): Spots => {
  const at = ontoSheet(section);
  if (at === undefined) return none;
  const { x, y, width, height } = section.layout.drawing.pump;
  const corner = at({ x, y: y + height });
  const { scale } = section.places;
  return { boxes: [{ ...corner, width: scale * width, height: scale * height }], points: [] };
};

const endSpot = (section: DrawnSection, end: 'inlet' | 'outlet'): Spots => {
  const at = ontoSheet(section);
  return at === undefined ? none : { boxes: [], points: [at(section.layout.drawing[end])] };
};

/** Where a bed's id, `basket-1:2`, says that it lies: chamber, and place from 1. */
const bedSpot = ({ places }: DrawnSection, id: string): Spots | undefined => {
  const [, chamber, place] = /^(.+):(\d+)$/.exec(id) ?? [];
  const found = places.beds.find((bed) => bed.chamber.id === chamber && bed.place + 1 === Number(place));
  return found && { boxes: [found.box], points: [] };
};

const chamberSpot = ({ places }: DrawnSection, id: string): Spots | undefined => {
  const found = places.chambers.find(({ chamber }) => chamber.id === id.replace(/^gap:/, ''));
  return found && { boxes: [found.box], points: [] };
};

const waySpot = ({ places }: DrawnSection, id: string): Spots | undefined => {
  const found = places.ways.find((way) => way.id === id);
  return found && { boxes: [], points: [found.at] };
};

/**
 * Where on the drawing a finding's place is.
 *
 * @param place id of a chamber, bed, opening, leak or weir, or `pump`, `intake`, `outlet`, `packing`
 * @returns nothing to point at for what is not in the section, such as the tank
 */
export function spotsOf(section: DrawnSection, place: string): Spots {
  if (place === 'pump') return pumpSpot(section);
  if (place === 'intake') return endSpot(section, 'inlet');
  if (place === 'outlet') return endSpot(section, 'outlet');
  if (place === 'packing') return { boxes: section.places.chambers.map(({ box }) => box), points: [] };
  return bedSpot(section, place) ?? chamberSpot(section, place) ?? waySpot(section, place) ?? none;
}

export const isEmpty = ({ boxes, points }: Spots): boolean => boxes.length + points.length === 0;
