/** One sample of a tracer test. */
export interface TracerSample {
  /** Time since the shot, s. */
  readonly timeS: number;
  /** Concentration above background, any unit; 0 or more. */
  readonly concentration: number;
}

/** What a tracer curve says. */
export interface TracerMoments {
  /** Area under the curve, concentration × s; times the flow it is the tracer recovered. */
  readonly area: number;
  readonly meanS: number;
  readonly varianceS2: number;
}

/**
 * Area, mean and variance of a tracer curve from its samples.
 *
 * t̄ = ∫tC dt/∫C dt, σ² = ∫t²C dt/∫C dt − t̄², by trapezia. With even spacing and zero ends these are the sums
 * ΣtC/ΣC and Σt²C/ΣC − t̄².
 *
 * @param samples in order of time, at least two; the curve should start and end near zero
 * @returns moments; NaN where nothing was found (area 0)
 * Accuracy: about a tenth of a sample's spacing in the mean; a tail that is cut off makes both too small.
 * @source Levenspiel, Chemical Reaction Engineering, 3rd ed., ch. 11
 */
export const tracerMoments = (samples: readonly TracerSample[]): TracerMoments => {
  const integral = (power: number): number =>
    samples.slice(1).reduce((sum, end, i) => {
      const start = samples[i]!;
      const height = start.concentration * start.timeS ** power + end.concentration * end.timeS ** power;
      return sum + (height / 2) * (end.timeS - start.timeS);
    }, 0);
  const area = integral(0);
  const meanS = integral(1) / area;
  return { area, meanS, varianceS2: integral(2) / area - meanS ** 2 };
};

/**
 * Time by which a share of the tracer has come through.
 *
 * @param samples in order of time, at least two
 * @param fraction share of all that came, 1; above 0, to 1
 * @returns time, s, on straight lines between the samples
 * Accuracy: about a fifth of a sample's spacing.
 * @source area under the sampled curve by trapezia
 */
export const tracerQuantile = (samples: readonly TracerSample[], fraction: number): number => {
  const wanted = fraction * tracerMoments(samples).area;
  let below = 0;
  for (let i = 1; i < samples.length; i += 1) {
    const start = samples[i - 1]!;
    const end = samples[i]!;
    const width = end.timeS - start.timeS;
    const piece = ((start.concentration + end.concentration) / 2) * width;
    if (piece > 0 && below + piece >= wanted) {
      return (
        start.timeS + width * shareWithin(start.concentration, end.concentration, (wanted - below) / piece)
      );
    }
    below += piece;
  }
  return samples.at(-1)!.timeS;
};

/** Place between two samples, 0 to 1, where a share of the trapezium between them lies behind. */
const shareWithin = (from: number, to: number, share: number): number => {
  const root = Math.sqrt(from ** 2 + (to ** 2 - from ** 2) * share);
  return (share * (from + to)) / (from + root);
};
