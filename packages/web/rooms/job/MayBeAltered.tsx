import type { Family } from '@fettle/engine/families/layout.ts';
import { listAlterations } from '@fettle/job/alterationList.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { QuickFigures } from '../../computing/assessed.ts';
import { useForm } from '../../forms/JobForm.tsx';
import { putting, valueAt } from '../../forms/places.ts';
import { AlterationChoices } from '../../repack/AlterationChoices.tsx';
import { IdleAlterations } from './IdleAlterations.tsx';

/** The alterations that the document permits, as a plain list, whichever way it writes them. */
const permittedIn = (document: unknown): readonly unknown[] => {
  const written = valueAt(document, ['alterations']);
  if (Array.isArray(written)) return written;
  if (written === undefined) return [];
  // A document that reads has them in one of its two ways; one that does not shows none.
  const { permitted = [] } = listAlterations(written as NonNullable<JobDocument['alterations']>);
  return permitted.map(({ id, settings }) =>
    Object.keys(settings).length === 0 ? id : { change: id, ...settings },
  );
};

/** What plans may change on the hardware. */
export function MayBeAltered({
  family,
  found,
}: {
  readonly family: Family | undefined;
  readonly found: QuickFigures | undefined;
}) {
  const { document, edit } = useForm();
  return (
    <section aria-labelledby="may-be-altered">
      <h3 id="may-be-altered">What plans may alter</h3>
      <AlterationChoices
        ids={family?.alterations ?? []}
        chosen={permittedIn(document)}
        path={['alterations']}
        onChange={(next, says) => edit({ says: `permit: ${says}`, recipe: putting(['alterations'], next) })}
      />
      <IdleAlterations ids={family?.alterations ?? []} found={found} />
    </section>
  );
}
