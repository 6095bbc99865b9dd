import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import { chambersInWaterOrder, inWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import type { PartNeed } from '@fettle/engine/planning/alterationKind.ts';
import { alterationKinds, partsOf } from '@fettle/engine/planning/alterations.ts';
import { purchasesFor, renewalsFor, stillGood, volumesOf } from '@fettle/engine/planning/candidates.ts';
import type { Purchase } from '@fettle/engine/planning/plan.ts';
import { type ListedAlteration, listed } from '@fettle/job/alterationList.ts';
import { stateField } from '@fettle/job/packedStates.ts';
import { permit } from '@fettle/job/toModel/alterations.ts';
import type { Block } from '../content/document.ts';
import type { AssessedState, WriteUpSource } from '../source.ts';
import { cutLength } from './cutLengths.ts';
import { effectCells, findingText } from './findings.ts';
import { length } from './quantities.ts';
import { faultsOf, heading, lastState, paragraph, placeIn, tense, type Writer } from './writer.ts';

/** Alterations that were made, or are to be. */
export const madeAlterations = ({ document, after }: WriteUpSource): readonly ListedAlteration[] => {
  if (after === undefined) return [];
  const field = stateField(after.state);
  return listed(document[field]?.made ?? [], [field, 'made']);
};

/** What is bought for the change: media beyond those in the filter that are still good, and parts of the alterations. */
export interface ChangeCost {
  readonly purchases: readonly Purchase[];
  readonly parts: readonly PartNeed[];
  readonly total: number;
  /** What of the total cleaning takes in any case: fresh media in place of those that are used up. */
  readonly renewed: number;
  readonly currency: string;
}

const sumOf = (purchases: readonly Purchase[]): number =>
  purchases.reduce((sum, { price }) => sum + price, 0);

/** Media in the filter as found that are used again, m³ by medium. */
export const goodMedia = ({ found }: WriteUpSource): ReadonlyMap<string, number> =>
  stillGood(found.model, volumesOf(found.assessment.layout.chambers, found.model.packing));

export const changeCost = (source: WriteUpSource): ChangeCost => {
  const { found, after } = source;
  const { currency } = found.model.money;
  if (after === undefined) return { purchases: [], parts: [], total: 0, renewed: 0, currency };
  const held = volumesOf(found.assessment.layout.chambers, found.model.packing);
  const wanted = volumesOf(after.assessment.layout.chambers, after.model.packing);
  const purchases = purchasesFor(found.model, wanted, goodMedia(source));
  const parts = partsOf(found.model, found.assessment.layout, madeAlterations(source).map(permit)).filter(
    ({ count }) => count > 0,
  );
  const total = sumOf(purchases) + parts.reduce((sum, { count, price }) => sum + count * price, 0);
  const renewed = sumOf(renewalsFor(found.model, wanted, held));
  return { purchases, parts, total, renewed, currency };
};

const packed = ({ model }: AssessedState): string =>
  JSON.stringify(
    Object.entries(model.packing)
      .filter(([, beds]) => beds.length > 0)
      .toSorted(([one], [other]) => one.localeCompare(other)),
  );

/** Whether it is packed as it was found, and nothing is altered. */
export const isUnchanged = (source: WriteUpSource): boolean =>
  source.after === undefined ||
  (madeAlterations(source).length === 0 && packed(source.after) === packed(source.found));

/** The beds of a chamber in words, as the water meets them. */
const bedsText = (writer: Writer, { model, assessment }: AssessedState, chamberId: string): string => {
  const chamber = assessment.layout.chambers.find(({ id }) => id === chamberId);
  const beds = chamber === undefined ? [] : inWaterOrder(chamber, model.packing[chamberId] ?? []);
  if (beds.length === 0) return writer.say('chamber.empty');
  return beds
    .map((bed) =>
      writer.say('bed.of-depth', {
        depth: cutLength(writer, bed.depthM),
        medium: { name: model.media[bed.medium]!.name },
      }),
    )
    .join('; ');
};

const packingTable = (writer: Writer): Block => {
  const { found, after } = writer.source;
  const last = after ?? found;
  const states = after === undefined ? [found] : [found, after];
  const heads = after === undefined ? ['found'] : ['found', tense(writer.source)];
  return {
    kind: 'table',
    id: 'packing',
    caption: writer.say('table.packing'),
    columns: [
      { head: writer.say('column.chamber'), align: 'left', share: 0.8 },
      ...heads.map(
        (head) => ({ head: writer.say(`column.state.${head}`), align: 'left', share: 2 }) as const,
      ),
    ],
    rows: chambersInWaterOrder(last.assessment.layout).map(({ id, label }) => [
      writer.name(label),
      ...states.map((state) => bedsText(writer, state, id)),
    ]),
  };
};

/** Media in the order in which the water meets them. */
const mediaInOrder = ({ model, assessment }: AssessedState): readonly string[] =>
  chambersInWaterOrder(assessment.layout).flatMap((chamber) =>
    inWaterOrder(chamber, model.packing[chamber.id] ?? []).map(({ medium }) => medium),
  );

/** Whether one row comes of another by leaving some out: then nothing has changed places. */
const isWithin = (one: readonly string[], other: readonly string[]): boolean => {
  const [few, many] = one.length <= other.length ? [one, other] : [other, one];
  let met = 0;
  for (const id of many) if (id === few[met]) met += 1;
  return met === few.length;
};

const namesOf = (model: Model, media: readonly string[]): readonly { readonly name: string }[] =>
  [...new Set(media)].map((id) => ({ name: model.media[id]!.name }));

/** Media that came in, went out, or moved, one sentence each. */
export const changeSentences = (writer: Writer): readonly string[] => {
  const { found, after } = writer.source;
  if (after === undefined) return [];
  const [before, now] = [mediaInOrder(found), mediaInOrder(after)];
  const added = now.filter((id) => !before.includes(id));
  const removed = before.filter((id) => !now.includes(id));
  const reordered = !isWithin(
    now.filter((id) => before.includes(id)),
    before.filter((id) => now.includes(id)),
  );
  const form = tense(writer.source);
  return [
    ...(added.length > 0
      ? [writer.say(`changes.added.${form}`, { media: { all: namesOf(after.model, added) } })]
      : []),
    ...(removed.length > 0
      ? [writer.say(`changes.removed.${form}`, { media: { all: namesOf(found.model, removed) } })]
      : []),
    ...(reordered
      ? [writer.say(`changes.order.${form}`, { media: { all: namesOf(after.model, now) } })]
      : []),
  ];
};

/** What was done to the hardware, one item each. */
export const alterationItems = (writer: Writer): readonly string[] =>
  madeAlterations(writer.source)
    .map(permit)
    .map(({ id, settings }) => {
      const says = writer.name(alterationKinds[id]?.says ?? id);
      const size = settings.boreM ?? settings.lengthM;
      return size === undefined
        ? writer.say('alteration.made', { says })
        : writer.say(settings.boreM === undefined ? 'alteration.to-length' : 'alteration.to-bore', {
            says,
            size: length(size),
          });
    });

/** A fault that remains: what it is, and what curing it alone would do. */
const faultItem = (writer: Writer, state: AssessedState, finding: Finding): string => {
  const facts = {
    severity: writer.say(`severity.${finding.severity}`),
    place: placeIn(writer, state, finding.place),
    says: findingText(writer, finding),
  };
  if (finding.effect === undefined) return writer.say('finding.left', facts);
  const [flow = '', feed = '', interval = ''] = effectCells(writer, finding);
  return writer.say('finding.left.with-effect', { ...facts, flow, feed, interval });
};

/** Every fault that remains after the change, in one list: none is left out because another is worse. */
const faultsLeft = (writer: Writer): readonly Block[] => {
  const { after } = writer.source;
  const faults = after === undefined ? [] : faultsOf(after);
  if (after === undefined || faults.length === 0) return [];
  const items = faults.map((finding) => faultItem(writer, after, finding));
  return [heading(writer, 'faults-left', 3), { kind: 'list', id: 'faults-left', items }];
};

/** What was changed, and why. */
export const changesPart = (writer: Writer): readonly Block[] => {
  const form = tense(writer.source);
  const items = alterationItems(writer);
  const { found } = writer.source;
  const faults = { found: faultsOf(found).length, after: faultsOf(lastState(writer.source)).length };
  const why = writer.say(`changes.why.${form}`, faults);
  return [
    { kind: 'heading', id: 'heading-changes', level: 2, text: writer.say(`heading.changes.${form}`) },
    ...paragraph('changes-why', [why, ...changeSentences(writer)]),
    ...(items.length === 0 ? [] : [{ kind: 'list', id: 'alterations', items } as const]),
    packingTable(writer),
    ...faultsLeft(writer),
  ];
};
