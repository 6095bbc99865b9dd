import type { Laying, Model } from '../../model/model.ts';

/** The same job with every bed lying in one way. */
export const laid = (model: Model, laying: Laying): Model => ({
  ...model,
  packing: Object.fromEntries(
    Object.entries(model.packing).map(([id, beds]) => [id, beds.map((bed) => ({ ...bed, laying }))]),
  ),
});
