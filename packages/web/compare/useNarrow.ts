import { useSyncExternalStore } from 'react';

const narrow = window.matchMedia('(max-width: 700px)');

const follow = (onChange: () => void): (() => void) => {
  narrow.addEventListener('change', onChange);
  return () => narrow.removeEventListener('change', onChange);
};

/** Whether the page is too narrow for two drawings side by side. */
export const useNarrow = (): boolean => useSyncExternalStore(follow, () => narrow.matches);
