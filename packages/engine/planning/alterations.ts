import { SEALED_GAP_M } from '../assessment/findings/bypass.ts';
import type { Layout } from '../families/layout.ts';
import type { HoseRun, Model, PermittedAlteration } from '../model/model.ts';

/** Parts that alterations need, with placeholder prices in the job's currency (from memory). */
export const partPrices: Readonly<Record<string, number>> = {
  'seal-strip': 3,
  'slot-cover': 1,
  'hose-per-metre': 4,
};

/** A part of an alteration: how many and at what price each. */
export interface PartNeed {
  readonly part: string;
  readonly count: number;
  readonly price: number;
}

/** One kind of permitted change to the hardware: adding one is adding an entry here. */
export interface AlterationKind {
  readonly id: string;
  readonly says: string;
  /** Settings in SI units that it needs, by name. */
  readonly settings: readonly string[];
  apply(model: Model, layout: Layout, settings: Readonly<Record<string, number>>): Model;
  parts(model: Model, layout: Layout): readonly Omit<PartNeed, 'price'>[];
  steps(settings: Readonly<Record<string, number>>): readonly string[];
}

const withMeasurement = (model: Model, key: string, value: number): Model => ({
  ...model,
  filter: { ...model.filter, measurements: { ...model.filter.measurements, [key]: value } },
});

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

const none = (): readonly [] => [];

const turnHead: AlterationKind = {
  id: 'turn-head',
  says: 'turn the head by half a turn',
  settings: [],
  apply: (model) => withMeasurement(model, 'headTurned', model.filter.measurements.headTurned ? 0 : 1),
  parts: none,
  steps: () => [
    'Turn the head by half a turn; only where ring, clips, ports and priming tube all mate both ways. Mark intake and outlet anew.',
  ],
};

const moveTrays: AlterationKind = {
  id: 'move-trays',
  says: 'move trays between places',
  settings: [],
  apply: (model) => model,
  parts: none,
  steps: none,
};

const sealGaps: AlterationKind = {
  id: 'seal-gaps',
  says: 'seal the gaps beside the media',
  settings: [],
  apply: (model, layout) => {
    const sealed = Object.fromEntries(layout.chambers.map((chamber) => [chamber.id, SEALED_GAP_M]));
    const beside = {
      ...model,
      filter: { ...model.filter, chamberGapM: { ...model.filter.chamberGapM, ...sealed } },
    };
    return layout.leaks.length > 0 ? withMeasurement(beside, 'partitionGap', SEALED_GAP_M) : beside;
  },
  parts: (_model, layout) => [{ part: 'seal-strip', count: layout.chambers.length + layout.leaks.length }],
  steps: () => [
    'Lay a removable strip of food-grade silicone sheet or closed-cell foam beside the media of each chamber; leave designed reliefs free.',
  ],
};

const closeUpperSlots: AlterationKind = {
  id: 'close-upper-slots',
  says: 'cover the slots past the media',
  settings: [],
  apply: (model) => withMeasurement(model, 'upperSlotArea', 0),
  parts: () => [{ part: 'slot-cover', count: 1 }],
  steps: () => [
    'Cover the upper slots; leave at least three times the area of the pump’s own inlet open below.',
  ],
};

const hoseBore: AlterationKind = {
  id: 'hose-bore',
  says: 'change the hoses',
  settings: ['boreM'],
  apply: (model, _layout, settings) =>
    withRuns(model, (run) => ({ ...run, boreM: settings.boreM ?? run.boreM })),
  parts: ({ filter }) => [
    { part: 'hose-per-metre', count: (filter.intake?.lengthM ?? 0) + (filter.outlet?.lengthM ?? 0) },
  ],
  steps: (settings) => [
    `Fit hose of ${((settings.boreM ?? 0) * 1000).toFixed(1)} mm bore with barbs and clips that match it.`,
  ],
};

const shortenHose: AlterationKind = {
  id: 'shorten-hose',
  says: 'shorten the hoses',
  settings: ['lengthM'],
  apply: (model, _layout, settings) =>
    withRuns(model, (run) => ({ ...run, lengthM: Math.min(run.lengthM, settings.lengthM ?? run.lengthM) })),
  parts: none,
  steps: (settings) => [
    `Cut the hoses to ${(settings.lengthM ?? 0).toFixed(2)} m each, ends square and clean.`,
  ],
};

const lowerOutlet: AlterationKind = {
  id: 'lower-outlet',
  says: 'bring the outlet under the surface',
  settings: [],
  apply: (model) => ({ ...model, filter: { ...model.filter, outletLiftM: 0 } }),
  parts: none,
  steps: () => [
    'Lower the outlet under the surface; drill or keep a small siphon break just below the water line.',
  ],
};

/** Every kind of alteration by id. */
export const alterationKinds: Readonly<Record<string, AlterationKind>> = Object.fromEntries(
  [turnHead, moveTrays, sealGaps, closeUpperSlots, hoseBore, shortenHose, lowerOutlet].map((kind) => [
    kind.id,
    kind,
  ]),
);

/** The parts of a set of alterations with their prices: the user's own, else the placeholders. */
export const partsOf = (model: Model, layout: Layout, chosen: readonly PermittedAlteration[]): PartNeed[] =>
  chosen.flatMap(({ id }) =>
    alterationKinds[id]!.parts(model, layout).map((need) => ({
      ...need,
      price: model.money.partPrice[need.part] ?? partPrices[need.part] ?? 0,
    })),
  );

/** The job with a set of alterations carried out. */
export const altered = (model: Model, layout: Layout, chosen: readonly PermittedAlteration[]): Model =>
  chosen.reduce((changed, { id, settings }) => alterationKinds[id]!.apply(changed, layout, settings), model);

/** Every set of the permitted alterations, the empty one first. */
export const alterationSets = (permitted: readonly PermittedAlteration[]): PermittedAlteration[][] => {
  const effective = permitted.filter(({ id }) => id !== moveTrays.id && alterationKinds[id]);
  const sets: PermittedAlteration[][] = [[]];
  for (const one of effective) sets.push(...sets.map((set) => [...set, one]));
  return sets;
};
