import type { Problem } from '@fettle/job/problems.ts';
import type { QuickFigures } from '../computing/assessed.ts';
import { Drawn } from '../drawing/Drawn.tsx';
import { useForm } from '../forms/JobForm.tsx';
import { putting } from '../forms/places.ts';
import { MendPacking } from './MendPacking.tsx';
import type { LaterField } from './readablePart.ts';

const words: Readonly<
  Record<LaterField, { readonly title: string; readonly what: string; readonly before: string }>
> = {
  planned: { title: 'Re-pack', what: 'what is planned', before: 'the filter as found' },
  asLeft: { title: 'As left', what: 'what was left', before: 'the filter as it was before' },
};

interface WrongProps {
  readonly field: LaterField;
  readonly number: number;
  readonly problems: readonly Problem[];
  /** Of the state before; undefined where that cannot be drawn either. */
  readonly before: QuickFigures | undefined;
}

/** A later state that does not read: the fields that are wrong, to be mended or thrown away, beside what can be drawn. */
export function WrongLaterState({ field, number, problems, before }: WrongProps) {
  const { edit } = useForm();
  const { title, what, before: drawn } = words[field];
  return (
    <div className="part beside">
      {before === undefined ? (
        <p className="wait">The drawing comes when what is wrong is mended.</p>
      ) : (
        <figure className="section">
          <Drawn svg={before.drawing} />
          <figcaption>
            This is {drawn}: {what} cannot be drawn until it is mended.
          </figcaption>
        </figure>
      )}
      <div>
        <h2>{title}</h2>
        <MendPacking field={field} number={number} problems={problems} />
        <p className="buttons">
          <button
            type="button"
            onClick={() => edit({ says: `throw ${what} away`, recipe: putting([field], undefined) })}
          >
            Throw {what} away
          </button>
        </p>
        <p className="soft">Undo brings it back.</p>
      </div>
    </div>
  );
}
