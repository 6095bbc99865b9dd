import type { BedPlace, ChamberPlace, SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import { type PointerEvent, useEffect, useRef, useState } from 'react';
import type { BedPosition } from './bedEdits.ts';
import { useBedKeys } from './bedKeys.ts';
import { isUpright, positionAt, pulledDepthM, type SheetPoint } from './hand.ts';
import { useHolding } from './holding.ts';
import { millimetres, positionOf } from './moving.ts';
import type { Repacking } from './useRepacking.ts';

interface OverlayProps {
  readonly places: SectionPlaces;
  /** `0 0 100 140`, as the drawing under it has it. */
  readonly viewBox: string;
  readonly repacking: Repacking;
  /** False while a change was made that the drawing does not show yet. */
  readonly isRead: boolean;
  /** Told when a hand takes hold of a bed, and when it lets go. */
  readonly onGrip: (isGripped: boolean) => void;
}

/** What a pointer does that went down on a bed. */
interface Grip {
  readonly bed: BedPlace;
  readonly from: SheetPoint;
  readonly does: 'move' | 'resize';
  readonly key: string;
  readonly to?: BedPosition | undefined;
  /** How deep the bed is pulled. */
  readonly depthM?: number;
}

/** A pointer that moved less than this has clicked, mm of the sheet. */
const clickMm = 1.5;

let grips = 0;

/** Names a pull, so that its frames are one step: also where another window of this browser pulls a bed. */
const newGrip = (): string => {
  grips += 1;
  return `grip ${grips} of ${performance.timeOrigin}`;
};

/** The point of the sheet under a pointer. */
const sheetPoint = (svg: SVGSVGElement, { clientX, clientY }: PointerEvent): SheetPoint => {
  const matrix = svg.getScreenCTM()?.inverse();
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix);
  return { x, y };
};

/** How far the free edge of a bed was pulled, m: beds lie on the floor, or against the pump's side. */
const pulledByM = ({ bed, from }: Grip, to: SheetPoint, scale: number): number =>
  (isUpright(bed.chamber) ? from.y - to.y : to.x - from.x) / scale;

const isSamePosition = (one: BedPosition | undefined, other: BedPosition | undefined): boolean =>
  one?.chamber === other?.chamber && one?.place === other?.place;

/**
 * Makes the bed as deep as it is pulled, as often as drawing and figures keep up: the hand sees a line at once.
 * @returns makes it so deep now
 */
function usePulling(
  grip: Grip | undefined,
  { repacking, isRead }: OverlayProps,
): (held: Grip | undefined) => void {
  const done = useRef<Pick<Grip, 'key' | 'depthM'>>(undefined);
  const pull = (held: Grip | undefined): void => {
    if (held?.depthM === undefined) return;
    const { key, depthM, bed } = held;
    if (done.current?.key === key && done.current.depthM === depthM) return;
    done.current = { key, depthM };
    repacking.resize(bed, depthM, key);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: whenever the drawing has caught up, or the hand has moved
  useEffect(() => {
    if (isRead) pull(grip);
  }, [isRead, grip?.key, grip?.depthM]);
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

function useGrip(props: OverlayProps) {
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
    const taken = { bed, does, from: sheetPoint(svg.current, event), key: newGrip() };
    holding.begin(event, () => setGrip(taken));
  };
  const heldBy = (event: PointerEvent): Grip | undefined =>
    svg.current === null || grip === undefined ? grip : heldAt(grip, sheetPoint(svg.current, event), places);
  const drag = (event: PointerEvent): void => {
    holding.moved(event);
    setGrip(heldBy(event));
  };
  const pull = usePulling(grip, props);
  const letGo = (event: PointerEvent): void => {
    holding.end();
    // Where the pointer is now: its last movement may not have been shown yet.
    const held = heldBy(event);
    pull(held);
    if (held?.does === 'move' && held.to !== undefined) repacking.move(held.bed, held.to);
    setGrip(undefined);
  };
  /** The browser took the finger for something else: the bed stays where it was. */
  const drop = (): void => {
    holding.end();
    setGrip(undefined);
  };
  return { svg, grip, grab, drag, letGo, drop };
}

/** The line at which a bed that is let go here comes to lie. */
function Landing({ to, places }: { readonly to: BedPosition; readonly places: SectionPlaces }) {
  const found = places.chambers.find(({ chamber }) => chamber.id === to.chamber);
  if (found === undefined) return null;
  const { chamber, box } = found;
  const beds = places.beds
    .filter((bed) => bed.chamber.id === chamber.id)
    .toSorted((one, other) => one.place - other.place);
  const next = beds[to.place]?.box;
  const last = beds.at(-1)?.box;
  if (isUpright(chamber)) {
    const y = next?.y ?? (last === undefined ? box.y + box.height : last.y + last.height);
    return <line className="landing" x1={box.x} x2={box.x + box.width} y1={y} y2={y} />;
  }
  const x = next?.x ?? (last === undefined ? box.x : last.x + last.width);
  return <line className="landing" x1={x} x2={x} y1={box.y} y2={box.y + box.height} />;
}

/** Where the free edge of a bed is pulled to. */
function Pulled({ grip: { bed, depthM }, scale }: { readonly grip: Grip; readonly scale: number }) {
  if (depthM === undefined) return null;
  const { box, chamber } = bed;
  const upright = isUpright(chamber);
  const x = upright ? box.x : box.x + depthM * scale;
  const y = upright ? box.y + box.height - depthM * scale : box.y;
  return (
    <>
      <line
        className="landing"
        x1={x}
        x2={upright ? box.x + box.width : x}
        y1={y}
        y2={upright ? y : box.y + box.height}
      />
      <text className="pulled" x={x + 1} y={y - 1.4}>
        {millimetres(depthM)}
      </text>
    </>
  );
}

/** The free edge of a bed, by which it is pulled deeper or thinner. */
function Edge({ bed, onGrab }: { readonly bed: BedPlace; readonly onGrab: (event: PointerEvent) => void }) {
  const { box, chamber } = bed;
  const wide = 3.2;
  const at = isUpright(chamber)
    ? { x: box.x, y: box.y - wide / 2, width: box.width, height: wide }
    : { x: box.x + box.width - wide / 2, y: box.y, width: wide, height: box.height };
  return (
    <rect {...at} className={`edge ${isUpright(chamber) ? 'upright' : 'level'}`} onPointerDown={onGrab} />
  );
}

/** A chamber, into which what is in hand can be put. */
function ChamberTarget({
  place,
  repacking,
  count,
}: {
  place: ChamberPlace;
  repacking: Repacking;
  count: number;
}) {
  const { chamber, box } = place;
  const { hand } = repacking;
  if (hand === undefined) return null;
  const put = (): void => repacking.put(hand, { chamber: chamber.id, place: isUpright(chamber) ? 0 : count });
  return (
    // A shape of a drawing can be no button element.
    // biome-ignore lint/a11y/useSemanticElements: see above
    <rect
      {...box}
      className="chamber"
      role="button"
      tabIndex={0}
      aria-label={`Put what is in hand into ${chamber.label}`}
      onClick={put}
      onKeyDown={(event) => {
        if (event.key === 'Enter' || event.key === ' ') {
          event.preventDefault();
          put();
        }
      }}
    />
  );
}

/** What can be taken hold of, over the section drawing: beds, their edges, and chambers for what is in hand. */
export function BedsOverlay(props: OverlayProps) {
  const { places, viewBox, repacking } = props;
  const { svg, grip, grab, drag, letGo, drop } = useGrip(props);
  const pressed = useBedKeys(svg, props);
  return (
    // Groups of a drawing can be no fieldset.
    // biome-ignore lint/a11y/useSemanticElements: see above
    <svg
      ref={svg}
      className={`overlay ${grip === undefined ? '' : 'gripped'}`}
      viewBox={viewBox}
      role="group"
      aria-label="Beds in the drawing"
      tabIndex={-1}
      onPointerMove={drag}
      onPointerUp={letGo}
      onPointerCancel={drop}
    >
      <title>Beds in the drawing</title>
      {places.beds.map((bed) => (
        <g key={`${bed.chamber.id}:${bed.place}`}>
          {/* biome-ignore lint/a11y/useSemanticElements: a shape of a drawing can be no button element */}
          <rect
            {...bed.box}
            className={`bed ${isSamePosition(grip && positionOf(grip.bed), positionOf(bed)) ? 'held' : ''}`}
            role="button"
            tabIndex={0}
            aria-label={`${bed.tag}, ${bed.name}, ${Math.round(bed.depthM * 1000)} mm in ${bed.chamber.label}`}
            aria-describedby="bed-keys"
            onPointerDown={(event) => grab(event, bed, 'move')}
            onKeyDown={pressed}
            data-bed={`${bed.chamber.id}:${bed.place}`}
          />
          <Edge bed={bed} onGrab={(event) => grab(event, bed, 'resize')} />
        </g>
      ))}
      {places.chambers.map((place) => (
        <ChamberTarget
          key={place.chamber.id}
          place={place}
          repacking={repacking}
          count={places.beds.filter(({ chamber }) => chamber.id === place.chamber.id).length}
        />
      ))}
      {grip?.to === undefined ? null : <Landing to={grip.to} places={places} />}
      {grip === undefined ? null : <Pulled grip={grip} scale={places.scale} />}
    </svg>
  );
}
