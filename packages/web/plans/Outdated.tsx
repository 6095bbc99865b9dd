import { useRevision } from '../client/useRevision.ts';
import type { JobSession } from '../session/jobSession.ts';
import { useSessionState } from '../session/useJobSession.ts';
import { isSearchedAlike } from './searchedFields.ts';

/** Says so where filter, tank or prices were changed since plans were searched for. */
export function Outdated({ session, revision }: { readonly session: JobSession; readonly revision: number }) {
  const { number, document } = useSessionState(session);
  const { data: searched } = useRevision(number, revision);
  if (searched === undefined || isSearchedAlike({ ...searched }, document)) return null;
  return (
    <p role="status" className="marked">
      The job was changed since: these plans and their figures are of the filter, tank and prices of revision{' '}
      {revision}. Search again before you take one.
    </p>
  );
}
