import { useQuery } from '@tanstack/react-query';
import { readRevision } from './history.ts';

/** An earlier revision of a job, asked for once; nothing is asked where none is named. */
export const useRevision = (number: number, revision: number | undefined) =>
  useQuery({
    queryKey: ['revision', number, revision],
    queryFn: () => readRevision(number, revision ?? 0),
    enabled: revision !== undefined,
    // What was written once stays as it is.
    staleTime: Number.POSITIVE_INFINITY,
  });
