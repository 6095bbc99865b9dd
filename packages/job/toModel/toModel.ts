import type { Model } from '@fettle/engine/model/model.ts';
import { checkDraft } from '../checks/check.ts';
import { type Context, contextOf } from '../context.ts';
import type { Note } from '../notes.ts';
import type { Problem } from '../problems.ts';
import type { JobDocument } from '../schema/job.ts';
import { alterationsOf } from './alterations.ts';
import { benchTestsOf } from './benchTests.ts';
import { filterNotes, filterOf } from './filter.ts';
import { newTaker } from './givens.ts';
import { moneyOf } from './money.ts';
import { packingNotes, packingOf } from './packing.ts';
import { otherFiltersOf, shelfOf } from './supplies.ts';
import { feedNotes, tankOf } from './tank.ts';

export type ModelResult =
  | { readonly ok: true; readonly model: Model; readonly notes: readonly Note[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Turns a document of the right shape into the engine's model, in SI units, with a default for everything that
 * it leaves open; `givens` of the model lists the defaults and the stated doubts.
 */
export function toModel(document: JobDocument): ModelResult {
  const context = contextOf(document);
  const problems = checkDraft(document, context);
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, ...build(document, context) };
}

function build(
  document: JobDocument,
  context: Context,
): { readonly model: Model; readonly notes: readonly Note[] } {
  const { family, layout, media } = context;
  if (family === undefined || layout === undefined) throw new TypeError('unchecked document');
  const taker = newTaker();
  const tank = tankOf(document.tank, taker, document.filter.placing !== undefined);
  const filter = filterOf(document.filter, { family, context, layout, tank, taker });
  const packing = packingOf(document.packing, { layout, media, taker });
  const tests = benchTestsOf(document.tests ?? []);
  const money = moneyOf(document, media, taker);
  const shelf = shelfOf(document.shelf);
  const alterations = alterationsOf(document.alterations, family);
  const model: Model = {
    tank,
    filter,
    packing,
    media,
    otherFilters: otherFiltersOf(document.otherFilters, media),
    tests: tests.tests,
    ...(tests.dyeTests.length === 0 ? {} : { dyeTests: tests.dyeTests }),
    alterations: alterations.alterations,
    shelf: shelf.shelf,
    money: money.money,
    claims: document.filter.claims ?? [],
    givens: taker.givens,
  };
  return {
    model,
    notes: [
      ...feedNotes(document.tank),
      ...filterNotes(document.filter, context),
      ...packingNotes(document.packing),
      ...tests.notes,
      ...money.notes,
      ...shelf.notes,
      ...alterations.notes,
    ],
  };
}
