import type { ChemicalState, CleaningInterval, Replacement } from './assessment.ts';
import type { Compiled, CompiledBed } from './compiled.ts';

type End = Pick<Replacement, 'everyS' | 'because'>;

/** What may end a bed, each with its time: what is thrown away once it clogs, what is full, what is over its life. */
const endsOf = (bed: CompiledBed, cleaning: CleaningInterval, chemical?: ChemicalState): readonly End[] => {
  const { care, lifeS } = bed.medium;
  const clogs = care === 'replace' && cleaning.cleanedEachTime.includes(bed.id);
  return [
    ...(lifeS === undefined ? [] : [{ everyS: lifeS.value, because: 'calendar' } as const]),
    ...(clogs ? [{ everyS: cleaning.timeS, because: 'clogs' } as const] : []),
    ...(chemical === undefined ? [] : [{ everyS: chemical.lastsS, because: 'full' } as const]),
  ].filter(({ everyS }) => everyS > 0 && Number.isFinite(everyS));
};

/**
 * When each bed is replaced: by what ends it first, and by the calendar where two do at once. A bed that lasts is not
 * among them. Money, findings and care all go by this, so that one figure stands in all of them.
 */
export const replacementsOf = (
  compiled: Compiled,
  cleaning: CleaningInterval,
  chemical: readonly ChemicalState[],
): Replacement[] =>
  compiled.beds.flatMap((bed) => {
    const ends = endsOf(
      bed,
      cleaning,
      chemical.find((one) => one.bed === bed.id),
    );
    const [first] = ends.toSorted((one, other) => one.everyS - other.everyS);
    return first === undefined ? [] : [{ bed: bed.id, ...first }];
  });
