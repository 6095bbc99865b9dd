import { rulesOf } from '@fettle/engine/families/families.ts';
import { memo } from 'react';
import { AlterationChoices } from './AlterationChoices.tsx';
import { useAlterations } from './useAlterations.ts';

/** Alterations of the hardware that go with a packing; each has its mark on the drawing. */
export const Alterations = memo(({ field }: { readonly field: 'planned' | 'asLeft' }) => {
  const { family, ids, made, change } = useAlterations(field);
  return (
    <section aria-labelledby="alterations">
      <h3 id="alterations">Alterations</h3>
      <AlterationChoices ids={ids} chosen={made} path={[field, 'made']} onChange={change} areMarked />
      {(family === undefined ? [] : rulesOf(family)).map((rule) => (
        <p key={rule} className="caution">
          {rule}
        </p>
      ))}
    </section>
  );
});
