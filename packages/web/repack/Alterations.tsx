import { familyById } from '@fettle/engine/families/families.ts';
import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { settingsOf } from '@fettle/job/alterationList.ts';
import { isFields } from '@fettle/job/schema/walk.ts';
import { Field } from '../forms/Field.tsx';
import { useForm } from '../forms/JobForm.tsx';
import { putting, valueAt } from '../forms/places.ts';
import type { PackingField } from './bedEdits.ts';
import { packingIn } from './useRepacking.ts';

const idOf = (entry: unknown): unknown => (isFields(entry) ? entry.change : entry);

const settingExamples = { bore: '19 mm', length: '1 m' } as const;

/** What is written for an alteration that is chosen: its short name, or its settings to be filled in. */
const entryFor = (id: string): unknown => {
  const settings = settingsOf(id);
  if (settings.length === 0) return id;
  return { change: id, ...Object.fromEntries(settings.map((name) => [name, settingExamples[name]])) };
};

/** Alterations of the hardware that go with a packing, each switched on or off. */
export function Alterations({ field }: { readonly field: PackingField }) {
  const { document, edit } = useForm();
  const family = familyById(String(valueAt(document, ['filter', 'family'])));
  const written = valueAt(document, [field, 'made']);
  const made: readonly unknown[] = Array.isArray(written) ? written : [];
  const ids = (family?.alterations ?? []).filter((id) => id !== 'move-trays');
  const turn = (id: string, isOn: boolean): void => {
    const next = isOn ? [...made, entryFor(id)] : made.filter((entry) => idOf(entry) !== id);
    const packing = packingIn(document, field);
    edit({
      says: `${isOn ? '' : 'do not '}${alterationKinds[id]?.says ?? id}`,
      recipe: (draft) => {
        putting([field, 'packing'], packing)(draft);
        putting([field, 'made'], next.length === 0 ? undefined : next)(draft);
      },
    });
  };
  return (
    <section aria-labelledby="alterations">
      <h3 id="alterations">Alterations</h3>
      <ul className="plain">
        {ids.map((id) => {
          const place = made.findIndex((entry) => idOf(entry) === id);
          return (
            <li key={id}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={place >= 0}
                  onChange={({ target }) => turn(id, target.checked)}
                />
                {alterationKinds[id]?.says ?? id}
              </label>
              {place < 0
                ? null
                : settingsOf(id).map((name) => <Field key={name} path={[field, 'made', place, name]} />)}
            </li>
          );
        })}
      </ul>
      {family?.forbidden.map((rule) => (
        <p key={rule} className="caution">
          {rule}
        </p>
      ))}
    </section>
  );
}
