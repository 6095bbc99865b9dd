import { useEffect, useRef } from 'react';
import { goToFirstOf } from './goToField.ts';

/** The field that the address names behind its `#`; empty where it names none. */
const fieldInAddress = (): string => {
  try {
    return decodeURIComponent(window.location.hash.slice(1));
  } catch {
    return '';
  }
};

/** Takes the focus, once, to the field that the address names, as soon as its form is there. */
export function useFieldInAddress(part: string, isShown: boolean): void {
  const went = useRef('');
  useEffect(() => {
    const path = fieldInAddress();
    const address = `${part} ${path}`;
    if (path === '') went.current = '';
    if (path === '' || !isShown || went.current === address) return;
    // A group, such as a bench test, has no field of its own: its first one is meant.
    if (goToFirstOf(document.body, [path])) went.current = address;
  });
}
