import { listedOnce } from '../names.ts';
import type { Problem } from '../problems.ts';
import type { TextPlace } from './parse.ts';

/** The problem with the line of its field, or of the nearest field around it. */
function located(each: Problem, places: ReadonlyMap<string, TextPlace>): Problem {
  if (each.at !== undefined) return each;
  let path = each.path;
  while (path !== '' && !places.has(path)) path = path.replace(/(?:\[\d+\]|\.?[^.[\]]+)$/, '');
  const place = places.get(path);
  return place === undefined ? each : { ...each, at: place };
}

function byPlace(one: Problem, other: Problem): number {
  const [a, b] = [one.at ?? { line: 0, column: 0 }, other.at ?? { line: 0, column: 0 }];
  return a.line - b.line || a.column - b.column;
}

/** Problems of a text as they stand in it, each with its line; a long list of what is allowed is told once. */
export function inTextOrder(
  problems: readonly Problem[],
  places: ReadonlyMap<string, TextPlace>,
): readonly Problem[] {
  return listedOnce(problems.map((each) => located(each, places)).toSorted(byPlace));
}
