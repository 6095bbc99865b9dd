import { alterationKinds } from './alterations.ts';
import type { Plan } from './plan.ts';

const millimetres = (lengthM: number): string => `${Math.round(lengthM * 1000)} mm`;
const litres = (volumeM3: number): string => `${Number((volumeM3 * 1000).toPrecision(2))} L`;

const opening: readonly string[] = [
  'Unplug every device in the tank before hands go into the water; never by the switch alone.',
  'Close the taps, lift the hose ends above the tank’s surface, and open the filter over a tray.',
  'Take the media out chamber by chamber, note their places, and keep biological media wet in a bucket of tank water.',
];

const closing: readonly string[] = [
  'Clean and lightly grease the main seal with silicone grease, close all clips evenly, by hand.',
  'Test for leaks on dry paper at installed height before it goes back under a tank.',
  'Plug in with a drip loop, through a residual-current device; local codes and licensed electricians decide on all wiring.',
  'Test ammonia and nitrite on days 1, 3, 5, 7 and 14; feed lightly in the first week.',
];

const buying = (plan: Plan): string[] =>
  plan.purchases.map(
    ({ medium, volumeM3 }) =>
      `Get ${litres(volumeM3)} of ${plan.model.media[medium]!.name}, free of biocide and flame retardant; rinse it first.`,
  );

/** Packing steps in the order of the hands: from the lowest place up, or along the water in slots. */
const packing = (plan: Plan): string[] => {
  const { layout } = plan.assessment;
  return layout.chambers.map((chamber) => {
    const beds = plan.packing[chamber.id] ?? [];
    const upright = chamber.flow === 'up' || chamber.flow === 'down';
    const inHandOrder = upright ? beds.toReversed() : beds;
    const layers = inHandOrder.map(
      (bed) => `${millimetres(bed.depthM)} of ${plan.model.media[bed.medium]!.name}`,
    );
    if (layers.length === 0) return `Leave ${chamber.label} empty.`;
    return `Pack ${chamber.label}${upright ? ' from the bottom' : ''}: ${layers.join(', then ')}.`;
  });
};

const replaced = (plan: Plan): string[] =>
  plan.purchases.length === 0
    ? []
    : [
        'Keep at least a third of the old biological media in the filter for four weeks; never replace all at once.',
      ];

const cautions = (plan: Plan): string[] => {
  const used = new Set(Object.values(plan.packing).flatMap((beds) => beds.map((bed) => bed.medium)));
  return [...new Set([...used].flatMap((medium) => plan.model.media[medium]!.cautions))];
};

/** What to do, in order, with the cautions where the danger is. */
export const stepsOf = (plan: Plan): readonly string[] => [
  ...buying(plan),
  ...opening,
  ...plan.alterations.flatMap(({ id, settings }) => alterationKinds[id]!.steps(settings)),
  'Cut foam 3 to 5 mm oversize, away from the hand, with a cut-resistant glove.',
  ...packing(plan),
  ...replaced(plan),
  ...cautions(plan),
  ...closing,
];
