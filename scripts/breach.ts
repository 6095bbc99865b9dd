/** A place in the sources that breaks one of the house's rules. */
export interface Breach {
  readonly path: string;
  readonly line: number;
  /** Stable code of the broken rule. */
  readonly rule: string;
  readonly message: string;
}

/** One-based line of an offset in a text. */
export function lineAt(text: string, offset: number): number {
  let line = 1;
  for (let at = text.indexOf('\n'); at !== -1 && at < offset; at = text.indexOf('\n', at + 1)) line += 1;
  return line;
}

/** `file:line rule message`, the form that editors turn into a link. */
export function printBreach(breach: Breach): string {
  return `${breach.path}:${breach.line} ${breach.rule}: ${breach.message}`;
}

/**
 * Prints the breaches and what was looked at, and gives the exit code: 1 for a breach, and also when nothing
 * was looked at, so that a check that has lost its files cannot pass.
 */
export function reportBreaches(check: string, looked: number, breaches: readonly Breach[]): number {
  for (const breach of breaches) console.error(printBreach(breach));
  console.log(`${check}: ${looked} files, ${breaches.length} breaches`);
  if (looked === 0) console.error(`${check}: looked at no file`);
  return looked === 0 || breaches.length > 0 ? 1 : 0;
}
