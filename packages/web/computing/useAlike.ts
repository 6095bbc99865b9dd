import { alike } from '@fettle/job/changes/alike.ts';
import { useState } from 'react';

/** A value that is computed anew again and again: the same one as long as nothing in it differs. */
export function useAlike<Value>(now: Value): Value {
  const [kept, keep] = useState(now);
  if (alike(kept, now)) return kept;
  keep(() => now);
  return now;
}
