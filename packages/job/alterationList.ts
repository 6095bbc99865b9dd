import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import type { Draft } from './draft.ts';
import type { FieldPath } from './fieldPath.ts';
import { isFields } from './schema/walk.ts';

type DraftAlterations = NonNullable<Draft['alterations']>;

/** Settings that an alteration may carry, and their names in the model. */
export const alterationSettings = { bore: 'boreM', length: 'lengthM', depth: 'depthM' } as const;

export type AlterationSetting = keyof typeof alterationSettings;

const settingNames: readonly AlterationSetting[] = ['bore', 'length', 'depth'];

/** The settings that an alteration takes, by the names of the document. */
export function settingsOf(id: string): readonly AlterationSetting[] {
  const kind = Object.hasOwn(alterationKinds, id) ? alterationKinds[id] : undefined;
  return settingNames.filter((name) => kind?.settings.includes(alterationSettings[name]));
}

/** One alteration as the document lists it. */
export interface ListedAlteration {
  readonly id: string;
  readonly path: FieldPath;
  readonly settings: Partial<Readonly<Record<AlterationSetting, unknown>>>;
}

/** The alterations of a document in one shape, whichever way they are written. */
export function listAlterations(alterations: DraftAlterations): {
  /** Absent where only forbidden ones are listed. */
  readonly permitted?: readonly ListedAlteration[];
  readonly forbidden: readonly ListedAlteration[];
} {
  if (isPlainList(alterations)) return { permitted: listed(alterations, ['alterations']), forbidden: [] };
  const { permitted, forbidden } = alterations;
  return {
    ...(permitted === undefined ? {} : { permitted: listed(permitted, ['alterations', 'permitted']) }),
    forbidden: listed(forbidden ?? [], ['alterations', 'forbidden']),
  };
}

/** The alterations of a list, wherever in the document it stands. */
export type Entries = Extract<DraftAlterations, readonly unknown[]>;

function isPlainList(alterations: DraftAlterations): alterations is Entries {
  return Array.isArray(alterations);
}

export function listed(entries: Entries, path: FieldPath): readonly ListedAlteration[] {
  return entries.flatMap((entry, index) => {
    const at = [...path, index];
    if (typeof entry === 'string') return [{ id: entry, path: at, settings: {} }];
    if (!isFields(entry) || entry.change === undefined) return [];
    const { change, ...settings } = entry;
    return [{ id: change, path: at, settings }];
  });
}
