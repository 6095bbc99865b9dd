import { familyById } from '../families/families.ts';
import { withMeasurement } from '../model/changes.ts';
import type { Model } from '../model/model.ts';
import { said } from '../wording/said.ts';
import { type AlterationKind, at, needed } from './alterationKind.ts';

/** Socks after one more is hung beside them: as many as the family can have at most. */
const socksAfter = ({ filter }: Model): { readonly now: number; readonly then: number } => {
  const bounds = familyById(filter.family)?.measurements.find(({ key }) => key === 'socks');
  const now = filter.measurements.socks ?? bounds?.assumed?.value ?? 0;
  return { now, then: bounds ? Math.min(now + 1, bounds.most) : now };
};

/** One more sock beside those there are: the same water through more cloth. */
export const moreSocks: AlterationKind = {
  id: 'more-socks',
  says: 'hang one more sock beside the others',
  settings: [],
  where: at('sock'),
  isIdle: (model) => socksAfter(model).then === socksAfter(model).now,
  apply: (model) => {
    const { now, then } = socksAfter(model);
    return then === now ? model : withMeasurement(model, 'socks', then);
  },
  parts: (model) => needed('sock', socksAfter(model).then - socksAfter(model).now),
  steps: () => [said('plan-step.more-socks')],
};
