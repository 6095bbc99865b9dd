import type { JobSession, SessionState } from '../../session/jobSession.ts';

const words: Readonly<Record<SessionState['standing']['is'], string>> = {
  saved: 'Saved',
  unsaved: 'Saving in a moment',
  saving: 'Saving',
  unreached: 'Kept in this browser: the records cannot be reached; this is tried again',
  refused: 'Kept in this browser: not in the records until what is wrong is mended',
  conflict: 'Somebody else changed the same fields',
};

/** Whether the job is saved, and the way back. */
export function Standing({ state, session }: { readonly state: SessionState; readonly session: JobSession }) {
  const { past, future, standing } = state;
  return (
    <div className="standing">
      <p role="status" className={standing.is === 'saved' || standing.is === 'saving' ? 'soft' : 'marked'}>
        {words[standing.is]}
      </p>
      <button type="button" className="quiet" onClick={() => window.print()}>
        Print
      </button>
      <button
        type="button"
        disabled={past.length === 0}
        onClick={() => session.undo()}
        title={past.at(-1)?.says}
        aria-keyshortcuts="Control+Z"
      >
        Undo
      </button>
      <button
        type="button"
        disabled={future.length === 0}
        onClick={() => session.redo()}
        title={future[0]?.says}
        aria-keyshortcuts="Control+Shift+Z"
      >
        Redo
      </button>
    </div>
  );
}
