import type { OwnBooks } from '@fettle/job/books/fill.ts';
import { readSettings } from '@fettle/job/books/settings.ts';
import { readShelf } from '@fettle/job/books/shelf.ts';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useCallback, useMemo } from 'react';
import { readBookNamed } from '../client/books.ts';

const asked = (name: 'shelf' | 'settings') => ({
  queryKey: [name],
  queryFn: async (): Promise<unknown> => (await readBookNamed(name)).book,
});

const booksOf = (shelf: unknown, settings: unknown): OwnBooks => {
  const [readingOfShelf, readingOfSettings] = [readShelf(shelf), readSettings(settings)];
  return {
    shelf: readingOfShelf.ok ? readingOfShelf.shelf : {},
    settings: readingOfSettings.ok ? readingOfSettings.settings : {},
  };
};

/** The workshop's shelf and settings; each empty where it is not had yet, cannot be had or does not read. */
export function useOwnBooks(): OwnBooks {
  const [shelf, settings] = [useQuery(asked('shelf')), useQuery(asked('settings'))];
  return useMemo(() => booksOf(shelf.data ?? {}, settings.data ?? {}), [shelf.data, settings.data]);
}

/** Fetches the workshop's shelf and settings, for what must not be done before they are there; fails where they are not to be had. */
export function useOwnBooksWhole(): () => Promise<OwnBooks> {
  const queries = useQueryClient();
  return useCallback(async () => {
    const [shelf, settings] = await Promise.all([
      queries.fetchQuery(asked('shelf')),
      queries.fetchQuery(asked('settings')),
    ]);
    return booksOf(shelf, settings);
  }, [queries]);
}
