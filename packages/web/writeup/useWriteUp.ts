import type { Document } from '@fettle/writeup/content/document.ts';
import type { DocumentName } from '@fettle/writeup/writeUp.ts';
import { useMemo } from 'react';
import { thoroughEngine } from '../computing/engines.ts';
import { type Rested, useRested } from '../computing/useRested.ts';
import { useOwnBooks } from '../quote/useOwnBooks.ts';

interface Asked {
  readonly document: unknown;
  readonly name: DocumentName;
  readonly workshop: string | undefined;
}

const compute = ({ document, name, workshop }: Asked) => thoroughEngine().writeUp(document, name, workshop);

/** A document of the write-up of a job, as it would be published now; written anew once the job has rested. */
export function useWriteUp(document: unknown, name: DocumentName): Rested<Document> {
  const { workshop } = useOwnBooks().settings;
  const asked = useMemo(() => ({ document, name, workshop }), [document, name, workshop]);
  return useRested(asked, compute);
}
