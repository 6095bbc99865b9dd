import { useCallback, useLayoutEffect, useRef } from 'react';

/** Where the focus was: a field by its path, and the letters that were marked in it. */
interface Held {
  readonly path: string;
  readonly from: number | null;
  readonly to: number | null;
}

type Input = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

const inputAt = (path: string): Input | null =>
  document.querySelector<Input>(`[data-path=${CSS.escape(path)}] :is(input, select, textarea)`);

const heldIn = (form: HTMLElement): Held | undefined => {
  const { activeElement } = document;
  const path = activeElement?.closest<HTMLElement>('[data-path]')?.dataset.path;
  if (path === undefined || activeElement === null || !form.contains(activeElement)) return undefined;
  const isText = activeElement instanceof HTMLInputElement || activeElement instanceof HTMLTextAreaElement;
  return isText
    ? { path, from: activeElement.selectionStart, to: activeElement.selectionEnd }
    : { path, from: null, to: null };
};

/**
 * Keeps the focus in a form that the page has to build anew in another place.
 *
 * @param place changes when the form is built in another place
 * @returns the ref of the element round the form, in each of its places
 */
export function useFocusKept(place: unknown): (form: HTMLElement | null) => (() => void) | undefined {
  const held = useRef<Held>(undefined);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the form is somewhere else where the place is another
  useLayoutEffect(() => {
    const { current } = held;
    held.current = undefined;
    const input = current && inputAt(current.path);
    if (!current || !input || document.activeElement === input) return;
    input.focus({ preventScroll: true });
    if (!(input instanceof HTMLSelectElement) && current.from !== null)
      input.setSelectionRange(current.from, current.to);
  }, [place]);
  return useCallback((form) => {
    if (form === null) return undefined;
    return () => {
      held.current = heldIn(form);
    };
  }, []);
}
