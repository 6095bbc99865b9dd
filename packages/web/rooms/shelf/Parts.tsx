import { partPrices } from '@fettle/engine/planning/alterations.ts';
import { at } from '@fettle/job/schema/walk.ts';
import { inWords } from '../../app/words.ts';
import { Field } from '../../forms/Field.tsx';
import { useForm } from '../../forms/JobForm.tsx';
import { putting } from '../../forms/places.ts';
import { type Added, AddForm } from './AddForm.tsx';
import { Stock, StockRow } from './StockRow.tsx';
import { entriesOf, shortNameOf } from './shelfMedia.ts';
import { TakeAway } from './TakeAway.tsx';

const suggestions = Object.keys(partPrices).map((part) => ({ value: part, says: inWords(part) }));

function PartRow({ id, place }: { readonly id: string; readonly place: number }) {
  const path = ['parts', place];
  const name = inWords(id);
  return (
    <StockRow
      name={name}
      head={
        <>
          {name}
          {Object.hasOwn(partPrices, id) ? <p className="soft">used by alterations</p> : null}
        </>
      }
      cells={[
        <Field key="count" path={[...path, 'count']} label="In hand" of={name} />,
        <Field key="price" path={[...path, 'price']} label="Price" of={name} />,
        <Field key="bought" path={[...path, 'bought']} label="Bought" of={name} />,
      ]}
      moreName="More"
      more={<Field path={[...path, 'notes']} label="Notes" of={name} />}
      actions={<TakeAway path={path} name={name} heading="parts" />}
    />
  );
}

/** Parts in hand. */
export function Parts() {
  const { document, edit } = useForm();
  const ids = entriesOf(document, 'parts').map((entry) => String(at(entry, 'part')));
  const add = (typed: string): Added => {
    const part = shortNameOf(typed);
    if (part === '') return { ok: false, says: 'A name has at least one letter from a to z in it.' };
    if (ids.includes(part)) return { ok: false, says: `${inWords(part)} is on the shelf already.` };
    edit({ says: `add ${part}`, recipe: putting(['parts', ids.length], { part }) });
    return { ok: true };
  };
  return (
    <section aria-labelledby="parts">
      <h2 id="parts" tabIndex={-1}>
        Parts
      </h2>
      {ids.length === 0 ? (
        <p className="soft">
          No part yet. What a seal strip or a slot cover costs you goes into new jobs and into the cost of
          plans.
        </p>
      ) : (
        <Stock columns={['Part', 'In hand', 'Price', 'Bought']} says="Parts">
          {ids.map((id, place) => (
            <PartRow key={id} id={id} place={place} />
          ))}
        </Stock>
      )}
      <AddForm
        name="Name of a part"
        how={`Alterations use ${Object.keys(partPrices).map(inWords).join(', ')}; any other is for you.`}
        example="seal strip"
        suggestions={suggestions}
        understood={(typed) => {
          const id = shortNameOf(typed);
          return id === '' ? undefined : `short name ${id}`;
        }}
        button="Add a part"
        add={add}
      />
    </section>
  );
}
