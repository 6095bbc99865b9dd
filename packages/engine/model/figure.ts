/**
 * How far a figure may be off, at 95 %: `plus-minus` is a half-width in the figure's own SI unit,
 * `factor` divides and multiplies it (always above 1).
 */
export type Doubt =
  | { readonly kind: 'plus-minus'; readonly size: number }
  | { readonly kind: 'factor'; readonly size: number };

/**
 * Where a figure comes from.
 * `published`: read in the source itself; `secondary`: seen quoted elsewhere; `memory`: from memory;
 * `common-practice`: common practice, no source; `computed`: follows from other figures by a named law;
 * `stated`: stated by the technician in the job.
 */
export interface Source {
  readonly kind: 'published' | 'secondary' | 'memory' | 'common-practice' | 'computed' | 'stated';
  readonly text: string;
}

/** One number of the catalogue in SI units, with its doubt and its source. */
export interface Figure {
  readonly value: number;
  readonly doubt?: Doubt;
  readonly source: Source;
}
