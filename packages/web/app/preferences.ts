import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { useQuery } from '@tanstack/react-query';
import { request } from '../client/request.ts';

/** The system of units that the workshop's settings name; metric where they name none. */
export const useSystem = (): System => {
  const { data } = useQuery({
    queryKey: ['settings'],
    queryFn: async () => (await request<{ readonly units?: System }>('/api/settings')).body,
  });
  return data?.units ?? 'metric';
};
