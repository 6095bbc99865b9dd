import type { Link, LinkLaw, NetworkSpec } from '../links.ts';

/** Which laws a random network is made of; `filter`: round conduits and linear–quadratic beds. */
export type LawMix = 'conduits' | 'linear-quadratic' | 'linear' | 'quadratic' | 'filter' | 'every';

/** What to build; the same shape always gives the same network. */
export interface NetworkShape {
  readonly seed: number;
  /** Nodes whose head the solver has to find; at least 2. */
  readonly spaces: number;
  /** Links beyond those that join the spaces: each closes a loop or stands beside another link. */
  readonly extraLinks: number;
  readonly mix: LawMix;
  readonly tanks: 1 | 2;
  /** Decades over which linear and quadratic resistances are spread, evenly about a usual one. */
  readonly decades: number;
  readonly friction: 'churchill' | 'swamee-jain-cubic';
}

/** Even random numbers in [0, 1) that are the same for the same seed (mulberry32, public domain). */
export const seededRandom = (seed: number): (() => number) => {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
};

const between = (random: () => number, low: number, high: number): number => low + (high - low) * random();
const wholeBelow = (random: () => number, end: number): number => Math.floor(random() * end);
/** Even in the logarithm, `decades` wide, about `middle`. */
const spread = (random: () => number, middle: number, decades: number): number =>
  middle * 10 ** between(random, -decades / 2, decades / 2);

/** A round hose or port of 4–25 mm. */
const roundConduit = (random: () => number, friction: NetworkShape['friction']): LinkLaw => {
  const boreM = between(random, 0.004, 0.025);
  return {
    kind: 'conduit',
    areaM2: (Math.PI * boreM ** 2) / 4,
    hydraulicDiameterM: boreM,
    lengthM: between(random, 0.02, 3),
    relativeRoughness: between(random, 1e-6, 2e-4) / boreM,
    minorK: between(random, 0, 20),
    linear: 0,
    laminarConstant: 64,
    friction,
  };
};

const planeSlot = (random: () => number): LinkLaw => {
  const thicknessM = between(random, 2e-4, 3e-3);
  return {
    kind: 'conduit',
    areaM2: thicknessM * between(random, 0.05, 0.6),
    hydraulicDiameterM: 2 * thicknessM,
    lengthM: between(random, 0.005, 0.2),
    relativeRoughness: 0,
    minorK: 1.5,
    linear: between(random, 0, 100),
    laminarConstant: 96,
    friction: 'churchill',
  };
};

const lossLaw = (random: () => number, shape: NetworkShape): LinkLaw => {
  const { mix, decades, friction } = shape;
  const choice = random();
  const conduits = { conduits: 1, filter: 0.5, every: 0.3 }[mix as string] ?? 0;
  if (choice < conduits) return roundConduit(random, friction);
  if (mix === 'every' && choice < 0.5) return planeSlot(random);
  return {
    kind: mix === 'every' && choice > 0.9 ? 'one-way' : 'resistance',
    linear: mix === 'quadratic' ? 0 : spread(random, 1e3, decades),
    quadratic: mix === 'linear' ? 0 : spread(random, 1e7, decades),
  };
};

const pumpLaw = (random: () => number, shape: NetworkShape): LinkLaw => {
  const shutoffHeadM = between(random, 0.5, 4);
  const freeFlow = between(random, 1e-4, 1e-3);
  if (shape.mix === 'every' && random() < 0.5) {
    return {
      kind: 'pump-points',
      flowM3PerS: [0, 0.3 * freeFlow, 0.7 * freeFlow, freeFlow],
      headM: [1, 0.9, 0.5, 0].map((part) => part * shutoffHeadM),
    };
  }
  const exponent = between(random, 1.2, 2.5);
  return { kind: 'pump', shutoffHeadM, coefficient: shutoffHeadM / freeFlow ** exponent, exponent };
};

/** Links that join the spaces to each other, then those that close loops. */
const waysBetween = (random: () => number, shape: NetworkShape): Link[] => {
  const { spaces, extraLinks } = shape;
  const links: Link[] = [];
  for (let space = 1; space < spaces; space += 1) {
    const before = random() < 0.6 ? space - 1 : wholeBelow(random, space);
    links.push({ id: `way${space}`, from: `n${before}`, to: `n${space}`, law: lossLaw(random, shape) });
  }
  for (let extra = 0; extra < extraLinks; extra += 1) {
    const a = wholeBelow(random, spaces);
    const b = (a + 1 + wholeBelow(random, spaces - 1)) % spaces;
    const twin = links[wholeBelow(random, links.length)];
    const ends = random() < 0.3 && twin ? { from: twin.from, to: twin.to } : { from: `n${a}`, to: `n${b}` };
    links.push({ id: `extra${extra}`, ...ends, law: lossLaw(random, shape) });
  }
  return links;
};

/**
 * A filter-like network: a pump draws from a tank into the first space, water finds its way through the
 * others in series, in parallel and round loops, and runs back from the last one. With `every` law there are
 * also slots, one-way links, a weir, and a pump by points.
 */
export const randomNetwork = (shape: NetworkShape): NetworkSpec => {
  const random = seededRandom(shape.seed);
  const twoWay: NetworkShape = shape.mix === 'every' ? { ...shape, mix: 'linear-quadratic' } : shape;
  const last = `n${shape.spaces - 1}`;
  const fixedHeadsM: Record<string, number> = { tank: 0 };
  if (shape.tanks === 2) fixedHeadsM.sump = between(random, -0.3, 0.3);
  const links: Link[] = [
    { id: 'intake', from: 'tank', to: 'pump:in', law: lossLaw(random, twoWay) },
    { id: 'pump', from: 'pump:in', to: 'n0', law: pumpLaw(random, shape) },
    ...waysBetween(random, shape),
    { id: 'outlet', from: last, to: shape.tanks === 2 ? 'sump' : 'tank', law: lossLaw(random, twoWay) },
  ];
  if (shape.mix === 'every') {
    fixedHeadsM.crest = between(random, 0, 2);
    const from = `n${wholeBelow(random, shape.spaces)}`;
    links.push({
      id: 'weir',
      from,
      to: 'crest',
      law: { kind: 'weir', coefficient: between(random, 0.02, 0.5) },
    });
  }
  return {
    fixedHeadsM,
    links,
    kinematicViscosityM2PerS: 1.0034e-6,
    gravityMPerS2: 9.80665,
    usualFlowM3PerS: 2e-4,
  };
};
