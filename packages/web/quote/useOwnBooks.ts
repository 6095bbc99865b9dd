import type { OwnBooks } from '@fettle/job/books/fill.ts';
import { readSettings } from '@fettle/job/books/settings.ts';
import { readShelf } from '@fettle/job/books/shelf.ts';
import { useQuery } from '@tanstack/react-query';
import { readBookNamed } from '../client/books.ts';

/** The workshop's shelf and settings; each empty where it cannot be had or does not read. */
export function useOwnBooks(): OwnBooks {
  const [shelf, settings] = [useBookNamed('shelf'), useBookNamed('settings')];
  const [readingOfShelf, readingOfSettings] = [readShelf(shelf), readSettings(settings)];
  return {
    shelf: readingOfShelf.ok ? readingOfShelf.shelf : {},
    settings: readingOfSettings.ok ? readingOfSettings.settings : {},
  };
}

const useBookNamed = (name: 'shelf' | 'settings'): unknown =>
  useQuery({ queryKey: [name], queryFn: async () => (await readBookNamed(name)).book }).data ?? {};
