/** Bounds of one argument within which a law holds, in the argument's own unit. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/** Valid range of a law by argument, or by a named group of arguments such as `reynolds`. */
export type ValidRange = Readonly<Record<string, Range>>;
