import type { BedPlace, SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import { type KeyboardEvent, type RefObject, useLayoutEffect, useRef } from 'react';
import type { BedPosition } from './bedEdits.ts';
import { positionOf } from './moving.ts';
import type { Repacking } from './useRepacking.ts';

interface Hands {
  readonly places: SectionPlaces;
  readonly repacking: Repacking;
}

/** Where the focus belongs after a key: on a bed, or on the drawing where no bed is left; undefined where nothing was done. */
type Focus = BedPosition | 'drawing' | undefined;

type Does = (hands: Hands, bed: BedPlace, byM: number) => Focus;

/** The bed that has the focus once one is out: the next or the one before it in its chamber, else any other. */
const leftAfter = (bed: BedPlace, { beds }: SectionPlaces): Focus => {
  const inChamber = beds.filter(({ chamber }) => chamber.id === bed.chamber.id).length;
  if (inChamber > 1) return { chamber: bed.chamber.id, place: Math.min(bed.place, inChamber - 2) };
  const other = beds.find(({ chamber }) => chamber.id !== bed.chamber.id);
  return other === undefined ? 'drawing' : positionOf(other);
};

const step =
  (by: -1 | 1): Does =>
  ({ repacking }, bed) =>
    repacking.step(bed, by);

const deeper =
  (sign: -1 | 1): Does =>
  ({ repacking }, bed, byM) => {
    repacking.deepen(bed, sign * byM);
    return positionOf(bed);
  };

const split: Does = ({ repacking }, bed) => {
  repacking.split(bed);
  return positionOf(bed);
};

const remove: Does = ({ places, repacking }, bed) => {
  repacking.remove(bed);
  return leftAfter(bed, places);
};

const keys: ReadonlyMap<string, Does> = new Map([
  ['arrowup', step(-1)],
  ['arrowleft', step(-1)],
  ['arrowdown', step(1)],
  ['arrowright', step(1)],
  ['+', deeper(1)],
  ['=', deeper(1)],
  ['-', deeper(-1)],
  ['_', deeper(-1)],
  ['s', split],
  ['delete', remove],
  ['backspace', remove],
]);

interface Pressed {
  readonly does: Does;
  readonly byM: number;
}

const bedElement = (svg: SVGSVGElement, { chamber, place }: BedPosition): SVGElement | null =>
  svg.querySelector(`[data-bed="${chamber}:${place}"]`);

const focusOn = (svg: SVGSVGElement, focus: Focus): void => {
  if (focus === undefined) return;
  (focus === 'drawing' ? svg : bedElement(svg, focus))?.focus();
};

/**
 * Keys on a bed that has the focus. What is pressed while the drawing does not show the last change yet waits for it,
 * so that no press is lost or meets another bed; the focus goes with the bed.
 */
export function useBedKeys(
  svg: RefObject<SVGSVGElement | null>,
  hands: Hands & { readonly isRead: boolean },
) {
  const { places, isRead } = hands;
  const waiting = useRef<readonly Pressed[]>([]);
  const wanted = useRef<Focus>(undefined);
  const bedAt = (element: Element | null): BedPlace | undefined =>
    places.beds.find(({ chamber, place }) => `${chamber.id}:${place}` === element?.getAttribute('data-bed'));
  const workOff = (): void => {
    const [next, ...rest] = waiting.current;
    const bed = bedAt(document.activeElement);
    waiting.current = bed === undefined ? [] : rest;
    if (next === undefined || bed === undefined) return;
    wanted.current = next.does(hands, bed, next.byM);
    if (wanted.current === undefined) workOff();
  };
  // With the drawing, not a moment after it: a key pressed in between would meet the bed that had the focus before.
  // biome-ignore lint/correctness/useExhaustiveDependencies: once for every drawing that shows the newest change
  useLayoutEffect(() => {
    if (!isRead || svg.current === null) return;
    focusOn(svg.current, wanted.current);
    wanted.current = undefined;
    workOff();
  }, [places, isRead]);
  return (event: KeyboardEvent): void => {
    const does = keys.get(event.key.toLowerCase());
    if (does === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    waiting.current = [...waiting.current, { does, byM: event.shiftKey ? 0.01 : 0.001 }];
    if (isRead && waiting.current.length === 1) workOff();
  };
}
