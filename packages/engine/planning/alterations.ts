import type { Layout, Opening } from '../families/layout.ts';
import { withMeasurement } from '../model/changes.ts';
import type { HoseRun, Model, PermittedAlteration } from '../model/model.ts';
import { withSealedChambers } from '../packing/seal.ts';
import { quantity } from '../wording/facts.ts';
import { said } from '../wording/said.ts';
import {
  type AlterationKind,
  at,
  needed,
  none,
  openGaps,
  type PartNeed,
  withSealedLeaks,
} from './alterationKind.ts';
import { renewEndSeals, trimSleeve, turnCartridge } from './endSeals.ts';
import { siphonHole } from './siphonHole.ts';
import { clearHoles, moreSocks } from './sumpChanges.ts';

/** Parts that alterations need, with placeholder prices in the job's currency (from memory). */
export const partPrices: Readonly<Record<string, number>> = {
  'seal-strip': 3,
  'slot-cover': 1,
  'hose-per-metre': 4,
  'end-seal': 5,
  sock: 8,
  'lift-tube': 3,
};

const withRuns = (model: Model, change: (run: HoseRun) => HoseRun): Model => {
  const { intake, outlet } = model.filter;
  return {
    ...model,
    filter: {
      ...model.filter,
      ...(intake ? { intake: change(intake) } : {}),
      ...(outlet ? { outlet: change(outlet) } : {}),
    },
  };
};

/** Bore of a barb against its hose (from memory, within a tenth). */
const USUAL_BARB_RATIO = 0.8;

const turnHead: AlterationKind = {
  id: 'turn-head',
  says: 'turn the head by half a turn',
  settings: [],
  where: at('pump'),
  apply: (model) => withMeasurement(model, 'headTurned', model.filter.measurements.headTurned ? 0 : 1),
  parts: none,
  steps: () => [said('plan-step.turn-head')],
};

const moveTrays: AlterationKind = {
  id: 'move-trays',
  says: 'move trays between places',
  settings: [],
  handsOnly: true,
  where: at('packing'),
  apply: (model) => model,
  parts: none,
  steps: none,
};

const sealGaps: AlterationKind = {
  id: 'seal-gaps',
  says: 'seal the gaps beside the media',
  settings: [],
  where: ({ chambers, leaks }) => [...chambers.map(({ id }) => `gap:${id}`), ...leaks.map(({ id }) => id)],
  isIdle: (model, layout) => {
    const { chambers, leaks } = openGaps(model, layout);
    return chambers.length + leaks.length === 0;
  },
  apply: (model, layout) => {
    const { chambers, leaks } = openGaps(model, layout);
    return withSealedLeaks(withSealedChambers(model, chambers), leaks);
  },
  parts: (model, layout) => {
    const { chambers, leaks } = openGaps(model, layout);
    return needed('seal-strip', chambers.length + leaks.length);
  },
  steps: () => [said('plan-step.seal-gaps')],
};

/** Whether an opening is a slot past the media that a cover can close. */
export const isSlotPast = ({ bypass, closedBy }: Opening): boolean => bypass && closedBy !== undefined;

const closeUpperSlots: AlterationKind = {
  id: 'close-upper-slots',
  says: 'cover the slots past the media',
  settings: [],
  where: ({ openings }) => openings.filter(isSlotPast).map(({ id }) => id),
  isIdle: (_model, { openings }) => !openings.some(isSlotPast),
  apply: (model, layout) =>
    layout.openings
      .filter(isSlotPast)
      .reduce((closed, { closedBy }) => (closedBy ? withMeasurement(closed, closedBy, 0) : closed), model),
  parts: (_model, { openings }) => needed('slot-cover', openings.filter(isSlotPast).length),
  steps: () => [said('plan-step.close-upper-slots')],
};

/** A hose of another bore, with barbs that match it where its own were narrower than usual. */
const withBore = (run: HoseRun, boreM: number): HoseRun => ({
  ...run,
  boreM,
  barbBoreM: Math.max(run.barbBoreM, USUAL_BARB_RATIO * boreM),
});

const hoseBore: AlterationKind = {
  id: 'hose-bore',
  says: 'change the hoses',
  settings: ['boreM'],
  where: at('intake'),
  apply: (model, _layout, settings) => withRuns(model, (run) => withBore(run, settings.boreM ?? run.boreM)),
  parts: ({ filter }) => [
    { part: 'hose-per-metre', count: (filter.intake?.lengthM ?? 0) + (filter.outlet?.lengthM ?? 0) },
  ],
  steps: ({ boreM = 0 }) => [said('plan-step.hose-bore', { bore: quantity(boreM, 'length') })],
};

const shortenHose: AlterationKind = {
  id: 'shorten-hose',
  says: 'shorten the hoses',
  settings: ['lengthM'],
  where: at('intake'),
  apply: (model, _layout, settings) =>
    withRuns(model, (run) => ({ ...run, lengthM: Math.min(run.lengthM, settings.lengthM ?? run.lengthM) })),
  parts: none,
  steps: ({ lengthM = 0 }) => [said('plan-step.shorten-hose', { length: quantity(lengthM, 'length') })],
};

const lowerOutlet: AlterationKind = {
  id: 'lower-outlet',
  says: 'bring the outlet under the surface',
  settings: [],
  where: at('outlet'),
  isIdle: ({ filter }) => filter.outletLiftM <= 0,
  apply: (model) => ({ ...model, filter: { ...model.filter, outletLiftM: 0 } }),
  parts: none,
  steps: () => [said('plan-step.lower-outlet')],
};

const levelGravel: AlterationKind = {
  id: 'level-gravel',
  says: 'level the gravel over the plate',
  settings: [],
  where: closeUpperSlots.where,
  isIdle: (model, layout) => closeUpperSlots.isIdle?.(model, layout) ?? false,
  apply: closeUpperSlots.apply,
  parts: none,
  steps: () => [said('plan-step.level-gravel')],
};

const isAirLift = ({ filter }: Model, { liftTube }: Layout): boolean =>
  filter.pump.curve.kind === 'air-lift' && liftTube !== undefined;

/** A tube longer than this by less is as long as it need be, m. */
const TUBE_SLACK_M = 0.005;

const lengthenLiftTube: AlterationKind = {
  id: 'lengthen-lift-tube',
  says: 'lengthen the lift tube to the surface',
  settings: [],
  where: at('outlet'),
  isIdle: (model, layout) =>
    !isAirLift(model, layout) || layout.liftTube!.airDepthM - layout.liftTube!.riseM < TUBE_SLACK_M,
  apply: (model, layout) =>
    isAirLift(model, layout)
      ? withMeasurement(model, 'tubeRise', Math.max(layout.liftTube!.riseM, layout.liftTube!.airDepthM))
      : model,
  parts: (_model, { liftTube }) => [{ part: 'lift-tube', count: liftTube?.tubes ?? 1 }],
  steps: () => [said('plan-step.lengthen-lift-tube')],
};

/** Every kind of alteration by id. */
export const alterationKinds: Readonly<Record<string, AlterationKind>> = Object.fromEntries(
  [
    turnHead,
    moveTrays,
    sealGaps,
    renewEndSeals,
    trimSleeve,
    turnCartridge,
    moreSocks,
    clearHoles,
    closeUpperSlots,
    levelGravel,
    hoseBore,
    shortenHose,
    lowerOutlet,
    siphonHole,
    lengthenLiftTube,
  ].map((kind) => [kind.id, kind]),
);

/** The parts of a set of alterations with their prices: the user's own, else the placeholders. Hoses are bought at
 * the length that they are cut to. */
export const partsOf = (model: Model, layout: Layout, chosen: readonly PermittedAlteration[]): PartNeed[] => {
  const cut = altered(
    model,
    layout,
    chosen.filter(({ id }) => id === shortenHose.id),
  );
  return chosen.flatMap(({ id }) =>
    alterationKinds[id]!.parts(cut, layout).map((need) => ({
      ...need,
      price: model.money.partPrice[need.part] ?? partPrices[need.part] ?? 0,
    })),
  );
};

/** The job with a set of alterations carried out. */
export const altered = (model: Model, layout: Layout, chosen: readonly PermittedAlteration[]): Model =>
  chosen.reduce((changed, { id, settings }) => alterationKinds[id]!.apply(changed, layout, settings), model);

/** Those of some alterations, by id, that change nothing on this filter: a mark or a switch for one says so. */
export const idleAlterations = (ids: readonly string[], model: Model, layout: Layout): ReadonlySet<string> =>
  new Set(ids.filter((id) => alterationKinds[id]?.isIdle?.(model, layout) ?? false));

/** Every set of the permitted alterations, that of those which every plan makes first. */
export const alterationSets = (permitted: readonly PermittedAlteration[]): PermittedAlteration[][] => {
  const effective = permitted.filter(({ id }) => alterationKinds[id] && !alterationKinds[id].handsOnly);
  const isAlways = ({ id }: PermittedAlteration): boolean => alterationKinds[id]!.always === true;
  const sets: PermittedAlteration[][] = [effective.filter(isAlways)];
  for (const one of effective.filter((each) => !isAlways(each)))
    sets.push(...sets.map((set) => [...set, one]));
  return sets;
};
