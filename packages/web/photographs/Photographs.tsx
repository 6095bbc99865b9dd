import { useQuery } from '@tanstack/react-query';
import { listPhotographs } from '../client/photographs.ts';
import { AddPhotographs } from './AddPhotographs.tsx';
import { OutgoingList } from './OutgoingList.tsx';
import { PhotographCard } from './PhotographCard.tsx';
import { useOutgoing } from './useOutgoing.ts';

/** The photographs of a job: those that are there, and new ones from the camera or from files. */
export function Photographs({ job }: { readonly job: number }) {
  const found = useQuery({ queryKey: ['photographs', job], queryFn: () => listPhotographs(job) });
  const sending = useOutgoing(job);
  return (
    <section aria-labelledby="photographs">
      <h3 id="photographs">Photographs</h3>
      <p className="soft">
        Each is written anew without anything that the camera wrote into it: the place where it was taken is
        taken out. Take them before anything is moved: wires and hoses, what lies where, gaps and worn parts.
      </p>
      <AddPhotographs add={sending.add} />
      <OutgoingList sending={sending} />
      {found.isError ? (
        <p className="fault" role="alert">
          The photographs cannot be shown: {found.error.message}
        </p>
      ) : null}
      <ul className="photographs">
        {found.data?.map((photograph, place) => (
          <PhotographCard key={photograph.id} photograph={photograph} called={`photograph ${place + 1}`} />
        ))}
      </ul>
    </section>
  );
}
