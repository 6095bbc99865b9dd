import type { Model } from '../../model/model.ts';
import type { Dimension } from '../../quantities/dimensions.ts';
import type { Assessment, Finding } from '../assessment.ts';

/** What a rule may look at. */
export interface FindingContext {
  readonly model: Model;
  readonly assessment: Assessment;
  /** Prints an SI value for people, in the system of units asked for. */
  print(value: number, dimension: Dimension): string;
  /** A place by its id, for people. */
  name(place: string): string;
}

/** One fault seen in one place. */
export interface Sighting {
  readonly place: string;
  /** One sentence with the evidence in numbers. */
  readonly says: string;
  readonly cure: string;
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

/** A share for people, as `12 %`. */
export const percent = (share: number): string => `${Number((100 * share).toPrecision(2))} %`;
