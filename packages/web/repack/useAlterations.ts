import { familyById } from '@fettle/engine/families/families.ts';
import type { Family } from '@fettle/engine/families/layout.ts';
import { useForm } from '../forms/JobForm.tsx';
import { putting, valueAt } from '../forms/places.ts';
import { idOf, turned } from './alterationEntries.ts';
import { packingIn } from './useRepacking.ts';

/** The alterations that go with a packing. */
export interface Alterable {
  readonly family: Family | undefined;
  /** Those that the family allows, by id, as they are listed. */
  readonly ids: readonly string[];
  /** As the document lists them. */
  readonly made: readonly unknown[];
  isMade(id: string): boolean;
  change(made: readonly unknown[], says: string): void;
  turn(id: string, isOn: boolean): void;
}

/** The alterations of what is planned, or as left, to be switched on and off. */
export function useAlterations(field: 'planned' | 'asLeft'): Alterable {
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
  return {
    family,
    // Beds are moved on the drawing itself.
    ids: (family?.alterations ?? []).filter((id) => id !== 'move-trays'),
    made,
    isMade: (id) => made.some((entry) => idOf(entry) === id),
    change,
    turn: (id, isOn) => {
      const next = turned(made, id, isOn);
      change(next.made, next.says);
    },
  };
}
