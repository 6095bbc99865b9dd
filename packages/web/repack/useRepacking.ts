import type { BedPlace, SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import type { Chamber } from '@fettle/engine/families/layout.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import { isMadeFor } from '@fettle/engine/packing/holding.ts';
import type { FieldPath } from '@fettle/job/fieldPath.ts';
import { useMemo, useState } from 'react';
import { valueAt } from '../forms/places.ts';
import type { Step } from '../session/history.ts';
import type { JobSession } from '../session/jobSession.ts';
import {
  type BedPosition,
  type PackingField,
  repacking,
  type WrittenPacking,
  withBedDepth,
  withBedPut,
  withBedSplit,
  withoutBed,
  writtenDepthM,
} from './bedEdits.ts';
import { depthToPut, neighbourOf, playM, pulledDepthM } from './hand.ts';
import { type HeldBed, heldBed } from './heldBed.ts';
import { millimetres, movedBed, positionOf } from './moving.ts';

/** What hands can do to a packing, each told in words for those who do not see the drawing. */
export interface Repacking {
  /** Medium in hand, by its short name; undefined while the hand is empty. */
  readonly hand: string | undefined;
  take(medium: string | undefined): void;
  /** Whether a chamber is made for other media: hands may lay it there all the same. */
  isOdd(medium: string, chamber: Chamber): boolean;
  /** What was done last, or why it was not. */
  readonly told: string;
  put(medium: string, to: BedPosition): void;
  /** Where it lies from then on; undefined where it has no room there and stayed. */
  move(bed: BedPlace, to: BedPosition): BedPosition | undefined;
  step(bed: BedPlace, step: -1 | 1): BedPosition | undefined;
  resize(bed: BedPlace, depthM: number, key?: string): void;
  /** Takes hold of a bed, to pull or move it. */
  hold(bed: BedPlace): HeldBed;
  /** Tells that a bed that was held is not there any more. */
  lose(bed: BedPlace): void;
  /** Makes a bed so deep, or as deep as there is room for, and says which. */
  setDepth(bed: BedPlace, depthM: number): void;
  /** Makes a bed deeper, or thinner, as often as it is asked, also before the drawing follows. */
  deepen(bed: BedPlace, byM: number): void;
  split(bed: BedPlace): void;
  remove(bed: BedPlace): void;
}

/** Where each packing stands in a job, in the order of the work. */
const packingPaths: readonly { readonly field: PackingField; readonly path: FieldPath }[] = [
  { field: 'found', path: ['packing'] },
  { field: 'planned', path: ['planned', 'packing'] },
  { field: 'asLeft', path: ['asLeft', 'packing'] },
];

/** The packing that a field of the job holds; before it is begun, the one that it begins from. */
export const packingIn = (document: unknown, field: PackingField): WrittenPacking => {
  const found = packingPaths
    .slice(0, packingPaths.findIndex((each) => each.field === field) + 1)
    .toReversed()
    .map(({ path }) => valueAt(document, path))
    .find((value) => value !== undefined);
  // The document's schema says so; what does not read is told by the engine, and no figures follow from it.
  return Object(found ?? {}) as WrittenPacking;
};

/** Where a history stands: the step that was done last, and the one that was undone last. */
interface PlaceInHistory {
  readonly done: Step | undefined;
  readonly undone: Step | undefined;
}

const placeInHistory = (session: JobSession): PlaceInHistory => {
  const { past, future } = session.state();
  return { done: past.at(-1), undone: future[0] };
};

/** What was told, and where the history stood then. */
interface Told {
  readonly says: string;
  readonly at: PlaceInHistory;
}

/** What is told as long as nothing else was done; or what was undone since the room was entered. */
const toldAt = ({ says, at }: Told, entered: PlaceInHistory, now: PlaceInHistory): string => {
  if (at.done === now.done && at.undone === now.undone) return says;
  const isNew = now.undone !== undefined && now.undone !== entered.undone;
  return isNew ? `undone: ${now.undone.says}` : '';
};

/** What hands work on. */
interface Under {
  readonly session: JobSession;
  readonly field: PackingField;
  readonly places: SectionPlaces;
  /** By short name. */
  readonly media: Readonly<Record<string, Medium>>;
}

/** The packing as it stands, its change, and what is told of it. */
const changing = ({ session, field }: Under, tell: (told: Told) => void) => {
  const say = (says: string): void => tell({ says, at: placeInHistory(session) });
  return {
    packing: (): WrittenPacking => packingIn(session.state().document, field),
    say,
    change: (next: WrittenPacking, says: string, key?: string): void => {
      session.edit(repacking(field, next, { says, ...(key === undefined ? {} : { key }) }));
      say(says);
    },
  };
};

/** Whether a chamber is made for other media than this one. */
const isOddIn =
  ({ media }: Under): Repacking['isOdd'] =>
  (medium, chamber) =>
    Object.hasOwn(media, medium) && !isMadeFor(chamber, { medium }, media);

/** What is added to what is told where a chamber is made for other media. */
const oddly = (isOdd: boolean): string => (isOdd ? ', which is made for other media' : '');

/** Putting a medium into a chamber. */
const putting =
  (on: Under, { packing, say, change }: ReturnType<typeof changing>): Repacking['put'] =>
  (medium, to) => {
    const { places, media } = on;
    const chamber = places.chambers.find((each) => each.chamber.id === to.chamber)?.chamber;
    if (chamber === undefined) return;
    const depthM = depthToPut(chamber, places.beds);
    if (depthM === undefined) say(`${chamber.label} is full: make a bed thinner, or take one out first`);
    else {
      const name = media[medium]?.name ?? medium;
      const says = `put ${name} into ${chamber.label}${oddly(isOddIn(on)(medium, chamber))}`;
      change(withBedPut(packing(), to, { medium, depthM }), says);
    }
  };

/** Taking hold of beds. */
const holds = (
  { session }: Under,
  { packing, say, change }: ReturnType<typeof changing>,
  resize: Repacking['resize'],
): Pick<Repacking, 'hold' | 'lose'> => ({
  hold: (bed) =>
    heldBed(bed, {
      packing,
      change,
      resize,
      before: session.state(),
      takeBack: (key, before) => session.takeBack(key, before),
    }),
  lose: (bed) => say(`${bed.name} was taken out of ${bed.chamber.label} meanwhile`),
});

/** The changes that hands make, on the drawing as it stands. */
const handsOn = (on: Under, tell: (told: Told) => void): Omit<Repacking, 'hand' | 'take' | 'told'> => {
  const { places } = on;
  const bench = changing(on, tell);
  const { packing, say, change } = bench;
  const move = (bed: BedPlace, to: BedPosition): BedPosition | undefined => {
    const moved = movedBed(packing(), { bed, to }, places);
    if (moved.packing === undefined) say(moved.says);
    else {
      const to = places.chambers.find(({ chamber }) => chamber.id === moved.at?.chamber)?.chamber;
      const isOdd = to !== undefined && to.id !== bed.chamber.id && isOddIn(on)(bed.medium, to);
      change(moved.packing, `${moved.says}${oddly(isOdd)}`);
    }
    return moved.at;
  };
  const resize = (bed: BedPlace, depthM: number, key?: string): void =>
    change(
      withBedDepth(packing(), positionOf(bed), depthM),
      `make ${bed.name} ${millimetres(depthM)} deep`,
      key,
    );
  return {
    isOdd: isOddIn(on),
    put: putting(on, bench),
    move,
    step: (bed, step) => {
      const to = neighbourOf(bed, places, step);
      return to === undefined ? undefined : move(bed, to);
    },
    resize,
    ...holds(on, bench, resize),
    setDepth: (bed, wantedM) => {
      const depthM = pulledDepthM(bed, places.beds, wantedM - bed.depthM);
      resize(bed, depthM);
      if (wantedM > depthM + playM)
        say(
          `${bed.chamber.label} has room for ${millimetres(depthM)} of ${bed.name}, not for ${millimetres(wantedM)}: it is made so deep`,
        );
    },
    deepen: (bed, byM) => {
      const now = writtenDepthM(packing(), positionOf(bed)) ?? bed.depthM;
      const depthM = pulledDepthM(bed, places.beds, now - bed.depthM + byM);
      resize(bed, depthM, `deepen ${bed.chamber.id}:${bed.place}`);
    },
    split: (bed) => change(withBedSplit(packing(), positionOf(bed), bed.depthM), `split ${bed.name} in two`),
    remove: (bed) => change(withoutBed(packing(), positionOf(bed)), `take ${bed.name} out`),
  };
};

/** Changes one packing of a job by hand, each change one that can be undone. */
export function useRepacking({ session, field, places, media }: Under): Repacking {
  const [hand, take] = useState<string>();
  const [entered] = useState(() => placeInHistory(session));
  const [last, tell] = useState<Told>({ says: '', at: entered });
  const told = toldAt(last, entered, placeInHistory(session));
  const hands = useMemo(
    () => handsOn({ session, field, places, media }, tell),
    [session, field, places, media],
  );
  return useMemo(() => ({ ...hands, hand, take, told }), [hands, hand, told]);
}
