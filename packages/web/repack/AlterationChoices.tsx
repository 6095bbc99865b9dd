import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { settingsOf } from '@fettle/job/alterationList.ts';
import type { FieldPath } from '@fettle/job/fieldPath.ts';
import { Field } from '../forms/Field.tsx';
import { idOf, turned } from './alterationEntries.ts';
import { letterOf } from './alterationMarks.ts';

/** Alterations to choose from, each switched on or off, with the settings of those that have any. */
export function AlterationChoices({
  ids,
  chosen,
  path,
  onChange,
  areMarked = false,
}: {
  readonly ids: readonly string[];
  /** As the document lists them. */
  readonly chosen: readonly unknown[];
  /** Where that list stands. */
  readonly path: FieldPath;
  readonly onChange: (chosen: readonly unknown[], says: string) => void;
  /** Whether the drawing has a mark for each. */
  readonly areMarked?: boolean;
}) {
  const turn = (id: string, isOn: boolean): void => {
    const { made, says } = turned(chosen, id, isOn);
    onChange(made, says);
  };
  return (
    <ul className="plain">
      {ids.map((id, index) => {
        const place = chosen.findIndex((entry) => idOf(entry) === id);
        return (
          <li key={id}>
            <label className="check">
              <input
                type="checkbox"
                checked={place >= 0}
                onChange={({ target }) => turn(id, target.checked)}
              />
              {areMarked ? (
                <span className="letter" aria-hidden="true">
                  {letterOf(index)}
                </span>
              ) : null}
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
