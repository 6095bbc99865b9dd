/** Where a value stands in a document: names of fields and places in lists, counted from 0. */
export type FieldPath = readonly (string | number)[];

/** Writes a place as people read it: `packing.basket-1[0].depth`. */
export function writtenPath(path: FieldPath): string {
  let written = '';
  for (const step of path) {
    if (typeof step === 'number') written += `[${step}]`;
    else written += written === '' ? step : `.${step}`;
  }
  return written;
}

/** A place in a sentence: in quotation marks where it could not be told from the words around it. */
export const shownPath = (path: string): string =>
  path === '' || path.trim() !== path ? JSON.stringify(path) : path;

/** Reads what `writtenPath` wrote; a point before a digit belongs to a name. */
export function readPath(written: string): FieldPath {
  const steps: (string | number)[] = [];
  for (const part of written.split(/\.(?!\d)/)) {
    const [name, ...places] = part.split('[');
    if (name !== undefined && name !== '') steps.push(name);
    for (const place of places) steps.push(Number(place.slice(0, -1)));
  }
  return steps;
}
