import { type Hose, hoses } from '@fettle/engine/catalogue/hoses.ts';
import { printBoth } from '@fettle/engine/quantities/printQuantity.ts';
import { shelfBookSchema } from '@fettle/job/books/shelf.ts';
import { readField } from '@fettle/job/schema/fields.ts';
import { at } from '@fettle/job/schema/walk.ts';
import { Field } from '../../forms/Field.tsx';
import { useForm } from '../../forms/JobForm.tsx';
import { putting } from '../../forms/places.ts';
import { understand, writtenText } from '../../forms/understood.ts';
import { type Added, AddForm } from './AddForm.tsx';
import { hosesOfBore } from './hosesOfBore.ts';
import { Stock, StockRow } from './StockRow.tsx';
import { entriesOf } from './shelfMedia.ts';
import { TakeAway } from './TakeAway.tsx';

const boreSchema = shelfBookSchema.shape.hoses.unwrap().element.shape.bore;

const suggestions = Object.values(hoses).map(({ name, boreM }) => ({
  value: name.endsWith(' in hose')
    ? name.replace(' hose', '')
    : `${Number((1000 * boreM.value).toPrecision(4))} mm`,
  says: name,
}));

const flowText = ({ usualFlow: { leastM3PerS, mostM3PerS } }: Hose): string =>
  `${printBoth({ value: leastM3PerS, dimension: 'flow' })} to ${printBoth({ value: mostM3PerS, dimension: 'flow' })}`;

/** What the catalogue has of a hose of this bore. */
function AsSold({ bore }: { readonly bore: unknown }) {
  const reading = readField(boreSchema, bore);
  const sold = reading.ok ? hosesOfBore(reading.value) : [];
  if (sold.length === 0) return <p className="soft">The catalogue has no hose of this bore.</p>;
  return (
    <dl className="ofmedium">
      {sold.map((hose) => (
        <div key={hose.id}>
          <dt>sold as {hose.name}</dt>
          <dd>
            <strong>usually for {flowText(hose)}</strong>{' '}
            <span className="soft">
              {hose.usualFlow.source.text}; bore {hose.boreM.source.text}
            </span>
          </dd>
        </div>
      ))}
    </dl>
  );
}

function HoseRow({ hose, place }: { readonly hose: unknown; readonly place: number }) {
  const path = ['hoses', place];
  const bore = at(hose, 'bore');
  const name = `${writtenText(bore)} hose`;
  const understood = understand(boreSchema, writtenText(bore));
  return (
    <StockRow
      name={name}
      head={
        <>
          {name}
          {understood.is === 'understood' ? <p className="soft">{understood.says}</p> : null}
        </>
      }
      cells={[
        <Field key="length" path={[...path, 'length']} label="In hand" of={name} />,
        <Field key="metre" path={[...path, 'pricePerMetre']} label="Price of a metre" of={name} />,
        <Field key="each" path={[...path, 'priceEach']} label="Price of a piece" of={name} />,
        <Field key="bought" path={[...path, 'bought']} label="Bought" of={name} />,
      ]}
      moreName="More"
      more={
        <>
          <AsSold bore={bore} />
          <Field path={[...path, 'notes']} label="Notes" of={name} />
        </>
      }
      actions={<TakeAway path={path} name={name} heading="hoses" />}
    />
  );
}

/** Hoses in hand. */
export function Hoses() {
  const { document, edit } = useForm();
  const entries = entriesOf(document, 'hoses');
  const add = (bore: string): Added => {
    const understood = understand(boreSchema, bore);
    if (understood.is !== 'understood')
      return { ok: false, says: understood.is === 'wrong' ? understood.says : 'Nothing is written.' };
    edit({ says: `add ${bore} hose`, recipe: putting(['hoses', entries.length], { bore }) });
    return { ok: true };
  };
  return (
    <section aria-labelledby="hoses">
      <h2 id="hoses" tabIndex={-1}>
        Hoses
      </h2>
      {entries.length === 0 ? (
        <p className="soft">
          No hose yet. A price for a metre goes into new jobs, and into the cost of plans that change a hose.
        </p>
      ) : (
        <Stock columns={['Hose', 'In hand', 'Price of a metre', 'Price of a piece', 'Bought']} says="Hoses">
          {entries.map((hose, place) => (
            // The same hose may lie there twice: its place is all that tells it apart.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <HoseRow key={`${place}-${entries.length}`} hose={hose} place={place} />
          ))}
        </Stock>
      )}
      <AddForm
        name="Bore of a hose"
        how="Inside diameter, not what goes round a barb: 12 mm and 1/2 in are two hoses."
        example="16 mm or 5/8 in"
        suggestions={suggestions}
        understood={(typed) => {
          const understood = understand(boreSchema, typed);
          return understood.is === 'understood' ? understood.says : undefined;
        }}
        button="Add a hose"
        add={add}
      />
    </section>
  );
}
