/** What the laws of links are worked out from, and into: see `CompiledNetwork`. */
export interface LinkNumbers {
  readonly kind: Uint8Array;
  readonly parameters: Float64Array;
  readonly tables: Float64Array;
  readonly resistanceRatio: Float64Array;
  readonly flow: Float64Array;
  readonly drop: Float64Array;
  readonly slope: Float64Array;
}
