import type { Medium } from '../model/medium.ts';
import type { System } from '../quantities/displayUnits.ts';
import { engineEnglish } from '../wording/english/english.ts';
import { type Fact, type Said, said } from '../wording/said.ts';
import { word } from '../wording/word.ts';
import { alterationKinds } from './alterations.ts';
import { type HandlingKind, handlingKind } from './handling.ts';
import type { Plan } from './plan.ts';

/** How a filter is reached and closed again, by what it is built of. */
interface Handling {
  readonly open: readonly string[];
  readonly close: readonly string[];
}

const handlings: Readonly<Record<HandlingKind, Handling>> = {
  canister: { open: ['open.canister'], close: ['close.canister.seal', 'close.canister.leaks'] },
  sump: { open: ['open.sump'], close: ['close.sump'] },
  hanging: { open: ['open.hanging'], close: ['close.hanging'] },
  air: { open: ['open.air'], close: ['close.air'] },
  'built-in': { open: ['open.built-in'], close: ['close.built-in'] },
  submerged: { open: ['open.submerged'], close: ['close.submerged'] },
};

const step = (code: string, facts: Readonly<Record<string, Fact>> = {}): Said =>
  said(`plan-step.${code}`, facts);

/** Nobody cuts or pours to three figures. */
const rough = (value: number, dimension: 'length' | 'volume'): Fact => ({ value, dimension, digits: 2 });

const nameOf = (plan: Plan, medium: string): Fact => ({ name: plan.model.media[medium]!.name });

const buying = (plan: Plan): readonly Said[] =>
  plan.purchases.map(({ medium, volumeM3 }) =>
    step('get', { volume: rough(volumeM3, 'volume'), medium: nameOf(plan, medium) }),
  );

const renewing = (plan: Plan): readonly Said[] =>
  plan.renewals.map(({ medium, volumeM3 }) =>
    step('renew', { volume: rough(volumeM3, 'volume'), medium: nameOf(plan, medium) }),
  );

const mediaOf = (plan: Plan): Medium[] => {
  const used = new Set(Object.values(plan.packing).flatMap((beds) => beds.map((bed) => bed.medium)));
  return [...used].map((medium) => plan.model.media[medium]!);
};

/** Foam that is bought has to be cut. */
const cutting = (plan: Plan): readonly Said[] =>
  plan.purchases.some(({ medium }) => plan.model.media[medium]!.form === 'foam')
    ? [step('cut-foam', { least: rough(0.003, 'length'), most: rough(0.005, 'length') })]
    : [];

/** Packing in the order of the hands: upright chambers from the bottom, about a tube outward, slots from the pump's side. */
const packing = (plan: Plan): readonly Said[] =>
  plan.assessment.layout.chambers.map(({ id, label, flow, ring }) => {
    const beds = plan.packing[id] ?? [];
    const laid =
      ring !== undefined ? 'pack-tube' : flow === 'up' || flow === 'down' ? 'pack-upright' : 'pack';
    const chamber = { name: label };
    if (beds.length === 0) return step('leave-empty', { chamber });
    const layers = (laid === 'pack' ? beds : beds.toReversed())
      .map((bed) => step('layer', { depth: rough(bed.depthM, 'length'), medium: nameOf(plan, bed.medium) }))
      .reduceRight((next, first) => step('then', { first, next }));
    return step(laid, { chamber, layers });
  });

const keepingBacteria = (plan: Plan): readonly Said[] =>
  plan.purchases.length === 0 ? [] : [step('keep-bacteria')];

const inEnglish = (saying: Said, units: System = 'metric'): string =>
  word(saying, { language: engineEnglish, units });

/** What holds at every filter, before hands go into the water and when it runs again: mains and water. In English. */
export const mainsCautions = {
  before: inEnglish(step('unplug')),
  after: inEnglish(step('plug-in')),
} as const;

/** What to do, in order, with the safety of hands and animals where it matters. */
export const stepsSaid = (plan: Plan): readonly Said[] => {
  const { open, close } = handlings[handlingKind(plan)];
  return [
    ...buying(plan),
    ...renewing(plan),
    step('unplug'),
    ...open.map((code) => step(code)),
    step('take-out'),
    ...plan.alterations.flatMap(({ id, settings }) => alterationKinds[id]!.steps(settings)),
    ...cutting(plan),
    ...packing(plan),
    ...keepingBacteria(plan),
    ...close.map((code) => step(code)),
    step('plug-in'),
    step('measure'),
  ];
};

/** The same in English; metric unless asked otherwise. */
export const stepsOf = (plan: Plan, system: System = 'metric'): readonly string[] =>
  stepsSaid(plan).map((saying) => inEnglish(saying, system));

/** What to mind about each medium that the plan uses, by its name. */
export const cautionsOf = (plan: Plan): readonly { readonly medium: string; readonly says: string }[] =>
  mediaOf(plan).flatMap(({ name, cautions }) => cautions.map((says) => ({ medium: name, says })));
