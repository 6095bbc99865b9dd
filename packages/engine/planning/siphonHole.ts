import type { Model } from '../model/model.ts';
import type { Placing } from '../model/placing.ts';
import { quantity } from '../wording/facts.ts';
import { said } from '../wording/said.ts';
import { type AlterationKind, at, none } from './alterationKind.ts';

/** The higher of an air hole that is there and one that is drilled; none where the mouth is no deeper than the hole. */
const holeAt = (drilledM: number, mouthM: number, holeM = mouthM): number | undefined => {
  const highestM = Math.min(drilledM, holeM);
  return highestM < mouthM ? highestM : undefined;
};

const withHoles = (placing: Placing, depthM: number, hasIntake: boolean): Placing => {
  const { intakeHoleM, returnHoleM, ...rest } = placing;
  const back = holeAt(depthM, placing.returnDepthM, returnHoleM);
  const out = hasIntake ? holeAt(depthM, placing.intakeDepthM, intakeHoleM) : intakeHoleM;
  return {
    ...rest,
    ...(out === undefined ? {} : { intakeHoleM: out }),
    ...(back === undefined ? {} : { returnHoleM: back }),
  };
};

/** Air holes in what hangs into the tank: a hose that comes off, or a pump that stops, draws the tank no further down. */
export const siphonHole: AlterationKind = {
  id: 'siphon-hole',
  says: 'drill air holes against siphoning',
  settings: ['depthM'],
  always: true,
  where: at('outlet'),
  apply: (model: Model, _layout, { depthM }) => {
    const { placing, intake } = model.filter;
    if (placing === undefined || depthM === undefined) return model;
    return {
      ...model,
      filter: { ...model.filter, placing: withHoles(placing, depthM, intake !== undefined) },
    };
  },
  parts: none,
  steps: ({ depthM = 0 }) => [said('plan-step.siphon-hole', { depth: quantity(depthM, 'length') })],
};
