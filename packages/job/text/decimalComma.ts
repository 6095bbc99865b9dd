import { isScalar, type Scalar } from 'yaml';

/** A number that a comma without quotes has cut in two, as `1,5 m` inside brackets. */
export interface CutNumber {
  /** What was written. */
  readonly found: string;
  /** What was most likely meant. */
  readonly meant: string;
  /** What to write instead. */
  readonly advice: string;
}

const head = /^[-+]?\d+$|[±÷] ?\d+$/;
/** A number with a power of ten, such as `5e3`, stands for itself: it is how JSON writes large ones. */
const tail = /^(?!\d+[eE][-+]?\d+$)(\d+)(?:\s*[\p{L}°%£€$±×µ].*)?$/u;

function isPlain(node: unknown): node is Scalar & { source: string } {
  return isScalar(node) && node.type === 'PLAIN' && node.source !== undefined;
}

/**
 * Joins two neighbouring entries of a mapping or list inside brackets where they are the halves of one number: they
 * touch the comma between them, the first ends in a bare number and the second begins with digits.
 *
 * @returns `undefined` where they are two entries indeed
 */
export function cutNumber(before: unknown, behind: unknown): CutNumber | undefined {
  if (!isPlain(before) || !isPlain(behind)) return undefined;
  const touching = before.range?.[1] !== undefined && before.range[1] + 1 === behind.range?.[0];
  const digits = tail.exec(behind.source)?.[1];
  if (!touching || digits === undefined || !head.test(before.source)) return undefined;
  const found = `${before.source},${behind.source}`;
  const decimal = `${before.source}.${behind.source}`;
  if (digits.length === 3 && /^[-+]?[1-9]\d{0,2}$/.test(before.source)) {
    const meant = `${before.source}${behind.source}`;
    return { found, meant, advice: `write ${meant} without the comma` };
  }
  return {
    found,
    meant: decimal,
    advice: `write a point, ${decimal}, or put the value in quotes, "${found}"`,
  };
}
