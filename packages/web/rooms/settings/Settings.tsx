import { settingsSchema } from '@fettle/job/books/settings.ts';
import { BookRoom } from '../../books/BookRoom.tsx';
import { Field } from '../../forms/Field.tsx';
import { ReminderDays } from './ReminderDays.tsx';

/** What holds for every job of the workshop. */
export default function Settings() {
  return (
    <BookRoom name="settings" title="Settings" schema={settingsSchema}>
      <p>
        What holds for every job. All of it may stay empty; what a job says itself goes before what stands
        here. Everything is saved as it is typed.
      </p>
      <section aria-labelledby="workshop">
        <h2 id="workshop">Workshop</h2>
        <div className="fields">
          <Field path={['workshop']} label="Name of the workshop" how="It stands on sheets and write-ups." />
          <Field
            path={['units']}
            label="Units in which figures are shown"
            how="Metric where not stated. Fields take any usual unit either way."
          />
        </div>
      </section>
      <section aria-labelledby="money">
        <h2 id="money">Money</h2>
        <div className="fields">
          <Field
            path={['currency']}
            label="Currency of new jobs"
            how="Its three letters, such as GBP, EUR or USD. Tariff and labour are in the same."
          />
          <Field
            path={['tariff']}
            label="Price of electricity"
            how="From the owner's last bill, or the usual price where you work."
          />
          <Field path={['labour']} label="Price of an hour of your work" />
          <Field path={['quoteDays']} label="Days for which a quote holds" />
        </div>
      </section>
      <section aria-labelledby="reminders">
        <h2 id="reminders">After the hand-back</h2>
        <ReminderDays />
      </section>
    </BookRoom>
  );
}
