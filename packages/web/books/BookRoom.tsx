import type { BookName } from '@fettle/store/contract/books.ts';
import { type ReactNode, useEffect } from 'react';
import type * as z from 'zod';
import { JobForm } from '../forms/JobForm.tsx';
import { BookStanding } from './BookStanding.tsx';
import type { BookAtWork } from './bookAtWork.ts';
import { TheirChange } from './TheirChange.tsx';
import { problemsOf, useBook, useBookState } from './useBook.ts';

interface RoomOfBook {
  readonly name: BookName;
  readonly title: string;
  readonly schema: z.core.$ZodType;
  readonly children: ReactNode;
}

/** The room of one of the technician's books: its fields belong to the book and are saved as they are typed. */
export function BookRoom(room: RoomOfBook) {
  const { name, title } = room;
  const opened = useBook(name);
  useEffect(() => {
    document.title = `${title} · Fettle`;
  }, [title]);
  if (opened === undefined) return <p className="wait">Opening the {name}…</p>;
  if ('work' in opened) return <OpenRoom {...room} work={opened.work} />;
  return (
    <main className="narrow">
      <h1>The {name} cannot be opened</h1>
      <p className="fault" role="alert">
        {opened.failure.message}
      </p>
      <button type="button" onClick={() => window.location.reload()}>
        Try again
      </button>
    </main>
  );
}

function OpenRoom({ name, title, schema, work, children }: RoomOfBook & { readonly work: BookAtWork }) {
  const state = useBookState(work, name);
  const { book } = state;
  const form = { document: book, schema, problems: problemsOf(name, book), givens: [], edit: work.edit };
  return (
    <main>
      <div className="jobhead">
        <h1>{title}</h1>
        <BookStanding work={work} state={state} />
      </div>
      <TheirChange work={work} state={state} />
      <JobForm value={form}>{children}</JobForm>
    </main>
  );
}
