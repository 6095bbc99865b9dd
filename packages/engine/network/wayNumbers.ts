import { floatsOn, integersFrom, integersOn, type Slab } from '../numerics/slab.ts';
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

const rankOf = (links: LinkNumbers, link: number): 0 | 1 | 2 | 3 => {
  if (links.kind[link] === LINK_KIND.resistance) return 0;
  if (links.kind[link] === LINK_KIND.conduit) return 1;
  return isSteady(links, link) ? 2 : 3;
};

/** Links by rank: resistances, conduits, what is steady, all others. */
type Ranks = readonly [number[], number[], number[], number[]];

/** How many ways are laid out, and where. */
interface Laying {
  readonly wayCount: number;
  readonly slab: Slab;
}

interface Ranked {
  readonly ranks: Ranks;
  readonly parameters: Float64Array;
  readonly slab: Slab;
}

interface Given {
  readonly links: LinkNumbers;
  readonly usualSlope: Float64Array;
  readonly slab: Slab;
}

/** Links of ways by rank, each rank in the order of the links. */
const rankLinks = ({ wayOf }: Ways, links: LinkNumbers) => {
  const ranks: Ranks = [[], [], [], []];
  const still: number[] = [];
  for (let link = 0; link < wayOf.length; link += 1) {
    (wayOf[link]! < 0 ? still : ranks[rankOf(links, link)]).push(link);
  }
  return { ranks, still };
};

/** Whether two conduits have the same friction factor at the same flow: all numbers but their losses agree. */
const sameBore = (parameters: Float64Array, one: number, other: number): boolean => {
  for (let at = 3; at < PARAMETER_STRIDE; at += 1) {
    if (parameters[one * PARAMETER_STRIDE + at] !== parameters[other * PARAMETER_STRIDE + at]) return false;
  }
  return true;
};

/** Finds the bores of all ways, and gives each conduit among the members its own. */
const findBores = (members: Members, parameters: Float64Array, { wayCount, slab }: Laying): Bores => {
  const way: number[] = [];
  const link: number[] = [];
  // By way, the bore that was found in it last, and by bore, the one before it in its way; from 1, 0 for none.
  const last = integersOn(slab, wayCount);
  const before: number[] = [];
  for (let at = members.conduitsFrom; at < members.steadyFrom; at += 1) {
    const [into, conduit] = [members.way[at]!, members.link[at]!];
    let found = last[into]!;
    while (found > 0 && !sameBore(parameters, link[found - 1]!, conduit)) found = before[found - 1]!;
    if (found === 0) {
      link.push(conduit);
      way.push(into);
      before.push(last[into]!);
      found = link.length;
      last[into] = found;
    }
    members.bore[at] = found - 1;
  }
  return layBores({ way, link }, parameters, slab);
};

const layBores = (
  { way, link }: { readonly way: readonly number[]; readonly link: readonly number[] },
  parameters: Float64Array,
  slab: Slab,
): Bores => {
  const count = link.length;
  const touches = floatsOn(slab, count);
  const reach = floatsOn(slab, count);
  for (let bore = 0; bore < count; bore += 1) {
    touches[bore] = Number.POSITIVE_INFINITY;
    // A coiled bore turns from one law to another at some flow; all others are smooth.
    reach[bore] = parameters[link[bore]! * PARAMETER_STRIDE + CURVATURE]! > 0 ? 0 : 1;
  }
  return {
    way: integersFrom(slab, way),
    link: integersFrom(slab, link),
    weight: floatsOn(slab, count),
    atRest: floatsOn(slab, count),
    rise: floatsOn(slab, count),
    touches,
    reach,
  };
};

const roomForMembers = (ranks: Ranks, slab: Slab): Members => {
  const conduitsFrom = ranks[0].length;
  const steadyFrom = conduitsFrom + ranks[1].length;
  const othersFrom = steadyFrom + ranks[2].length;
  const count = othersFrom + ranks[3].length;
  return {
    conduitsFrom,
    steadyFrom,
    othersFrom,
    link: integersOn(slab, count),
    way: integersOn(slab, count),
    sense: floatsOn(slab, count),
    linear: floatsOn(slab, steadyFrom),
    quadratic: floatsOn(slab, steadyFrom),
    ratio: floatsOn(slab, steadyFrom),
    bore: integersOn(slab, steadyFrom),
    friction: floatsOn(slab, steadyFrom),
  };
};

const layMembers = (ways: Ways, wayAt: Int32Array, { ranks, parameters, slab }: Ranked): Members => {
  const placeOf = integersOn(slab, ways.count);
  for (let place = 0; place < ways.count; place += 1) placeOf[wayAt[place]!] = place;
  const members = roomForMembers(ranks, slab);
  let at = 0;
  for (const rank of ranks) {
    for (const link of rank) {
      members.link[at] = link;
      members.way[at] = placeOf[ways.wayOf[link]!]!;
      members.sense[at] = ways.senseOf[link]!;
      if (at < members.steadyFrom) {
        members.linear[at] = parameters[link * PARAMETER_STRIDE]!;
        members.quadratic[at] = parameters[link * PARAMETER_STRIDE + 1]!;
        members.friction[at] = parameters[link * PARAMETER_STRIDE + 2]!;
      }
      at += 1;
    }
  }
  return members;
};

const leastSlopes = (members: Members, usualSlope: Float64Array, { wayCount, slab }: Laying) => {
  const least = floatsOn(slab, wayCount);
  for (let at = 0; at < members.link.length; at += 1) {
    least[members.way[at]!] = least[members.way[at]!]! + LEAST_SLOPE_RATIO * usualSlope[members.link[at]!]!;
  }
  for (let way = 0; way < wayCount; way += 1) least[way] = Math.max(least[way]!, LEAST_SLOPE);
  return least;
};

/**
 * Lays the ways out.
 * @param wayAt the way (as found) at each place
 */
export const layWays = (ways: Ways, wayAt: Int32Array, { links, usualSlope, slab }: Given): WayNumbers => {
  const { count } = ways;
  const { parameters } = links;
  const laying: Laying = { wayCount: count, slab };
  const { ranks, still } = rankLinks(ways, links);
  const members = layMembers(ways, wayAt, { ranks, parameters, slab });
  return {
    count,
    given: floatsOn(slab, count),
    linear: floatsOn(slab, count),
    quadratic: floatsOn(slab, count),
    flow: floatsOn(slab, count),
    drop: floatsOn(slab, count),
    slope: floatsOn(slab, count),
    leastSlope: leastSlopes(members, usualSlope, laying),
    members,
    bores: findBores(members, parameters, laying),
    stillLinks: integersFrom(slab, still),
  };
};
