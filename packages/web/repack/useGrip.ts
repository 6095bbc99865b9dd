import type { BedPlace, SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import { type PointerEvent, useEffect, useRef, useState } from 'react';
import type { BedPosition } from './bedEdits.ts';
import { isUpright, positionAt, pulledDepthM, type SheetPoint } from './hand.ts';
import type { HeldBed } from './heldBed.ts';
import { useHolding } from './holding.ts';
import type { Repacking } from './useRepacking.ts';

/** What a grip needs to know of the drawing. */
export interface GripProps {
  readonly places: SectionPlaces;
  readonly repacking: Repacking;
  /** False while a change was made that the drawing does not show yet. */
  readonly isRead: boolean;
  /** Told when a hand takes hold of a bed, and when it lets go. */
  readonly onGrip: (isGripped: boolean) => void;
}

/** What a pointer does that went down on a bed. */
export interface Grip {
  readonly bed: BedPlace;
  readonly held: HeldBed;
  readonly from: SheetPoint;
  readonly does: 'move' | 'resize';
  readonly to?: BedPosition | undefined;
  /** How deep the bed is pulled. */
  readonly depthM?: number;
}

/** A pointer that moved less than this has clicked, mm of the sheet. */
const clickMm = 1.5;

/** The point of the sheet under a pointer. */
const sheetPoint = (svg: SVGSVGElement, { clientX, clientY }: PointerEvent): SheetPoint => {
  const matrix = svg.getScreenCTM()?.inverse();
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix);
  return { x, y };
};

/** How far the free edge of a bed was pulled, m: beds lie on the floor, or against the pump's side. */
const pulledByM = ({ bed, from }: Grip, to: SheetPoint, scale: number): number =>
  (isUpright(bed.chamber) ? from.y - to.y : to.x - from.x) / scale;

export const isSamePosition = (one: BedPosition | undefined, other: BedPosition | undefined): boolean =>
  one?.chamber === other?.chamber && one?.place === other?.place;

/**
 * Makes the bed as deep as it is pulled, as often as drawing and figures keep up: the hand sees a line at once.
 * @returns makes it so deep now
 */
function usePulling(grip: Grip | undefined, { isRead }: GripProps): (held: Grip | undefined) => void {
  const done = useRef<Pick<Grip, 'held' | 'depthM'>>(undefined);
  const pull = (grip: Grip | undefined): void => {
    if (grip?.depthM === undefined) return;
    const { held, depthM } = grip;
    if (done.current?.held === held && done.current.depthM === depthM) return;
    done.current = { held, depthM };
    held.pull(depthM);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: whenever the drawing has caught up, or the hand has moved
  useEffect(() => {
    if (isRead) pull(grip);
  }, [isRead, grip?.held, grip?.depthM]);
  return pull;
}

/** The grip once its pointer is at a point of the sheet; the same one where nothing follows from that. */
const heldAt = (grip: Grip, at: SheetPoint, places: SectionPlaces): Grip => {
  if (Math.hypot(at.x - grip.from.x, at.y - grip.from.y) < clickMm) return grip;
  if (grip.does === 'resize') {
    const depthM = pulledDepthM(grip.bed, places.beds, pulledByM(grip, at, places.scale));
    return depthM === grip.depthM ? grip : { ...grip, depthM };
  }
  const to = positionAt(at, places);
  return isSamePosition(to, grip.to) ? grip : { ...grip, to };
};

/** Lets go of a bed that another window took out, and follows one that has another place by now. */
function useWhatIsHeld(
  grip: Grip | undefined,
  { places, repacking }: GripProps,
  become: (grip: Grip | undefined) => void,
): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for every drawing
  useEffect(() => {
    if (grip === undefined) return;
    const bed = grip.held.now();
    if (bed === undefined) {
      repacking.lose(grip.bed);
      become(undefined);
    } else if (bed.place !== grip.bed.place) become({ ...grip, bed });
  }, [places]);
}

/** What a pointer does with the beds of a drawing. */
export function useGrip(props: GripProps) {
  const { places, repacking, onGrip } = props;
  const svg = useRef<SVGSVGElement>(null);
  const holding = useHolding(svg);
  const [grip, setGrip] = useState<Grip>();
  const isGripped = grip !== undefined;
  useEffect(() => {
    onGrip(isGripped);
    return () => onGrip(false);
  }, [isGripped, onGrip]);
  const grab = (event: PointerEvent, bed: BedPlace, does: Grip['does']): void => {
    if (svg.current === null || event.button !== 0) return;
    event.stopPropagation();
    const from = sheetPoint(svg.current, event);
    holding.begin(event, () => setGrip({ bed, held: repacking.hold(bed), does, from }));
  };
  const heldBy = (event: PointerEvent): Grip | undefined =>
    svg.current === null || grip === undefined ? grip : heldAt(grip, sheetPoint(svg.current, event), places);
  const drag = (event: PointerEvent): void => {
    holding.moved(event);
    setGrip(heldBy(event));
  };
  const pull = usePulling(grip, props);
  useWhatIsHeld(grip, props, (next) => {
    if (next === undefined) holding.end();
    setGrip(next);
  });
  const letGo = (event: PointerEvent): void => {
    holding.end();
    // Where the pointer is now: its last movement may not have been shown yet.
    const held = heldBy(event);
    pull(held);
    const bed = held?.held.now();
    if (held !== undefined && bed === undefined) repacking.lose(held.bed);
    else if (bed !== undefined && held?.does === 'move' && held.to !== undefined)
      repacking.move(bed, held.to);
    setGrip(undefined);
  };
  /** The browser took the finger for something else: the bed is what and where it was. */
  const drop = (): void => {
    holding.end();
    grip?.held.putBack();
    setGrip(undefined);
  };
  return { svg, grip, grab, drag, letGo, drop };
}
