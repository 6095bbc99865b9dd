import type { FieldPath } from '@fettle/job/fieldPath.ts';
import { useForm } from '../../forms/JobForm.tsx';
import { putting } from '../../forms/places.ts';
import { focusOn } from './focusOn.ts';

/** Takes one thing off the shelf; what is gone is brought back by undoing it. */
export function TakeAway({
  path,
  name,
  heading,
}: {
  readonly path: FieldPath;
  readonly name: string;
  readonly heading: string;
}) {
  const { edit } = useForm();
  return (
    <button
      type="button"
      className="quiet"
      onClick={() => {
        edit({ says: `take away ${name}`, recipe: putting(path, undefined) });
        focusOn(heading);
      }}
    >
      Take away<span className="unseen"> {name}</span>
    </button>
  );
}
