import type { Model } from '../../model/model.ts';

/** The same job with a dye test that begins, peaks and ends at these times, s, straight between them. */
export const withPulse = (model: Model, [begin, peak, end]: readonly [number, number, number]): Model => ({
  ...model,
  dyeTests: [
    {
      id: 'pulse',
      state: 'cleaned-original',
      samples: [
        { timeS: begin, concentration: 0 },
        { timeS: peak, concentration: 100 },
        { timeS: end, concentration: 0 },
      ],
      readingDoubt: 1,
      timeDoubtS: 0.5,
    },
  ],
});
