import { media as catalogue } from '@fettle/engine/catalogue/media.ts';
import type { Resistance } from '@fettle/engine/model/medium.ts';
import { Field } from '../../forms/Field.tsx';
import { useForm } from '../../forms/JobForm.tsx';
import { putting, valueAt } from '../../forms/places.ts';
import { LikeField } from './LikeField.tsx';

/** What an own medium may say of what resists the water in it, by the law of the one that it is like. */
const lawFields: Readonly<Record<Resistance['law'], readonly string[]>> = {
  foam: ['cell', 'voidage'],
  fibre: ['fibre', 'solid'],
  grains: ['size', 'voidage'],
  hollow: ['size', 'voidage', 'surface'],
};

const otherFields: readonly string[] = [
  'stage',
  'form',
  'area',
  'density',
  'depositFactor',
  'care',
  'bacteriaKept',
  'life',
];

/** The figures of a medium of one's own: what is left empty is that of the medium that it is most like. */
export function OwnMediumFields({ id, name }: { readonly id: string; readonly name: string }) {
  const { document, edit } = useForm();
  const path = ['ownMedia', id];
  const like = String(valueAt(document, [...path, 'like']) ?? '');
  const ofLaw = Object.hasOwn(catalogue, like) ? lawFields[catalogue[like]!.resistance.law] : [];
  // What was stated for another law is shown until it is taken away: it stands in the way of saving.
  const misplaced = Object.values(lawFields)
    .flat()
    .filter((field) => !ofLaw.includes(field) && valueAt(document, [...path, field]) !== undefined);
  return (
    <>
      <p className="soft">
        Yours: what you leave empty is as with the medium that it is most like, with the doubt of that.
      </p>
      <div className="fields">
        <Field path={[...path, 'name']} of={name} />
        <LikeField
          like={like}
          of={name}
          choose={(next) => edit({ says: `what ${name} is like`, recipe: putting([...path, 'like'], next) })}
        />
        {[...new Set([...ofLaw, ...misplaced, ...otherFields])].map((field) => (
          <Field key={field} path={[...path, field]} of={name} />
        ))}
      </div>
    </>
  );
}
