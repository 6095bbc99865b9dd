import type { Constant } from './literals.ts';

/** How much a constant is changed by, as a factor: 1 % is seen by any check with three digits or more. */
const changeFactor = 1.01;

/**
 * The text of a file in which each constant becomes a choice: its own value, or the changed one while
 * `chosen`, an expression, gives the constant's number.
 */
export function withSwitches(
  text: string,
  constants: readonly (Constant & { readonly number: number })[],
  chosen: string,
): string {
  let switched = '';
  let at = 0;
  for (const { start, end, literal, number } of constants) {
    switched += `${text.slice(at, start)}(${chosen} === ${number} ? ${literal} * ${changeFactor} : ${literal})`;
    at = end;
  }
  return switched + text.slice(at);
}
