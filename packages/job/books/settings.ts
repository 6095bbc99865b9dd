import * as z from 'zod';
import { checkTwice } from '../checks/names.ts';
import type { Partly } from '../draft.ts';
import { type Problem, problem } from '../problems.ts';
import { oneOf, readField, text, wholeNumber } from '../schema/fields.ts';
import { currency, moneySchema } from '../schema/money.ts';
import { type BookKind, type BookReading, bookList, readBook, readBookText } from './book.ts';

/** Days after hand-back on which the owner is reminded of a reading, where the settings name none. */
export const usualReminderDays: readonly number[] = [1, 3, 5, 7, 14, 28];

/** What holds for every job of the workshop. Empty is as good as any other. */
export const settingsSchema = z.strictObject({
  workshop: text({
    says: 'name of the workshop on sheets',
    example: 'Workshop at the old harbour',
  }).optional(),
  units: oneOf(['metric', 'us'], {
    says: 'units in which figures are shown; metric where absent',
  }).optional(),
  currency: currency('currency of new jobs, by its three letters').optional(),
  tariff: moneySchema.shape.tariff,
  labour: moneySchema.shape.labour,
  reminderDays: bookList(
    wholeNumber({ says: 'days after hand-back', example: '7', least: 1, most: 3650 }),
    `days after hand-back on which the owner is reminded of a reading, each once, in any order; ${usualReminderDays.join(', ')} where absent, none where empty`,
  ).optional(),
  quoteDays: wholeNumber({
    says: 'for how many days a quote usually holds',
    example: '30',
    least: 1,
    most: 3650,
  }).optional(),
});

export type Settings = z.infer<typeof settingsSchema>;

export type SettingsReading =
  | { readonly ok: true; readonly settings: Settings }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const kind: BookKind<typeof settingsSchema> = {
  schema: settingsSchema,
  name: 'the settings',
  check: checkSettings,
};

const toSettings = (reading: BookReading<Settings>): SettingsReading =>
  reading.ok ? { ok: true, settings: reading.book } : reading;

/** Reads the settings from plain data: as they were written, or everything that is wrong with them. */
export function readSettings(value: unknown): SettingsReading {
  return toSettings(readBook(value, kind));
}

/** Reads the settings from the text of a file: as they were written, or everything that is wrong, with lines. */
export function readSettingsText(source: string | Uint8Array): SettingsReading {
  return toSettings(readBookText(source, kind));
}

/** The days of reminders, soonest first. */
export function reminderDaysOf({ reminderDays }: Settings): readonly number[] {
  return (reminderDays ?? usualReminderDays).toSorted((one, other) => one - other);
}

/** Rates in one currency, and no day twice. */
function checkSettings(settings: Partly<Settings>): readonly Problem[] {
  const rates = (['tariff', 'labour'] as const).flatMap((name) => {
    if (settings[name] === undefined) return [];
    const rate = readField(settingsSchema.shape[name], settings[name]);
    return rate.ok && rate.currency !== undefined ? [{ name, found: rate.currency }] : [];
  });
  const one = settings.currency ?? rates[0]?.found;
  const days = (settings.reminderDays ?? []).map((day, index) => ({
    id: day === undefined ? undefined : String(day),
    path: ['reminderDays', index],
  }));
  return [
    ...rates.flatMap(({ name, found }) => {
      if (one === undefined || found === one) return [];
      const facts = { found, currency: one, of: "the settings'" };
      return [problem('currency-mismatch', [name], { facts, allowed: one })];
    }),
    ...checkTwice(days),
  ];
}
