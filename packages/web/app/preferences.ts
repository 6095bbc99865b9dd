import type { Theme } from '@fettle/drawing/tokens.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { useQuery } from '@tanstack/react-query';
import { useSyncExternalStore } from 'react';
import { request } from '../client/request.ts';

const dark = window.matchMedia('(prefers-color-scheme: dark)');

/** The theme that the browser asks for. */
export const useTheme = (): Theme =>
  useSyncExternalStore(
    (onChange) => {
      dark.addEventListener('change', onChange);
      return () => dark.removeEventListener('change', onChange);
    },
    () => (dark.matches ? 'dark' : 'light'),
  );

/** The system of units that the workshop's settings name; metric where they name none. */
export const useSystem = (): System => {
  const { data } = useQuery({
    queryKey: ['settings'],
    queryFn: async () => (await request<{ readonly units?: System }>('/api/settings')).body,
  });
  return data?.units ?? 'metric';
};
