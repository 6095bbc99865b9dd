import { changesBetween } from '@fettle/job/changes/changes.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { useQuery } from '@tanstack/react-query';
import { readRevision } from '../client/history.ts';
import { useQuick } from '../computing/useQuick.ts';
import { Drawn } from '../drawing/Drawn.tsx';
import { problemInWords } from '../forms/problemInWords.ts';
import type { JobAtWork } from '../rooms/job/jobAtWork.ts';
import { Changes } from './Changes.tsx';
import { fieldInWords } from './fieldInWords.ts';

interface LookProps {
  readonly work: JobAtWork;
  readonly revision: number;
}

/** The filter as it was drawn from a revision. */
function EarlierSection({ work, document }: { readonly work: JobAtWork; readonly document: JobDocument }) {
  const { quick, problems } = useQuick(document, { system: work.system, state: 'as-found' });
  const [wrong] = problems;
  if (wrong !== undefined)
    return <p>It cannot be drawn: {problemInWords(wrong, fieldInWords(document, wrong.path))}</p>;
  if (quick === undefined) return <p className="wait">Drawing it…</p>;
  return (
    <figure className="section">
      <Drawn svg={quick.drawing} />
    </figure>
  );
}

function Differences({ work, document }: { readonly work: JobAtWork; readonly document: JobDocument }) {
  const changes = changesBetween(work.state.document, document);
  if (changes.length === 0) return <p>It says what the job says now.</p>;
  return (
    <>
      <p>Going back to it would change:</p>
      <Changes document={document} changes={changes} />
    </>
  );
}

/** One earlier revision: how the filter was drawn then, and in what it differs from the job as it stands. */
export function EarlierRevision({ work, revision }: LookProps) {
  const { number } = work.state;
  const found = useQuery({
    queryKey: ['revision', number, revision],
    queryFn: () => readRevision(number, revision),
    // What a revision says never changes.
    staleTime: Infinity,
  });
  if (found.isError)
    return (
      <p className="fault" role="alert">
        Revision {revision} cannot be shown: {found.error.message}
      </p>
    );
  if (found.data === undefined) return <p className="wait">Fetching revision {revision}…</p>;
  return (
    <div className="earlier">
      <Differences work={work} document={found.data} />
      <EarlierSection work={work} document={found.data} />
    </div>
  );
}
