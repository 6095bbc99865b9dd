import { familyById } from '@fettle/engine/families/families.ts';
import { useForm } from '../forms/JobForm.tsx';
import { putting, valueAt } from '../forms/places.ts';
import { AlterationChoices } from './AlterationChoices.tsx';
import { packingIn } from './useRepacking.ts';

/** Alterations of the hardware that go with a packing. */
export function Alterations({ field }: { readonly field: 'planned' | 'asLeft' }) {
  const { document, edit } = useForm();
  const family = familyById(String(valueAt(document, ['filter', 'family'])));
  const written = valueAt(document, [field, 'made']);
  const made: readonly unknown[] = Array.isArray(written) ? written : [];
  const change = (next: readonly unknown[], says: string): void => {
    const packing = packingIn(document, field);
    edit({
      says,
      recipe: (draft) => {
        putting([field, 'packing'], packing)(draft);
        putting([field, 'made'], next.length === 0 ? undefined : next)(draft);
      },
    });
  };
  return (
    <section aria-labelledby="alterations">
      <h3 id="alterations">Alterations</h3>
      <AlterationChoices
        ids={(family?.alterations ?? []).filter((id) => id !== 'move-trays')}
        chosen={made}
        path={[field, 'made']}
        onChange={change}
      />
      {family?.forbidden.map((rule) => (
        <p key={rule} className="caution">
          {rule}
        </p>
      ))}
    </section>
  );
}
