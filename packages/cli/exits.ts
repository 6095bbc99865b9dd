/** How the program ends. */
export const EXIT = {
  fine: 0,
  /** Findings as grave as `--fail-on` asked for. */
  findings: 1,
  badInput: 2,
  /** A fault of the program itself. */
  bug: 70,
} as const;

/** One thing wrong with what was given to a command. */
export interface InputProblem {
  readonly code: string;
  readonly path: string;
  readonly says: string;
  readonly allowed?: string | undefined;
  readonly at?: { readonly line: number; readonly column: number } | undefined;
}

/** Bad input: not a fault of the program, but nothing can be computed from it. */
export class BadInput extends Error {
  readonly problems: readonly InputProblem[];

  constructor(problems: readonly InputProblem[]) {
    super(problems.map((problem) => problem.says).join('\n'));
    this.problems = problems;
  }
}

export const badInput = (problem: InputProblem): BadInput => new BadInput([problem]);
