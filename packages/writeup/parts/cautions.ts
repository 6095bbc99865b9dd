import { handlingKind, isDrivenByAir } from '@fettle/engine/planning/handling.ts';
import type { Block, Danger } from '../content/document.ts';
import { cutList, cutsAnything } from '../cuts/cutList.ts';
import { lastState, type Writer } from './writer.ts';

/** Where a caution is wanted: at the work on the bench, or at the owner's own hands. */
export type CautionPlace = 'build' | 'care';

interface CautionRule {
  readonly id: string;
  readonly danger: Danger;
  readonly at: readonly CautionPlace[];
  /** Whether the danger is there at all: a caution that does not apply teaches people to read none. */
  applies(writer: Writer): boolean;
}

const isClosed = ({ source }: Writer): boolean => handlingKind(source.found) === 'canister';
const hasLift = ({ source }: Writer): boolean => source.found.model.filter.outletLiftM > 0;

/**
 * Whether the outlet is a hose with its end under water, which draws the tank empty unless a hole breaks the siphon: of a
 * canister, or the return of a sump.
 */
export const breaksSiphon = (writer: Writer): boolean =>
  ['canister', 'sump'].includes(handlingKind(writer.source.found)) && !hasLift(writer);

const cuts = ({ source }: Writer): boolean => cutsAnything(source);

/** Whether foam, pads, floss, strips or sheet are bought, which may hold what is no good to animals. */
const cutsWhatIsNew = ({ source }: Writer): boolean =>
  cutList(source).some(
    (cut) => cut.kind === 'strip' || cut.kind === 'cover' || (cut.kind === 'pad' && cut.from !== 'there'),
  );

/** Every caution, in the order of the work; adding one is adding an entry and its sentence in each language. */
const rules: readonly CautionRule[] = [
  { id: 'mains', danger: 'mains', at: ['build', 'care'], applies: () => true },
  { id: 'cable', danger: 'mains', at: ['build', 'care'], applies: () => true },
  {
    id: 'air-line',
    danger: 'mains',
    at: ['build', 'care'],
    applies: ({ source }) => isDrivenByAir(source.found.model),
  },
  { id: 'siphon', danger: 'water', at: ['build', 'care'], applies: isClosed },
  {
    id: 'sump',
    danger: 'water',
    at: ['build', 'care'],
    applies: ({ source }) => handlingKind(source.found) === 'sump',
  },
  {
    id: 'overflow',
    danger: 'water',
    at: ['build', 'care'],
    applies: ({ source }) => handlingKind(source.found) === 'hanging',
  },
  {
    id: 'siphon-break',
    danger: 'water',
    at: ['build', 'care'],
    applies: breaksSiphon,
  },
  { id: 'weight', danger: 'water', at: ['build', 'care'], applies: isClosed },
  { id: 'skin', danger: 'skin', at: ['build', 'care'], applies: () => true },
  { id: 'blade', danger: 'blade', at: ['build'], applies: cuts },
  { id: 'foam', danger: 'material', at: ['build'], applies: cutsWhatIsNew },
  { id: 'seal', danger: 'seal', at: ['build', 'care'], applies: isClosed },
  { id: 'disinfect', danger: 'chemical', at: ['build'], applies: () => true },
  { id: 'all-at-once', danger: 'bacteria', at: ['build', 'care'], applies: () => true },
  { id: 'stopped', danger: 'stopped', at: ['care'], applies: isClosed },
  { id: 'stopped-open', danger: 'stopped', at: ['care'], applies: (writer) => !isClosed(writer) },
];

/** Cautions of some dangers where they stand, or of all. */
export const cautionBlocks = (
  writer: Writer,
  place: CautionPlace,
  ids?: readonly string[],
): readonly Block[] =>
  rules
    .filter((rule) => rule.at.includes(place) && (ids?.includes(rule.id) ?? true) && rule.applies(writer))
    .map(({ id, danger }) => ({
      kind: 'caution',
      id: `caution-${id}`,
      danger,
      text: writer.say(`caution.${id}`),
    }));

/** What to mind about each medium that is used, by its name. */
export const mediaCautions = (writer: Writer): readonly Block[] => {
  const { model } = lastState(writer.source);
  const used = new Set(Object.values(model.packing).flatMap((beds) => beds.map(({ medium }) => medium)));
  const said = new Map<string, string[]>();
  for (const id of used)
    for (const caution of model.media[id]!.cautions)
      said.set(caution, [...(said.get(caution) ?? []), writer.name(model.media[id]!.name)]);
  const items = [...said].map(([caution, media]) =>
    writer.say('caution.of-media', { media: { all: media }, caution: writer.name(caution) }),
  );
  return items.length === 0 ? [] : [{ kind: 'list', id: 'media-cautions', items }];
};
