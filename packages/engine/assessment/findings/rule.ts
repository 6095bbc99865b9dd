import type { Model } from '../../model/model.ts';
import { type Fact, type Said, said } from '../../wording/said.ts';
import type { Assessment, Finding } from '../assessment.ts';

/** What a rule may look at. */
export interface FindingContext {
  readonly model: Model;
  readonly assessment: Assessment;
}

/** One fault seen in one place. */
export interface Sighting {
  readonly place: string;
  /** One sentence with the evidence in numbers. */
  readonly says: Said;
  readonly cure: Said;
  /** The same job with only this fault cured; absent where no computation can cure it. */
  readonly cured?: Model;
  /** Severity where no effect decides it. */
  readonly severity?: Finding['severity'];
}

/** One kind of fault or strength: adding one is adding it to the file of its subject and to the list of `find.ts`. */
export interface FindingRule {
  readonly id: string;
  look(context: FindingContext): readonly Sighting[];
}

/** What a fault says, and what cures it, where both have one code. */
export const saysAndCure = (
  code: string,
  facts: Readonly<Record<string, Fact>> = {},
  ofCure: Readonly<Record<string, Fact>> = {},
): { readonly says: Said; readonly cure: Said } => ({
  says: said(`fault.${code}`, facts),
  cure: said(`cure.${code}`, ofCure),
});
