import type { Medium } from '../model/medium.ts';
import type { System } from '../quantities/displayUnits.ts';
import { printQuantity } from '../quantities/printQuantity.ts';
import { alterationKinds } from './alterations.ts';
import { type HandlingKind, handlingKind } from './handling.ts';
import type { Plan } from './plan.ts';

/** Prints lengths and volumes of the steps to so many figures. */
const printIn =
  (system: System, digits: number) =>
  (value: number, dimension: 'length' | 'volume'): string =>
    printQuantity({ value, dimension, system, digits });

type Print = ReturnType<typeof printIn>;

/** How a filter is reached and closed again, by what it is built of. */
interface Handling {
  readonly open: readonly string[];
  readonly close: readonly string[];
}

const canister: Handling = {
  open: ['Close the taps, lift the hose ends above the tank’s surface, and open the filter over a tray.'],
  close: [
    'Clean and lightly grease the main seal with silicone grease; close all clips evenly, by hand.',
    'Test for leaks on dry paper at installed height before it goes back under a tank.',
  ],
};

const hanging: Handling = {
  open: ['Let the box run empty, lift it off the rim with both hands, and work on it over a tray.'],
  close: [
    'Hang it level, fill the box with tank water before it starts, and see that the overflow stays free.',
  ],
};

const submerged: Handling = {
  open: ['Put a bag or bowl under the filter before it leaves the water, so that the dirt stays in it.'],
  close: ['Let the air out under water before it starts; it must never run dry.'],
};

const handlings: Readonly<Record<HandlingKind, Handling>> = { canister, hanging, submerged };

const buying = (plan: Plan, print: Print): string[] =>
  plan.purchases.map(
    ({ medium, volumeM3 }) =>
      `Get ${print(volumeM3, 'volume')} of ${plan.model.media[medium]!.name}; rinse it.`,
  );

const mediaOf = (plan: Plan): Medium[] => {
  const used = new Set(Object.values(plan.packing).flatMap((beds) => beds.map((bed) => bed.medium)));
  return [...used].map((medium) => plan.model.media[medium]!);
};

/** Foam that is bought has to be cut. */
const cutting = (plan: Plan, print: Print): string[] =>
  plan.purchases.some(({ medium }) => plan.model.media[medium]!.form === 'foam')
    ? [
        `Cut foam ${print(0.003, 'length')} to ${print(0.005, 'length')} oversize, away from the hand, with a cut-resistant glove on the other.`,
      ]
    : [];

/** Packing in the order of the hands: upright chambers from the bottom, slots from the pump's side. */
const packing = (plan: Plan, print: Print): string[] =>
  plan.assessment.layout.chambers.map((chamber) => {
    const beds = plan.packing[chamber.id] ?? [];
    const upright = chamber.flow === 'up' || chamber.flow === 'down';
    const inHandOrder = upright ? beds.toReversed() : beds;
    const layers = inHandOrder.map(
      (bed) => `${print(bed.depthM, 'length')} of ${plan.model.media[bed.medium]!.name}`,
    );
    if (layers.length === 0) return `Leave ${chamber.label} empty.`;
    return `Pack ${chamber.label}${upright ? ' from the bottom' : ''}: ${layers.join(', then ')}.`;
  });

const keepingBacteria = (plan: Plan): string[] =>
  plan.purchases.length === 0
    ? []
    : [
        'Keep at least a third of the media that bacteria live on as it was for four weeks, in the filter or in a bag in the tank; never replace all at once.',
      ];

/** What holds at every filter, before hands go into the water and when it runs again: mains and water. */
export const mainsCautions = {
  before: 'Unplug every device in the tank before hands go into the water; never by the switch alone.',
  after:
    'Plug in with a drip loop, through a residual-current device; local codes and licensed electricians decide on all wiring.',
} as const;

/** What to do, in order, with the safety of hands and animals where it matters; metric unless asked otherwise. */
export const stepsOf = (plan: Plan, system: System = 'metric'): readonly string[] => {
  // Nobody cuts or pours to three figures, but a hose is named by them.
  const print = printIn(system, 2);
  const printPart = printIn(system, 3);
  const { open, close } = handlings[handlingKind(plan)];
  return [
    ...buying(plan, print),
    mainsCautions.before,
    ...open,
    'Take the media out in order, note their places, and keep them wet in a bucket of tank water.',
    ...plan.alterations.flatMap(({ id, settings }) => alterationKinds[id]!.steps(settings, printPart)),
    ...cutting(plan, print),
    ...packing(plan, print),
    ...keepingBacteria(plan),
    ...close,
    mainsCautions.after,
    'Measure the flow as before; test ammonia and nitrite on days 1, 3, 5, 7 and 14; feed lightly in the first week.',
  ];
};

/** What to mind about each medium that the plan uses, by its name. */
export const cautionsOf = (plan: Plan): readonly { readonly medium: string; readonly says: string }[] =>
  mediaOf(plan).flatMap(({ name, cautions }) => cautions.map((says) => ({ medium: name, says })));
