import { families } from '@fettle/engine/families/families.ts';
import { type ListedAlteration, listAlterations, listed, settingsOf } from '../alterationList.ts';
import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import { adviceOn } from '../names.ts';
import { packedStateFields } from '../packedStates.ts';
import { type Problem, problem } from '../problems.ts';
import { shown } from '../schema/issues.ts';

/** Alterations that the family knows, none both permitted and forbidden, none twice alike. */
export function checkAlterations(draft: Draft, context: Context): readonly Problem[] {
  if (draft.alterations === undefined) return [];
  const { permitted = [], forbidden } = listAlterations(draft.alterations);
  const permittedIds = permitted.map(({ id }) => id);
  return [
    ...[...permitted, ...forbidden].flatMap((each) => checkKnown(each, context)),
    ...permitted.flatMap(checkSettings),
    ...repeated(permitted),
    ...repeated(forbidden),
    ...forbidden
      .filter(({ id }) => permittedIds.includes(id))
      .map(({ id, path }) => problem('alteration-contradiction', path, { facts: { found: shown(id) } })),
  ];
}

/** Alterations that were made, or are planned: each known, with its settings, and none twice alike. */
export function checkMade(draft: Draft, context: Context): readonly Problem[] {
  return packedStateFields.flatMap((field) => {
    const made = listed(draft[field]?.made ?? [], [field, 'made']);
    return [
      ...made.flatMap((each) => [...checkKnown(each, context), ...checkSettings(each)]),
      ...repeated(made),
    ];
  });
}

function checkKnown({ id, path }: ListedAlteration, { family }: Context): readonly Problem[] {
  const everywhere = new Set(families.flatMap((each) => each.alterations));
  const here = family?.alterations ?? [...everywhere];
  if (here.includes(id)) return [];
  const { nearest, allowed } = adviceOn(id, here);
  if (family !== undefined && everywhere.has(id)) {
    return [
      problem('alteration-not-here', path, { facts: { found: shown(id), family: family.name }, allowed }),
    ];
  }
  const facts = { found: shown(id), what: 'a known alteration', nearest };
  return [problem('not-among', path, { facts, allowed })];
}

function checkSettings({ id, path, settings }: ListedAlteration): readonly Problem[] {
  const known = settingsOf(id);
  const missing = known
    .filter((name) => !(name in settings))
    .map((name) => problem('setting-missing', [...path, name], { facts: { found: shown(id) } }));
  const strange = Object.keys(settings)
    .filter((name) => !known.some((each) => each === name))
    .map((name) =>
      problem('setting-not-here', [...path, name], {
        facts: { found: shown(id) },
        allowed: known.length === 0 ? 'no settings' : known.join(', '),
      }),
    );
  return [...missing, ...strange];
}

function repeated(entries: readonly ListedAlteration[]): readonly Problem[] {
  const seen = new Set<string>();
  return entries.flatMap(({ id, path, settings }) => {
    const alike = JSON.stringify([id, Object.entries(settings).toSorted()]);
    const twice = seen.has(alike);
    seen.add(alike);
    return twice ? [problem('listed-twice', path, { facts: { found: shown(id) } })] : [];
  });
}
