import { CURVATURE, LINK_KIND, PARAMETER_STRIDE } from './lawNumbers.ts';
import type { LinkNumbers } from './linkNumbers.ts';
import type { Ways } from './ways.ts';

/**
 * The ways of a network as flat lists. Each way takes given + linear·Q + quadratic·Q·abs(Q): what resistances in a
 * line take adds up to that, pumps of one power and held levels have this form, and friction, as a straight line in
 * the flow's size about the flow where it was last worked out, has it too. What remains is asked link by link.
 */
export interface WayNumbers {
  readonly count: number;
  /** By way: its law as it stands now; its flow, m³/s, the head that it takes, m, and the slope of that, s/m². */
  readonly given: Float64Array;
  readonly linear: Float64Array;
  readonly quadratic: Float64Array;
  readonly flow: Float64Array;
  readonly drop: Float64Array;
  readonly slope: Float64Array;
  /** Least head slope that the loop matrix is given, s/m²: keeps it positive definite where a law is flat. */
  readonly leastSlope: Float64Array;
  readonly members: Members;
  readonly bores: Bores;
  /** Links that lead nowhere: no water flows in them. */
  readonly stillLinks: Int32Array;
}

/** Links of all ways: first resistances, then conduits, then what is steady, then all others. */
export interface Members {
  readonly conduitsFrom: number;
  readonly steadyFrom: number;
  readonly othersFrom: number;
  readonly link: Int32Array;
  readonly way: Int32Array;
  /** Sense, 1 or −1, in which each stands in its way. */
  readonly sense: Float64Array;
  /** Of resistances and conduits: what they take at a ratio of 1, and the ratio for which was last solved. */
  readonly linear: Float64Array;
  readonly quadratic: Float64Array;
  readonly ratio: Float64Array;
  /** Of conduits: their bore, and what they take for a friction factor of 1, s²/m⁵. */
  readonly bore: Int32Array;
  readonly friction: Float64Array;
}

/** Bores: all conduits of a way that have the same friction factor at the same flow. */
export interface Bores {
  readonly way: Int32Array;
  /** A conduit of this bore. */
  readonly link: Int32Array;
  /** What its conduits take together for a friction factor of 1, s²/m⁵. */
  readonly weight: Float64Array;
  /** Friction factor times flow as a line in the flow's size: at no flow, m³/s, its rise, and where it touches. */
  readonly atRest: Float64Array;
  readonly rise: Float64Array;
  readonly touches: Float64Array;
  /** 1, or 0 where friction has a kink, so that it may not be taken for a straight line. */
  readonly reach: Float64Array;
}

/** Part of its usual slope that a way keeps in the loop matrix at least, and the least of all, s/m². */
const LEAST_SLOPE_RATIO = 1e-9;
const LEAST_SLOPE = 1e-30;

/** A pump whose head falls with the flow or its square, or a held level. */
const isSteady = ({ kind, parameters }: LinkNumbers, link: number): boolean => {
  if (kind[link] === LINK_KIND['fixed-head']) return true;
  const exponent = parameters[link * PARAMETER_STRIDE + 2];
  return kind[link] === LINK_KIND.pump && (exponent === 1 || exponent === 2);
};

const rankOf = (links: LinkNumbers, link: number): number => {
  if (links.kind[link] === LINK_KIND.resistance) return 0;
  if (links.kind[link] === LINK_KIND.conduit) return 1;
  return isSteady(links, link) ? 2 : 3;
};

/** Links of ways, by rank, and where each rank ends. */
const rankLinks = ({ wayOf }: Ways, links: LinkNumbers) => {
  const ranked: number[] = [];
  const ends: number[] = [];
  for (let rank = 0; rank < 4; rank += 1) {
    for (let link = 0; link < wayOf.length; link += 1) {
      if (wayOf[link]! >= 0 && rankOf(links, link) === rank) ranked.push(link);
    }
    ends.push(ranked.length);
  }
  return { ranked: Int32Array.from(ranked), ends };
};

/** Whether two conduits have the same friction factor at the same flow: all numbers but their losses agree. */
const sameBore = (parameters: Float64Array, one: number, other: number): boolean => {
  for (let at = 3; at < PARAMETER_STRIDE; at += 1) {
    if (parameters[one * PARAMETER_STRIDE + at] !== parameters[other * PARAMETER_STRIDE + at]) return false;
  }
  return true;
};

const findBores = (members: Omit<Members, 'bore'>, parameters: Float64Array) => {
  const bore = new Int32Array(members.steadyFrom);
  const way: number[] = [];
  const link: number[] = [];
  const last = new Map<number, number[]>();
  for (let at = members.conduitsFrom; at < members.steadyFrom; at += 1) {
    const boresOfWay = last.get(members.way[at]!) ?? [];
    let found = boresOfWay.find((one) => sameBore(parameters, link[one]!, members.link[at]!));
    if (found === undefined) {
      found = link.length;
      link.push(members.link[at]!);
      way.push(members.way[at]!);
      last.set(members.way[at]!, [...boresOfWay, found]);
    }
    bore[at] = found;
  }
  return { bore, bores: layBores(way, link, parameters) };
};

const layBores = (way: readonly number[], link: readonly number[], parameters: Float64Array): Bores => ({
  way: Int32Array.from(way),
  link: Int32Array.from(link),
  weight: new Float64Array(link.length),
  atRest: new Float64Array(link.length),
  rise: new Float64Array(link.length),
  touches: new Float64Array(link.length).fill(Number.POSITIVE_INFINITY),
  // A coiled bore turns from one law to another at some flow; all others are smooth.
  reach: Float64Array.from(link, (one) => (parameters[one * PARAMETER_STRIDE + CURVATURE]! > 0 ? 0 : 1)),
});

const layMembers = (ways: Ways, placeOf: Int32Array, links: LinkNumbers): Omit<Members, 'bore'> => {
  const { parameters } = links;
  const { ranked, ends } = rankLinks(ways, links);
  const [conduitsFrom, steadyFrom, othersFrom] = ends as [number, number, number, number];
  const resisting = ranked.subarray(0, steadyFrom);
  const numbered = (at: number): Float64Array =>
    Float64Array.from(resisting, (link) => parameters[link * PARAMETER_STRIDE + at]!);
  return {
    conduitsFrom,
    steadyFrom,
    othersFrom,
    link: ranked,
    way: ranked.map((link) => placeOf[ways.wayOf[link]!]!),
    sense: Float64Array.from(ranked, (link) => ways.senseOf[link]!),
    linear: numbered(0),
    quadratic: numbered(1),
    ratio: new Float64Array(steadyFrom),
    friction: numbered(2),
  };
};

const leastSlopes = (
  members: Omit<Members, 'bore'>,
  count: number,
  usualSlope: Float64Array,
): Float64Array => {
  const least = new Float64Array(count);
  for (let at = 0; at < members.link.length; at += 1) {
    least[members.way[at]!] = least[members.way[at]!]! + LEAST_SLOPE_RATIO * usualSlope[members.link[at]!]!;
  }
  for (let way = 0; way < count; way += 1) least[way] = Math.max(least[way]!, LEAST_SLOPE);
  return least;
};

/**
 * Lays the ways out.
 * @param wayAt the way (as found) at each place
 */
export const layWays = (
  ways: Ways,
  wayAt: Int32Array,
  { links, usualSlope }: { readonly links: LinkNumbers; readonly usualSlope: Float64Array },
): WayNumbers => {
  const { count, wayOf } = ways;
  const placeOf = new Int32Array(count);
  for (let place = 0; place < count; place += 1) placeOf[wayAt[place]!] = place;
  const members = layMembers(ways, placeOf, links);
  const { bore, bores } = findBores(members, links.parameters);
  const still: number[] = [];
  for (let link = 0; link < wayOf.length; link += 1) if (wayOf[link] === -1) still.push(link);
  const numbers = (): Float64Array => new Float64Array(count);
  return {
    count,
    given: numbers(),
    linear: numbers(),
    quadratic: numbers(),
    flow: numbers(),
    drop: numbers(),
    slope: numbers(),
    leastSlope: leastSlopes(members, count, usualSlope),
    members: { ...members, bore },
    bores,
    stillLinks: Int32Array.from(still),
  };
};
