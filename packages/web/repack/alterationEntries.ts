import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { settingsOf } from '@fettle/job/alterationList.ts';
import { isFields } from '@fettle/job/schema/walk.ts';

/** The short name of an alteration as a document lists it, alone or with its settings. */
export const idOf = (entry: unknown): unknown => (isFields(entry) ? entry.change : entry);

const settingExamples = { bore: '19 mm', length: '1 m', depth: '2 cm' } as const;

/** What is written for an alteration that is chosen: its short name, or its settings to be filled in. */
const entryFor = (id: string): unknown => {
  const settings = settingsOf(id);
  if (settings.length === 0) return id;
  return { change: id, ...Object.fromEntries(settings.map((name) => [name, settingExamples[name]])) };
};

/** A list of alterations with one of them switched on or off, and what that is called. */
export const turned = (
  made: readonly unknown[],
  id: string,
  isOn: boolean,
): { readonly made: readonly unknown[]; readonly says: string } => ({
  made: isOn ? [...made, entryFor(id)] : made.filter((entry) => idOf(entry) !== id),
  says: `${isOn ? '' : 'do not '}${alterationKinds[id]?.says ?? id}`,
});
