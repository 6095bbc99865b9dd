import { familyById } from '../families/families.ts';
import { withMeasurement } from '../model/changes.ts';
import type { Model } from '../model/model.ts';
import { said } from '../wording/said.ts';
import { type AlterationKind, at, needed, none } from './alterationKind.ts';

/** Socks after one more is hung beside them: as many as the family can have at most. */
const socksAfter = ({ filter }: Model): { readonly now: number; readonly after: number } => {
  const bounds = familyById(filter.family)?.measurements.find(({ key }) => key === 'socks');
  const now = filter.measurements.socks ?? bounds?.assumed?.value ?? 0;
  return { now, after: bounds ? Math.min(now + 1, bounds.most) : now };
};

/** One more sock beside those there are: the same water through more cloth. */
export const moreSocks: AlterationKind = {
  id: 'more-socks',
  says: 'hang one more sock beside the others',
  settings: [],
  where: at('sock'),
  isIdle: (model) => socksAfter(model).after === socksAfter(model).now,
  apply: (model) => {
    const { now, after } = socksAfter(model);
    return after === now ? model : withMeasurement(model, 'socks', after);
  },
  parts: (model) => needed('sock', socksAfter(model).after - socksAfter(model).now),
  steps: () => [said('plan-step.more-socks')],
};

/** Every hole of the drip plate open again. */
export const clearHoles: AlterationKind = {
  id: 'clear-holes',
  says: 'clear the holes of the drip plate',
  settings: [],
  where: at('drip-holes'),
  isIdle: ({ filter }) => !((filter.measurements.holesBlocked ?? 0) > 0),
  apply: (model) =>
    (model.filter.measurements.holesBlocked ?? 0) > 0 ? withMeasurement(model, 'holesBlocked', 0) : model,
  parts: none,
  steps: () => [said('plan-step.clear-holes')],
};
