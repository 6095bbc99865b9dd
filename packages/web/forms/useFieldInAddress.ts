import { useEffect, useRef } from 'react';
import { goToField } from './goToField.ts';

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
    const field = document.querySelector(`[data-path=${CSS.escape(path)}]`);
    if (field !== null && goToField(field)) went.current = address;
  });
}
