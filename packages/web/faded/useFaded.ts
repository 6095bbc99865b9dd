import type { FadedCase } from '@fettle/workflows/fadedFlow.ts';
import { thoroughEngine } from '../computing/engines.ts';
import { type Rested, useRested } from '../computing/useRested.ts';

const compute = (document: unknown) => thoroughEngine().faded(document);

/** Why the flow of a document's filter has faded; undefined before it is known, and where nobody knows the flow now. */
export const useFaded = (document: unknown): Rested<FadedCase | undefined> => useRested(document, compute);
