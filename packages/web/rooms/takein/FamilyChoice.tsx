import { families } from '@fettle/engine/families/families.ts';
import { useForm } from '../../forms/JobForm.tsx';
import { putting, valueAt } from '../../forms/places.ts';

/** Which kind of filter it is. */
export function FamilyChoice() {
  const { document, edit, problems } = useForm();
  const chosen = valueAt(document, ['filter', 'family']);
  const problem = problems.find(({ path }) => path === 'filter.family');
  return (
    <fieldset className="families" data-path="filter.family">
      <legend>Which kind of filter is it?</legend>
      {problem === undefined ? null : (
        <p className="fault" role="status">
          Choose the kind of filter.
        </p>
      )}
      {families.map(({ id, name, says }) => (
        <label key={id} className={chosen === id ? 'chosen' : ''}>
          <input
            type="radio"
            name="family"
            checked={chosen === id}
            onChange={() => edit({ says: 'family', recipe: putting(['filter', 'family'], id) })}
          />
          <span>
            <strong>{name}</strong>
            <br />
            {says}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
