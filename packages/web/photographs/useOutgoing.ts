import { useQueryClient } from '@tanstack/react-query';
import { useEffect, useMemo, useState } from 'react';
import { attachPhotograph } from '../client/photographs.ts';
import { Refused } from '../client/request.ts';
import { browserPictures } from './keptPictures.ts';
import { Outgoing, type OutgoingPicture } from './outgoing.ts';

/** Pictures of a job on their way, and how to add to them. */
export interface Sending {
  readonly pictures: readonly OutgoingPicture[];
  add(files: readonly File[]): void;
  again(id: string): void;
  drop(id: string): void;
}

/** Sends pictures into a job and shows how far they are; those of an earlier page go on. */
export function useOutgoing(job: number): Sending {
  const queries = useQueryClient();
  const [pictures, show] = useState<readonly OutgoingPicture[]>([]);
  const outgoing = useMemo(
    () =>
      new Outgoing({
        keeper: browserPictures,
        send: async (picture) => {
          const attached = await attachPhotograph(job, picture);
          await queries.invalidateQueries({ queryKey: ['photographs', job] });
          return { thereAlready: attached.thereAlready ?? false };
        },
        // What is no picture, or too large, is so the next time too; a server that is busy is not.
        isRefusal: (error) =>
          error instanceof Refused && [404, 409, 413, 415, 422].includes(error.problem.status),
        show,
      }),
    [job, queries],
  );
  useEffect(() => {
    // Another window may be sending them: each window waits for its turn.
    void navigator.locks.request(`fettle-pictures-${job}`, () => outgoing.takeUp(job));
  }, [job, outgoing]);
  return {
    pictures,
    add: (files) =>
      void outgoing.add(
        files.map((file) => ({ id: crypto.randomUUID(), job, name: file.name, picture: file })),
      ),
    again: (id) => void outgoing.again(id),
    drop: (id) => void outgoing.drop(id),
  };
}
