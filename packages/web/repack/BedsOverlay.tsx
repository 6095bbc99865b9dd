import type { BedPlace, ChamberPlace, SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import { type PointerEvent, type RefObject, useLayoutEffect, useState } from 'react';
import type { BedPosition } from './bedEdits.ts';
import { useBedKeys } from './bedKeys.ts';
import { edgeReach } from './edgeReach.ts';
import { isUpright } from './hand.ts';
import { millimetres, positionOf } from './moving.ts';
import { type Grip, type GripProps, isSamePosition, useGrip } from './useGrip.ts';
import type { Repacking } from './useRepacking.ts';

interface OverlayProps extends GripProps {
  /** `0 0 100 140`, as the drawing under it has it. */
  readonly viewBox: string;
}

/** A bed among those of the drawing. */
const nameOf = ({ chamber, place }: BedPlace): string => `${chamber.id}:${place}`;

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

/** An edge is marked so wide, mm of the sheet. */
const markedMm = 3.2;
/** A fingertip meets what is so wide, CSS pixels (WCAG 2.2, 2.5.5). */
const fingerPx = 44;

const finger = window.matchMedia('(pointer: coarse)');

/** How wide an edge is to the hand, mm of the sheet: a finger needs more than the point of a mouse. */
function useReachMm(svg: RefObject<SVGSVGElement | null>, viewBox: string): number {
  const [reachMm, setReach] = useState(markedMm);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another drawing has another scale
  useLayoutEffect(() => {
    const sheet = svg.current;
    if (sheet === null) return;
    const measure = (): void => {
      const pixelsPerMm = sheet.getScreenCTM()?.a ?? 0;
      setReach(finger.matches && pixelsPerMm > 0 ? Math.max(markedMm, fingerPx / pixelsPerMm) : markedMm);
    };
    const sizes = new ResizeObserver(measure);
    sizes.observe(sheet);
    finger.addEventListener('change', measure);
    return () => {
      sizes.disconnect();
      finger.removeEventListener('change', measure);
    };
  }, [svg, viewBox]);
  return reachMm;
}

/** The free edges of the beds, by which they are pulled deeper or thinner, over all beds: none is under its neighbour. */
function Edges({
  beds,
  reachMm,
  grab,
}: {
  readonly beds: readonly BedPlace[];
  readonly reachMm: number;
  readonly grab: (event: PointerEvent, bed: BedPlace, does: Grip['does']) => void;
}) {
  return beds.map((bed) => (
    <rect
      key={nameOf(bed)}
      {...edgeReach(bed, beds, reachMm)}
      className={`edge ${isUpright(bed.chamber) ? 'upright' : 'level'}`}
      data-edge={nameOf(bed)}
      onPointerDown={(event) => grab(event, bed, 'resize')}
    />
  ));
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
  const isOdd = repacking.isOdd(hand, chamber);
  const put = (): void => repacking.put(hand, { chamber: chamber.id, place: isUpright(chamber) ? 0 : count });
  return (
    // A shape of a drawing can be no button element.
    // biome-ignore lint/a11y/useSemanticElements: see above
    <rect
      {...box}
      className={isOdd ? 'chamber odd' : 'chamber'}
      role="button"
      tabIndex={0}
      aria-label={`Put what is in hand into ${chamber.label}${isOdd ? ', made for other media' : ''}`}
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
  const reachMm = useReachMm(svg, viewBox);
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
        // biome-ignore lint/a11y/useSemanticElements: a shape of a drawing can be no button element
        <rect
          key={nameOf(bed)}
          {...bed.box}
          className={`bed ${isSamePosition(grip && positionOf(grip.bed), positionOf(bed)) ? 'held' : ''}`}
          role="button"
          tabIndex={0}
          aria-label={`${bed.tag}, ${bed.name}, ${Math.round(bed.depthM * 1000)} mm in ${bed.chamber.label}`}
          aria-describedby="bed-keys"
          onPointerDown={(event) => grab(event, bed, 'move')}
          onKeyDown={pressed}
          data-bed={nameOf(bed)}
        />
      ))}
      <Edges beds={places.beds} reachMm={reachMm} grab={grab} />
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
