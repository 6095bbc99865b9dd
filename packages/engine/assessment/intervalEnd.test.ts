import { describe, expect, it } from 'vitest';
import { assess } from './assess.ts';
import type { CleaningInterval } from './assessment.ts';
import { intervalEnd } from './intervalEnd.ts';
import { oneBasket, withMeasurements } from './testing/models.ts';

const model = oneBasket([['floss-packed', 100]]);
const assessment = assess(model);
const bed = assessment.beds[0]!.id;

/** What is said where the interval ended so. */
const ended = (cleaning: Partial<CleaningInterval>, of = { model, assessment }): string =>
  intervalEnd(of.model, {
    ...of.assessment,
    cleaning: { ...of.assessment.cleaning, endedBy: 'bed-flow', place: bed, ...cleaning },
  });

describe('the end of the cleaning interval', () => {
  it('of a full bed that the water goes past says why a jug does not show it', () => {
    expect(ended({ flowRatio: 0.98 })).toMatch(
      /has clogged; from then on a third of its water and more goes past it through the gap, so a timed jug will not show it: 98 % of the clean flow still reaches the tank$/,
    );
  });

  it('of a full bed that slows the whole filter says what flow is left', () => {
    const says = ended({ flowRatio: 0.7 });
    expect(says).toMatch(/70 % of the clean flow is left at the tank$/);
    expect(says).not.toContain('jug');
  });

  it('names no gap where there is none beside the bed', () => {
    const tight = withMeasurements(model, { wallGap: 0 });
    const of = { model: tight, assessment: assess(tight) };
    expect(ended({ flowRatio: 0.98 }, of)).toContain('goes past it another way');
  });
});
