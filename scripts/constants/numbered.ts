import { readSources } from '../sources.ts';
import { type Constant, constantsIn } from './literals.ts';

/** A constant with the number that a run is told to change; they count from 1. */
export type NumberedConstant = Constant & { readonly number: number };

/** All constants of the laws, in order of path and place. */
export function lawConstants(): NumberedConstant[] {
  const isLaw = (path: string) =>
    path.startsWith('packages/engine/laws/') && path.endsWith('.ts') && !path.endsWith('.test.ts');
  return readSources(isLaw)
    .flatMap(constantsIn)
    .map((constant, index) => ({ ...constant, number: index + 1 }));
}
