import { readSettings } from '@fettle/job/books/settings.ts';
import { describe, expect, it } from 'vitest';
import { daysOf, daysText } from './days.ts';

describe('days of reminders as they are typed', () => {
  it.each(['1, 3, 28', '1 3 28', ' 1;3,, 28 '])('%j are three days', (typed) => {
    expect(daysOf(typed)).toEqual([1, 3, 28]);
    expect(daysText(daysOf(typed))).toBe('1, 3, 28');
  });

  it('that are none come to the settings as they stand, which say what is wrong', () => {
    const reminderDays = daysOf('1, soon, 2.5');
    expect(daysText(reminderDays)).toBe('1, soon, 2.5');
    const reading = readSettings({ reminderDays });
    expect(reading.ok ? [] : reading.problems.map(({ path }) => path)).toEqual([
      'reminderDays[1]',
      'reminderDays[2]',
    ]);
  });
});
