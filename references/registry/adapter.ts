/** A law as references call it: named inputs in SI go in, one SI number comes out. */
export interface Adapter<Name extends string = string> {
  /** SI unit of each input by its name in the cases; `1` for a plain number. */
  readonly inputs: Readonly<Record<Name, string>>;
  /** Inputs that a case may leave out, with the SI value that then holds. */
  readonly defaults?: Readonly<Partial<Record<Name, number>>>;
  /** SI unit of the result. */
  readonly result: string;
  compute(inputs: Readonly<Record<Name, number>>): number;
}

/** Lets the input names of `compute` follow from `inputs`. */
export const adapter = <Name extends string>(law: Adapter<Name>): Adapter<Name> => law;

/**
 * Laws by name. A law with several results has one entry for each, `law.part`; two ways of feeding one law are
 * written the same way.
 */
export type Registry = Readonly<Record<string, Adapter>>;
