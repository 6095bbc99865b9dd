import type { ReactNode } from 'react';
import { Field } from '../../forms/Field.tsx';
import { useForm } from '../../forms/JobForm.tsx';
import { putting } from '../../forms/places.ts';
import { FiguresOf } from './FiguresOf.tsx';
import { focusOn } from './focusOn.ts';
import { Hatch } from './Hatch.tsx';
import { OwnMediumFields } from './OwnMediumFields.tsx';
import { Stock, StockRow } from './StockRow.tsx';
import { entriesOf, type ShownMedium } from './shelfMedia.ts';
import { TakeAway } from './TakeAway.tsx';

const nameOf = ({ id, medium }: ShownMedium): string => medium?.name ?? id;

function Head({ shown }: { readonly shown: ShownMedium }) {
  const { medium, isOwn, place } = shown;
  const { problems } = useForm();
  const wrong = problems.find(({ path }) => path === `media[${place}].medium`)?.says;
  return (
    <div className="mediumhead">
      {medium === undefined ? null : <Hatch medium={medium} />}
      <div>
        {nameOf(shown)}
        <p className="soft">
          {medium?.stage ?? 'not known'}
          {isOwn ? ', yours' : ''}
        </p>
        {wrong === undefined ? null : (
          <p className="fault" role="status">
            {wrong}
          </p>
        )}
      </div>
    </div>
  );
}

function More({ shown, children }: { readonly shown: ShownMedium; readonly children?: ReactNode }) {
  return (
    <>
      {shown.isOwn ? <OwnMediumFields id={shown.id} name={nameOf(shown)} /> : null}
      {shown.medium === undefined ? null : <FiguresOf medium={shown.medium} />}
      {children}
    </>
  );
}

/** What is in hand, with its amount and price. */
export function MediaOnShelf({ media }: { readonly media: readonly ShownMedium[] }) {
  return (
    <Stock columns={['Medium', 'In hand', 'Price', 'Bought']} says="Media on the shelf">
      {media.map((shown) => {
        const path = ['media', shown.place ?? 0];
        const name = nameOf(shown);
        return (
          <StockRow
            key={shown.id}
            name={name}
            head={<Head shown={shown} />}
            cells={[
              <Field key="amount" path={[...path, 'amount']} label="In hand" of={name} />,
              <Field key="price" path={[...path, 'price']} label="Price" of={name} />,
              <Field key="bought" path={[...path, 'bought']} label="Bought" of={name} />,
            ]}
            moreName="Figures"
            more={
              <More shown={shown}>
                <Field path={[...path, 'notes']} label="Notes" of={name} />
              </More>
            }
            actions={<TakeAway path={path} name={name} heading="media" />}
          />
        );
      })}
    </Stock>
  );
}

/** What could be on the shelf: own media that are not on it, and the catalogue. */
export function OtherMedia({ media }: { readonly media: readonly ShownMedium[] }) {
  const { document, edit } = useForm();
  const count = entriesOf(document, 'media').length;
  return (
    <Stock columns={['Medium']} says="Media that are not on the shelf">
      {media.map((shown) => (
        <StockRow
          key={shown.id}
          name={nameOf(shown)}
          head={<Head shown={shown} />}
          cells={[]}
          moreName="Figures"
          more={<More shown={shown} />}
          actions={
            <>
              <button
                type="button"
                onClick={() => {
                  const recipe = putting(['media', count], { medium: shown.id });
                  edit({ says: `put ${nameOf(shown)} on the shelf`, recipe });
                  focusOn('catalogue');
                }}
              >
                Put on the shelf<span className="unseen"> {nameOf(shown)}</span>
              </button>
              {shown.isOwn ? (
                <TakeAway path={['ownMedia', shown.id]} name={nameOf(shown)} heading="catalogue" />
              ) : null}
            </>
          }
        />
      ))}
    </Stock>
  );
}
