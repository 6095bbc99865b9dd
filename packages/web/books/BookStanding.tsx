import type { BookAtWork, BookState, BookStanding as Standing } from './bookAtWork.ts';

const wordsOf = (standing: Standing): string => {
  switch (standing.is) {
    case 'saved':
      return 'Saved';
    case 'unsaved':
      return 'Saving in a moment';
    case 'saving':
      return 'Saving';
    case 'unreached':
      return 'Kept in this browser: the records cannot be reached; this is tried again';
    case 'wrong':
      return `Kept in this browser, not yet in the records: ${standing.says}`;
    case 'conflict':
      return 'Kept in this browser: somebody else changed the same fields';
  }
};

/** Whether a book is saved, and the way back. */
export function BookStanding({ work, state }: { readonly work: BookAtWork; readonly state: BookState }) {
  const { past, future, standing } = state;
  return (
    <div className="standing">
      <p role="status" className={standing.is === 'saved' || standing.is === 'saving' ? 'soft' : 'marked'}>
        {wordsOf(standing)}
      </p>
      <button
        type="button"
        disabled={past.length === 0}
        title={past.at(-1)?.says}
        onClick={() => work.undo()}
      >
        Undo
      </button>
      <button
        type="button"
        disabled={future.length === 0}
        title={future[0]?.says}
        onClick={() => work.redo()}
      >
        Redo
      </button>
    </div>
  );
}
