import type { Layout } from '../families/layout.ts';
import type { Model } from '../model/model.ts';
import { withSealedChambers } from '../packing/seal.ts';
import { said } from '../wording/said.ts';
import { type AlterationKind, needed, none, openGaps, withSealedLeaks } from './alterationKind.ts';

/** Gaps at the ends of media about a tube, and round seats, that new seal rings would make tighter. */
const openEnds = (model: Model, layout: Layout) => {
  const { chambers, leaks } = openGaps(model, layout);
  return {
    chambers: chambers.filter(({ ring }) => ring !== undefined),
    leaks: leaks.filter(({ sealedBy }) => sealedBy === 'ring'),
  };
};

/** New seal rings at the end caps and round seats. */
export const renewEndSeals: AlterationKind = {
  id: 'renew-end-seals',
  says: 'renew the end seals',
  settings: [],
  where: ({ chambers, leaks }) => [
    ...chambers.filter(({ ring }) => ring !== undefined).map(({ id }) => `gap:${id}`),
    ...leaks.filter(({ sealedBy }) => sealedBy === 'ring').map(({ id }) => id),
  ],
  isIdle: (model, layout) => {
    const { chambers, leaks } = openEnds(model, layout);
    return chambers.length + leaks.length === 0;
  },
  apply: (model, layout) => {
    const { chambers, leaks } = openEnds(model, layout);
    return withSealedLeaks(withSealedChambers(model, chambers), leaks);
  },
  parts: (model, layout) => {
    const { chambers, leaks } = openEnds(model, layout);
    return needed('end-seal', 2 * chambers.length + leaks.length);
  },
  steps: () => [said('plan-step.renew-end-seals')],
};

/** Chambers about a tube of which the outermost layer is foam that can be cut longer, and of which the ends leak. */
const looseSleeves = (model: Model, layout: Layout): Layout['chambers'] =>
  openEnds(model, layout).chambers.filter(({ id }) =>
    (model.packing[id] ?? []).some(({ medium }) => model.media[medium]?.form === 'foam'),
  );

/** A foam sleeve cut so long that the end caps press on it. */
export const trimSleeve: AlterationKind = {
  id: 'trim-sleeve',
  says: 'cut a foam sleeve to a length that the end caps squeeze',
  settings: [],
  where: ({ chambers }) => chambers.filter(({ ring }) => ring !== undefined).map(({ id }) => `gap:${id}`),
  isIdle: (model, layout) => looseSleeves(model, layout).length === 0,
  apply: (model, layout) => withSealedChambers(model, looseSleeves(model, layout)),
  parts: none,
  steps: () => [said('plan-step.trim-sleeve')],
};

/** Which side of a cartridge the inlet washes is nothing that the models know: they load it alike all round. */
export const turnCartridge: AlterationKind = {
  id: 'turn-cartridge',
  says: 'turn the cartridge, so that the side away from the inlet loads next',
  settings: [],
  handsOnly: true,
  where: ({ chambers }) => chambers.filter(({ ring }) => ring !== undefined).map(({ id }) => id),
  apply: (model) => model,
  parts: none,
  steps: () => [said('plan-step.turn-cartridge')],
};
