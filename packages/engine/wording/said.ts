import type { Printable } from '../quantities/printQuantity.ts';

/**
 * What may stand in a hole of a sentence: a text as somebody wrote it, a count, a quantity, a share of 0 to 1, a time
 * as prose says it, a name that a language has its own word for, another sentence, or several of these in a row.
 */
export type Fact =
  | string
  | number
  | Printable
  | { readonly share: number }
  | {
      readonly durationS: number;
      /** True where it is longer than what was looked at: a year. */
      readonly beyond?: boolean;
    }
  | {
      /** A time in days, or in hours below one day, as tables print it. */
      readonly spanS: number;
      readonly beyond?: boolean;
    }
  | { readonly name: string }
  | Said
  | {
      readonly all: readonly Fact[];
      /** What stands between them; commas, and the language's word for “and” before the last, where absent. */
      readonly by?: ' ' | ', ' | '; ';
    };

/** A sentence, or a part of one, before it is put into a language: what is said, and the facts in it. */
export interface Said {
  /** Name of the template in a language. */
  readonly code: string;
  /** One for each hole of the template. */
  readonly facts?: Readonly<Record<string, Fact>>;
}

/** A sentence by its code. */
export const said = (code: string, facts: Readonly<Record<string, Fact>> = {}): Said => ({ code, facts });
