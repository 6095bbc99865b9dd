import type { WorkingId } from './workings.ts';

/** Heads of the parts of the working. */
export const workingNames: Readonly<Record<WorkingId, string>> = {
  routes: 'Routes',
  head: 'Head',
  beds: 'Beds',
  chemical: 'Chemical media',
  tests: 'Bench tests',
  claims: 'Claims',
  site: 'Leaks, water on the floor, current',
  money: 'Money',
};

/** Id of a part of the working in the page. */
export const workingElementId = (id: string): string => `working-${id}`;

/** Opens a part of the working and takes the focus there. */
export function openWorking(id: WorkingId): void {
  const part = document.getElementById(workingElementId(id));
  if (!(part instanceof HTMLDetailsElement)) return;
  part.open = true;
  part.scrollIntoView({ block: 'start' });
  part.querySelector('summary')?.focus({ preventScroll: true });
}

/** While the page is printed every part of the working is open; after it they are as they were. */
export function openForPrint(): () => void {
  let closed: readonly HTMLDetailsElement[] = [];
  const before = (): void => {
    closed = [...document.querySelectorAll<HTMLDetailsElement>('details.working:not([open])')];
    for (const part of closed) part.open = true;
  };
  const after = (): void => {
    for (const part of closed) part.open = false;
    closed = [];
  };
  window.addEventListener('beforeprint', before);
  window.addEventListener('afterprint', after);
  return () => {
    window.removeEventListener('beforeprint', before);
    window.removeEventListener('afterprint', after);
  };
}
