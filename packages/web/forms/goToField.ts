/** Takes the focus to what is typed into in a field; a field that is folded away is unfolded first. */
export function goToField(field: Element): boolean {
  const input = field.querySelector<HTMLElement>('input, select, textarea');
  if (input === null) return false;
  for (
    let around = input.closest('details');
    around !== null;
    around = around.parentElement?.closest('details') ?? null
  )
    around.open = true;
  input.focus();
  return true;
}

/**
 * Takes the focus to the first field of a form, in the order in which it is read, that is at one of the paths or
 * within it.
 *
 * @returns whether there is one
 */
export function goToFirstOf(form: Element, paths: readonly string[]): boolean {
  const isAt = (path: string): boolean => paths.some((each) => path === each || path.startsWith(`${each}.`));
  const field = [...form.querySelectorAll<HTMLElement>('[data-path]')].find(({ dataset }) =>
    isAt(dataset.path ?? ''),
  );
  return field !== undefined && goToField(field);
}
