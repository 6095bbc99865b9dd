import type { Inputs } from '@fettle/engine/reckonings/reckoning.ts';
import { useEffect, useRef, useState } from 'react';
import { useSearchParams } from 'wouter';
import { queryOf, type Texts, textsOf } from './texts.ts';

/** Rest after the last change before the address takes it up, ms. */
const restMs = 300;

/**
 * The texts of a reckoning, which the address keeps: they are there again when it is opened anew, sent on or gone
 * back to.
 */
export function useTexts(inputs: Inputs) {
  const [asked, setAsked] = useSearchParams();
  const [texts, setTexts] = useState<Texts>(() => textsOf(asked, inputs));
  const written = asked.toString();
  const ours = useRef(written);
  useEffect(() => {
    if (written === ours.current) return;
    ours.current = written;
    setTexts(textsOf(new URLSearchParams(written), inputs));
  }, [written, inputs]);
  useEffect(() => {
    const timer = setTimeout(() => {
      const query = queryOf(texts);
      if (query === ours.current) return;
      ours.current = query;
      setAsked(new URLSearchParams(query), { replace: true });
    }, restMs);
    return () => clearTimeout(timer);
  }, [texts, setAsked]);
  return {
    texts,
    put: (key: string, given: readonly string[]): void => setTexts((before) => ({ ...before, [key]: given })),
    /** Other texts altogether; going back brings those of before. */
    replace: (next: Texts): void => {
      ours.current = queryOf(next);
      setTexts(next);
      setAsked(new URLSearchParams(ours.current));
    },
  };
}
