/** A part of the working under the findings, by the last part of its address. */
export type WorkingId = 'routes' | 'head' | 'beds' | 'chemical' | 'tests' | 'claims' | 'site' | 'money';

/** Which working shows the figures that a kind of finding is made of; findings of the document alone have none. */
const workingById: Readonly<Record<string, WorkingId>> = {
  'pump-cannot-lift': 'head',
  'biological-before-mechanical': 'beds',
  'fine-before-coarse': 'beds',
  'chemical-before-biological': 'beds',
  'bypass-past-bed': 'routes',
  'cut-too-small': 'routes',
  'packed-tight': 'head',
  'past-bag': 'routes',
  'slot-past-media': 'routes',
  'partition-leaks': 'routes',
  'opening-past-media': 'routes',
  'opening-narrower-than-hose': 'head',
  'bed-too-shallow': 'beds',
  'dead-chamber': 'routes',
  'stage-missing': 'routes',
  'replaced-often': 'money',
  'media-unsuited': 'chemical',
  'full-before-replaced': 'chemical',
  'dirt-in-biological-bed': 'beds',
  'hose-too-long': 'head',
  'hose-kinked': 'head',
  'barbs-too-narrow': 'head',
  'outlet-lift': 'head',
  'flow-for-tank': 'head',
  'fed-more-than-carried': 'beds',
  'oxygen-starved-outlet': 'beds',
  'water-too-acid': 'beds',
  'clogs-soon': 'beds',
  'overflow-open': 'routes',
  'spills-over': 'site',
  'jet-sweeps-tank': 'site',
  'alkalinity-runs-down': 'beds',
  'measured-differs': 'tests',
  'dye-early': 'tests',
  'dye-dead-room': 'tests',
  'measured-below-dirty': 'tests',
  'order-follows-the-water': 'beds',
  'little-bypass': 'routes',
  'claim-contradicts-itself': 'claims',
};

export const workingOf = (findingId: string): WorkingId | undefined =>
  Object.hasOwn(workingById, findingId) ? workingById[findingId] : undefined;
