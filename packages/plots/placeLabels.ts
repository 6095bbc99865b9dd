import { textWidth } from '@fettle/drawing/textWidth.ts';
import { sizes } from '@fettle/drawing/tokens.ts';

/** A place on the sheet, mm. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A rectangle on the sheet, mm, y downwards. */
export interface Room {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** What is to be written beside a mark. */
export interface LabelToPlace {
  readonly says: string;
  readonly at: Spot;
  /** The only side of its mark where it may stand: the name of a line that has another one beside it. */
  readonly side?: 'above' | 'below';
}

export interface PlacedLabel extends LabelToPlace {
  readonly box: Room;
  /** End of the line that leads from the label to its mark; absent where the label stands right beside it. */
  readonly leader?: Spot;
}

/** Half of what a mark takes with a little air, mm. */
const MARK = 1.5;
/** Longest way between a mark and a label that needs no line to it, mm. */
const BESIDE = 2.6;
const DISTANCES = [0.8, 2.4, 4.5, 7, 10, 14, 19, 25, 32, 40];
const DIRECTIONS = Array.from({ length: 16 }, (_, place) => (place * Math.PI) / 8);

const overlap = (one: Room, other: Room): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;

const grown = (room: Room, by: number): Room => ({
  left: room.left - by,
  right: room.right + by,
  top: room.top - by,
  bottom: room.bottom + by,
});

const around = ({ x, y }: Spot): Room => ({
  left: x - MARK,
  right: x + MARK,
  top: y - MARK,
  bottom: y + MARK,
});

const holds = (room: Room, { x, y }: Spot): boolean =>
  x > room.left && x < room.right && y > room.top && y < room.bottom;

const inside = (box: Room, within: Room): boolean =>
  box.left >= within.left &&
  box.right <= within.right &&
  box.top >= within.top &&
  box.bottom <= within.bottom;

/** The label's box at a direction and distance from its mark: its near edge or corner is that far away. */
const boxAt = ({ says, at }: LabelToPlace, direction: number, distance: number): Room => {
  const halfWidth = textWidth(says, { size: sizes.text }) / 2;
  const halfHeight = sizes.text / 2 + 0.4;
  const [along, down] = [Math.cos(direction), Math.sin(direction)];
  const x = at.x + along * (MARK + distance + halfWidth);
  const y = at.y + down * (MARK + distance + halfHeight);
  return { left: x - halfWidth, right: x + halfWidth, top: y - halfHeight, bottom: y + halfHeight };
};

/** The place of a box nearest to a spot. */
const nearest = ({ left, right, top, bottom }: Room, { x, y }: Spot): Spot => ({
  x: Math.min(right, Math.max(left, x)),
  y: Math.min(bottom, Math.max(top, y)),
});

/** Points along the lines of a plot, near enough to each other that no label slips between two. */
export const pointsAlong = (line: readonly Spot[]): readonly Spot[] =>
  line.slice(1).flatMap((to, place) => {
    const from = line[place]!;
    const parts = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y)));
    return Array.from({ length: parts }, (_, part) => ({
      x: from.x + ((to.x - from.x) * (part + 1)) / parts,
      y: from.y + ((to.y - from.y) * (part + 1)) / parts,
    }));
  });

interface Around {
  readonly within: Room;
  /** Points of lines that are better not written over. */
  readonly lines: readonly Spot[];
  /** Marks that must stay to be seen. */
  readonly marks: readonly Spot[];
}

/** What is there before a label: its surroundings and the labels placed already, with their lines. */
interface Taken extends Around {
  readonly boxes: Room[];
  readonly leaders: Spot[];
}

/** Price of each millimetre of line that a label is written over, or that runs under one, in mm of distance. */
const OVER_LINE = 4;

/** What a place costs: its way from the mark, and each stretch of line written over, others' and its own. */
const costOf = (box: Room, at: Spot, { lines, leaders, boxes }: Taken): number => {
  const own = pointsAlong([at, nearest(box, at)]);
  const over = [...lines, ...leaders].filter((point) => holds(grown(box, 0.5), point));
  const under = own.filter((point) => boxes.some((room) => holds(room, point)));
  return own.length + OVER_LINE * (over.length + under.length);
};

const onWrongSide = ({ side, at }: LabelToPlace, { top, bottom }: Room): boolean =>
  side !== undefined && (side === 'above' ? bottom > at.y : top < at.y);

const bestBox = (label: LabelToPlace, taken: Taken): Room | undefined => {
  const barred = (box: Room): boolean =>
    !inside(box, taken.within) ||
    onWrongSide(label, box) ||
    taken.boxes.some((room) => overlap(grown(box, 0.3), room)) ||
    taken.marks.some((mark) => overlap(box, around(mark)));
  let best: { readonly box: Room; readonly cost: number } | undefined;
  for (const distance of DISTANCES) {
    for (const direction of DIRECTIONS) {
      const box = boxAt(label, direction, distance);
      if (barred(box)) continue;
      const cost = costOf(box, label.at, taken);
      if (best === undefined || cost < best.cost) best = { box, cost };
    }
  }
  return best?.box;
};

/**
 * Finds each label a place near its mark, within the room that there is, over no other label and no mark, and over
 * lines only where nothing else is free. A label for which there is no place is left out: the text alternative and
 * the table beside the plot have its figures.
 */
export function placeLabels(labels: readonly LabelToPlace[], surroundings: Around): readonly PlacedLabel[] {
  const taken: Taken = { ...surroundings, boxes: [], leaders: [] };
  return labels.flatMap((label) => {
    const box = bestBox(label, taken);
    if (box === undefined) return [];
    taken.boxes.push(box);
    const end = nearest(box, label.at);
    const isFar = Math.hypot(end.x - label.at.x, end.y - label.at.y) > BESIDE + MARK;
    if (!isFar) return [{ ...label, box }];
    taken.leaders.push(...pointsAlong([label.at, end]));
    return [{ ...label, box, leader: end }];
  });
}
