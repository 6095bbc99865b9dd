import type { Document } from '@fettle/writeup/content/document.ts';
import type { DocumentName } from '@fettle/writeup/writeUp.ts';
import { useMemo } from 'react';
import { thoroughEngine } from '../computing/engines.ts';
import { type Rested, useRested } from '../computing/useRested.ts';

interface Asked {
  readonly document: unknown;
  readonly name: DocumentName;
}

const compute = ({ document, name }: Asked) => thoroughEngine().writeUp(document, name);

/** A document of the write-up of a job, as it would be published now; written anew once the job has rested. */
export function useWriteUp(document: unknown, name: DocumentName): Rested<Document> {
  const asked = useMemo(() => ({ document, name }), [document, name]);
  return useRested(asked, compute);
}
