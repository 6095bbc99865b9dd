import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { settingsOf } from '@fettle/job/alterationList.ts';
import type { FieldPath } from '@fettle/job/fieldPath.ts';
import { isFields } from '@fettle/job/schema/walk.ts';
import { Field } from '../forms/Field.tsx';

const idOf = (entry: unknown): unknown => (isFields(entry) ? entry.change : entry);

const settingExamples = { bore: '19 mm', length: '1 m' } as const;

/** What is written for an alteration that is chosen: its short name, or its settings to be filled in. */
const entryFor = (id: string): unknown => {
  const settings = settingsOf(id);
  if (settings.length === 0) return id;
  return { change: id, ...Object.fromEntries(settings.map((name) => [name, settingExamples[name]])) };
};

/** Alterations to choose from, each switched on or off, with the settings of those that have any. */
export function AlterationChoices({
  ids,
  chosen,
  path,
  onChange,
}: {
  readonly ids: readonly string[];
  /** As the document lists them. */
  readonly chosen: readonly unknown[];
  /** Where that list stands. */
  readonly path: FieldPath;
  readonly onChange: (chosen: readonly unknown[], says: string) => void;
}) {
  const turn = (id: string, isOn: boolean): void => {
    const next = isOn ? [...chosen, entryFor(id)] : chosen.filter((entry) => idOf(entry) !== id);
    onChange(next, `${isOn ? '' : 'do not '}${alterationKinds[id]?.says ?? id}`);
  };
  return (
    <ul className="plain">
      {ids.map((id) => {
        const place = chosen.findIndex((entry) => idOf(entry) === id);
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
              : settingsOf(id).map((name) => <Field key={name} path={[...path, place, name]} />)}
          </li>
        );
      })}
    </ul>
  );
}
