import { useMemo } from 'react';
import { thoroughEngine } from '../computing/engines.ts';
import { useRested } from '../computing/useRested.ts';
import type { ForecastAsked } from './forecastShown.ts';

interface Asked {
  readonly document: unknown;
  readonly asked: ForecastAsked;
}

const compute = ({ document, asked }: Asked) => thoroughEngine().forecast(document, asked);

/** How flow and dirt of a document's filter go over the coming days. */
export function useForecast(document: unknown, { state, days, clean, system }: ForecastAsked) {
  const asked = useMemo(
    () => ({ document, asked: { state, days, clean, system } }),
    [document, state, days, clean, system],
  );
  return useRested(asked, compute);
}
