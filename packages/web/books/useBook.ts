import { readSettings } from '@fettle/job/books/settings.ts';
import { readShelf } from '@fettle/job/books/shelf.ts';
import type { Problem } from '@fettle/job/problems.ts';
import type { BookName } from '@fettle/store/contract/books.ts';
import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useState, useSyncExternalStore } from 'react';
import { type Book, readBookNamed, writeBook } from '../client/books.ts';
import { keepInStep } from '../session/keepInStep.ts';
import { type BookAtWork, type BookState, type BookTools, openBook } from './bookAtWork.ts';
import { browserBookKeeper } from './keptBook.ts';

/** Between two looks whether somebody else changed the book, ms. */
const lookEveryMs = 10_000;

const readings = { shelf: readShelf, settings: readSettings };

/** Everything that is wrong with a book. */
export const problemsOf = (name: BookName, book: Book): readonly Problem[] => {
  const reading = readings[name](book);
  return reading.ok ? [] : reading.problems;
};

const browserTools = (name: BookName): BookTools => ({
  records: { read: () => readBookNamed(name), write: (of) => writeBook(name, of) },
  keeper: browserBookKeeper(name),
  wrongIn: (book) => problemsOf(name, book).length,
});

/** A book that is open at work, or why it cannot be opened; undefined until either is known. */
export type OpenedBook = { readonly work: BookAtWork } | { readonly failure: Error };

/** Opens a book at work for as long as its room is shown. */
export function useBook(name: BookName): OpenedBook | undefined {
  const [opened, setOpened] = useState<OpenedBook>();
  useEffect(() => {
    let isLeft = false;
    let close = (): void => {
      isLeft = true;
    };
    openBook(browserTools(name)).then(
      (work) => {
        const stop = keepInStep(work, lookEveryMs);
        close = () => {
          stop();
          void work.flush().finally(() => work.close());
        };
        if (isLeft) close();
        else setOpened({ work });
      },
      (error: unknown) => setOpened({ failure: error instanceof Error ? error : new Error(String(error)) }),
    );
    return () => close();
  }, [name]);
  return opened;
}

/** The state of a book at work, which the component follows. What is saved is what the other rooms then find. */
export function useBookState(work: BookAtWork, name: BookName): BookState {
  const state = useSyncExternalStore(work.subscribe, work.state);
  const queries = useQueryClient();
  useEffect(() => {
    queries.setQueryData([name], state.base);
  }, [queries, name, state.base]);
  return state;
}
