import type { Family } from '@fettle/engine/families/layout.ts';
import type { PermittedAlteration } from '@fettle/engine/model/model.ts';
import { alterationSettings, type ListedAlteration, listAlterations, settingsOf } from '../alterationList.ts';
import { type Note, note } from '../notes.ts';
import { alterationSchema } from '../schema/alterations.ts';
import { readField } from '../schema/fields.ts';
import type { JobDocument } from '../schema/job.ts';

/** The alterations that plans may make. Where only forbidden ones are listed, all others that need no setting. */
export function alterationsOf(
  alterations: JobDocument['alterations'],
  family: Family,
): { readonly alterations: readonly PermittedAlteration[]; readonly notes: readonly Note[] } {
  const path = ['alterations'];
  if (alterations === undefined) {
    return {
      alterations: [],
      notes: [note('alterations-not-stated', path, { known: family.alterations.join(', ') })],
    };
  }
  const { permitted, forbidden } = listAlterations(alterations);
  if (permitted !== undefined) return { alterations: permitted.map(permit), notes: [] };
  const others = family.alterations.filter((id) => !forbidden.some((each) => each.id === id));
  const bare = others.filter((id) => settingsOf(id).length === 0);
  const left = others.filter((id) => settingsOf(id).length > 0);
  const notes = left.length === 0 ? [] : [note('alterations-need-settings', path, { left: left.join(', ') })];
  return { alterations: bare.map((id) => ({ id, settings: {} })), notes };
}

/** An alteration of the document with its settings in SI units. */
export function permit({ id, settings }: ListedAlteration): PermittedAlteration {
  const read = settingsOf(id).flatMap((name) => {
    const reading = readField(alterationSchema.shape[name], settings[name]);
    return reading.ok ? [[alterationSettings[name], reading.value] as const] : [];
  });
  return { id, settings: Object.fromEntries(read) };
}
