import { media as catalogue } from '@fettle/engine/catalogue/media.ts';
import { at } from '@fettle/job/schema/walk.ts';
import { useState } from 'react';
import { useForm } from '../../forms/JobForm.tsx';
import { putting, valueAt } from '../../forms/places.ts';
import { type Added, AddForm } from './AddForm.tsx';
import { LikeField } from './LikeField.tsx';
import { entriesOf, shortNameOf } from './shelfMedia.ts';

const firstOfCatalogue = Object.keys(catalogue)[0] ?? '';

/** A medium that the catalogue does not have: a name, and what it is most like. */
export function AddOwnMedium() {
  const { document, edit } = useForm();
  const [like, setLike] = useState(firstOfCatalogue);
  const add = (name: string): Added => {
    const id = shortNameOf(name);
    if (id === '') return { ok: false, says: 'A name begins with a letter from a to z somewhere in it.' };
    const isTaken = Object.hasOwn(catalogue, id) || valueAt(document, ['ownMedia', id]) !== undefined;
    if (isTaken) return { ok: false, says: `There is a medium ${id} already: give this one another name.` };
    const entries = entriesOf(document, 'media');
    const place = entries.length;
    edit({
      says: `add ${name}`,
      recipe: (draft) => {
        putting(['ownMedia', id], { like, name })(draft);
        if (!entries.some((entry) => at(entry, 'medium') === id))
          putting(['media', place], { medium: id })(draft);
      },
    });
    return { ok: true };
  };
  return (
    <AddForm
      name="Its name"
      how="What you call it; jobs know it by its short name."
      example="short ceramic rings"
      understood={(typed) => {
        const id = shortNameOf(typed);
        return id === '' ? undefined : `short name ${id}`;
      }}
      button="Add a medium of your own"
      add={add}
    >
      <LikeField like={like} choose={setLike} />
    </AddForm>
  );
}
