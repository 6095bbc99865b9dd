import type { WorkKind } from './kind.ts';
import { planKind } from './plan.ts';

/** Every kind of long work. A new one is a file here and its name in this list. */
export const workKinds: readonly WorkKind[] = [planKind];

export const kindNamed = (name: string): WorkKind | undefined => workKinds.find(({ kind }) => kind === name);
