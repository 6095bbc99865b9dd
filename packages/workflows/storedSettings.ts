import { readSettings, type Settings } from '@fettle/job/books/settings.ts';
import type { Store } from '@fettle/store/contract/store.ts';

/** The workshop's settings as the records hold them; empty where an earlier version let in what reads no more. */
export async function storedSettings({ books }: Pick<Store, 'books'>): Promise<Settings> {
  const { body } = await books.find('settings');
  const reading = readSettings(body ?? {});
  return reading.ok ? reading.settings : {};
}
