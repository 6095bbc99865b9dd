import { usualReminderDays } from '@fettle/job/books/settings.ts';
import { Framed } from '../../forms/Framed.tsx';
import { useForm } from '../../forms/JobForm.tsx';
import { putting, valueAt } from '../../forms/places.ts';
import { useTyped } from '../../forms/useTyped.ts';
import { daysOf, daysText } from './days.ts';

const path = ['reminderDays'];
const name = 'Days on which the owner is reminded';

function OwnDays({ put }: { readonly put: (days: unknown) => void }) {
  const { document, problems } = useForm();
  const { typed, type, commitNow } = useTyped(daysText(valueAt(document, path)), (text) => put(daysOf(text)));
  const says = problems.find((problem) => problem.path.startsWith('reminderDays'))?.says;
  const wrong = says?.replace(/^reminderDays\[(\d+)\]/, (_, place) => `Entry ${Number(place) + 1}`);
  return (
    <Framed
      name="Days after the hand-back"
      how="Whole numbers with commas between them, each once, in any order. None at all where empty."
      {...(wrong === undefined ? {} : { problem: wrong })}
    >
      {(input) => (
        <input
          {...input}
          type="text"
          value={typed}
          placeholder="such as 2, 7, 14"
          onChange={({ target }) => type(target.value)}
          onBlur={commitNow}
        />
      )}
    </Framed>
  );
}

/** When the owner is reminded to send a reading: the usual days, days of the workshop's own, or never. */
export function ReminderDays() {
  const { document, edit } = useForm();
  const days = valueAt(document, path);
  const put = (next: unknown): void => edit({ says: name, key: 'reminderDays', recipe: putting(path, next) });
  return (
    <div className="fields">
      <Framed name={name} how="A reading some days on is what shows whether the work held.">
        {(input) => (
          <select
            {...input}
            value={days === undefined ? 'usual' : 'own'}
            onChange={({ target }) => put(target.value === 'usual' ? undefined : [...usualReminderDays])}
          >
            <option value="usual">the usual: {usualReminderDays.join(', ')}</option>
            <option value="own">days of your own</option>
          </select>
        )}
      </Framed>
      {days === undefined ? null : <OwnDays put={put} />}
    </div>
  );
}
