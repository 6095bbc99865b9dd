import type { RevisionSummary } from '@fettle/store/contract/jobs.ts';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useSearchParams } from 'wouter';
import { listRevisions } from '../../../client/history.ts';
import { Changes } from '../../../history/Changes.tsx';
import { EarlierRevision } from '../../../history/EarlierRevision.tsx';
import { momentInWords, revisionWords } from '../../../history/revisionWords.ts';
import { type GoingBack, useGoingBack } from '../../../history/useGoingBack.ts';
import type { JobAtWork } from '../jobAtWork.ts';

/** So many stand there at once; the rest comes when it is asked for. */
const mostAtOnce = 30;

interface EntryProps {
  readonly work: JobAtWork;
  readonly summary: RevisionSummary;
  readonly isNewest: boolean;
  readonly isLooked: boolean;
  readonly look: (revision: number | undefined) => void;
  readonly going: GoingBack;
}

function Buttons({ summary: { revision }, isLooked, look, going }: EntryProps) {
  return (
    <p className="buttons noprint">
      <button
        type="button"
        className="quiet"
        aria-expanded={isLooked}
        onClick={() => look(isLooked ? undefined : revision)}
      >
        {isLooked ? 'Fold it up' : 'Look at it'}
        <span className="unseen">: revision {revision}</span>
      </button>
      <button type="button" disabled={going.isGoing} onClick={() => going.to(revision)}>
        Go back to this<span className="unseen">: revision {revision}</span>
      </button>
    </p>
  );
}

function Entry(props: EntryProps) {
  const { work, summary, isNewest, isLooked } = props;
  const { revision, at, by, changes } = summary;
  return (
    <li className="revision">
      <h3>
        Revision {revision}, {revisionWords(summary)}
        {isNewest ? ': as it stands' : ''}
      </h3>
      <p className="soft">
        <time dateTime={at}>{momentInWords(at)}</time>, by {by}
      </p>
      <Changes document={work.state.document} changes={changes} />
      {isNewest ? null : <Buttons {...props} />}
      {isLooked && !isNewest ? <EarlierRevision work={work} revision={revision} /> : null}
    </li>
  );
}

/** Every revision of the job, newest first; any of them can be looked at and taken up again. */
export function History({ work }: { readonly work: JobAtWork }) {
  const { session, state } = work;
  const [asked, setAsked] = useSearchParams();
  const [count, setCount] = useState(mostAtOnce);
  const going = useGoingBack(session);
  const found = useQuery({
    queryKey: ['revisions', state.number, state.revision],
    queryFn: () => listRevisions(state.number),
    placeholderData: (before) => before,
  });
  const newestFirst = (found.data ?? []).toReversed();
  const look = (revision: number | undefined): void =>
    setAsked(revision === undefined ? {} : { look: String(revision) }, { replace: true });
  return (
    <div className="part">
      <h2>History</h2>
      <p>Every change is kept. Going back makes a new revision, so it can be taken back as well.</p>
      <p role="status" className={going.isFault ? 'fault' : 'told'}>
        {going.isGoing ? 'Going back…' : going.told}
      </p>
      {found.isError ? (
        <p className="fault" role="alert">
          The history cannot be shown: {found.error.message}
        </p>
      ) : null}
      <ol className="revisions" aria-busy={found.isFetching}>
        {newestFirst.slice(0, count).map((summary, place) => (
          <Entry
            key={summary.revision}
            work={work}
            summary={summary}
            isNewest={place === 0}
            isLooked={asked.get('look') === String(summary.revision)}
            look={look}
            going={going}
          />
        ))}
      </ol>
      {newestFirst.length <= count ? null : (
        <button type="button" onClick={() => setCount(count + mostAtOnce)}>
          Older revisions ({newestFirst.length - count} more)
        </button>
      )}
    </div>
  );
}
