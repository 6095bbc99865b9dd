import type { CompiledNetwork } from './compiled.ts';
import { churchill, coil, type FrictionCell, swameeJainCubic } from './conduit.ts';
import { LINK_KIND, PARAMETER_STRIDE } from './lawNumbers.ts';
import type { LinkNumbers } from './linkNumbers.ts';

/**
 * What a one-way link in the tree takes from water that would run back, s/m². One that closes a loop is held
 * at exactly nothing instead; only where one-way links alone join a part to the rest must one stand in the tree.
 */
const SHUT = 1e10;

/** Below this flow, m³/s, a law whose slope at zero would be infinite runs straight to zero. */
const STRAIGHT_BELOW = 1e-12;

/** Reynolds number below which a conduit's law is straight; far inside laminar flow, and no division by zero. */
const CREEPING = 1e-9;

const cell: FrictionCell = { factor: 0, slope: 0 };
const shape = { relativeRoughness: 0, laminarConstant: 64 };

/** Friction factor times the size of the flow, m³/s, and its rise with it. */
export interface PerFlow {
  value: number;
  rise: number;
}

const perFlow: PerFlow = { value: 0, rise: 0 };

/**
 * Friction of a conduit's bore by the size of the flow in it, as the part that it has in its linear term.
 * @returns both numbers, in one object that the next call overwrites
 */
export const frictionPerFlow = ({ parameters: p }: LinkNumbers, link: number, size: number): PerFlow => {
  const at = link * PARAMETER_STRIDE;
  const ReynoldsPerFlow = p[at + 3]!;
  const Re = ReynoldsPerFlow * size;
  if (Re < CREEPING) {
    perFlow.value = p[at + 5]! / ReynoldsPerFlow;
    perFlow.rise = 0;
    return perFlow;
  }
  if (p[at + 6] === 0) {
    shape.relativeRoughness = p[at + 4]!;
    shape.laminarConstant = p[at + 5]!;
    churchill(Re, shape, cell);
  } else swameeJainCubic(Re, p[at + 4]!, cell);
  if (p[at + 7]! > 0) coil(Re, p[at + 7]!, cell);
  perFlow.value = cell.factor * size;
  perFlow.rise = cell.factor + cell.slope * Re;
  return perFlow;
};

const evaluateConduit = (links: LinkNumbers, link: number): void => {
  const { parameters: p } = links;
  const at = link * PARAMETER_STRIDE;
  const through = links.flow[link]!;
  const size = Math.abs(through);
  const ratio = links.resistanceRatio[link]!;
  const { value, rise } = frictionPerFlow(links, link, size);
  const weight = p[at + 2]!;
  const quadratic = p[at + 1]! * size;
  const along = p[at]! + weight * value + quadratic;
  links.drop[link] = ratio * along * through;
  links.slope[link] = ratio * (along + quadratic + weight * rise * size);
};

const evaluateResistance = (links: LinkNumbers, link: number): void => {
  const at = link * PARAMETER_STRIDE;
  const through = links.flow[link]!;
  const ratio = links.resistanceRatio[link]!;
  const linear = ratio * links.parameters[at]!;
  const quadratic = ratio * links.parameters[at + 1]! * Math.abs(through);
  links.drop[link] = (linear + quadratic) * through;
  links.slope[link] = linear + 2 * quadratic;
};

/** Gives a one-way link or a weir the steep law of a shut way where water would run back. */
const shut = (links: LinkNumbers, link: number): void => {
  links.drop[link] = SHUT * links.flow[link]!;
  links.slope[link] = SHUT;
};

const evaluateOneWay = (links: LinkNumbers, link: number): void => {
  if (links.flow[link]! < 0) {
    shut(links, link);
    return;
  }
  evaluateResistance(links, link);
  links.drop[link] = links.drop[link]! + links.parameters[link * PARAMETER_STRIDE + 2]!;
};

/** Villemonte's share of the flow of a free crest, (1 − (h₂/h₁)^1.5)^0.385. */
const DROWNED = 0.385;
const MOST_WEIR_STEPS = 60;

/**
 * Level in front of a drowned crest from its flow: with u = h₁^1.5 and t that of the water behind it,
 * Q = C·u^0.615·(u − t)^0.385. With w = u − t that is a rising law of w, solved by Newton on its logarithm.
 */
const evaluateDrownedWeir = (links: LinkNumbers, link: number): void => {
  const at = link * PARAMETER_STRIDE;
  const flow = links.flow[link]!;
  const coefficient = links.parameters[at]!;
  const tailwater = links.parameters[at + 1]!;
  const still = tailwater * Math.sqrt(tailwater);
  const along = Math.max(flow, STRAIGHT_BELOW);
  const wanted = Math.log(along / coefficient);
  // Both terms of the law are below that of a free crest, so the level starts on the near side of the root.
  let logOver = Math.min(wanted, (wanted - (1 - DROWNED) * Math.log(still)) / DROWNED);
  let over = Math.exp(logOver);
  for (let step = 0; step < MOST_WEIR_STEPS; step += 1) {
    const miss = (1 - DROWNED) * Math.log(over + still) + DROWNED * logOver - wanted;
    const move = miss / (((1 - DROWNED) * over) / (over + still) + DROWNED);
    logOver -= move;
    over = Math.exp(logOver);
    if (Math.abs(move) < 1e-15 * Math.max(1, Math.abs(logOver))) break;
  }
  // (over + still)^(2/3) − tailwater without the difference of near equals.
  const rise = tailwater * Math.expm1((2 / 3) * Math.log1p(over / still));
  const rate = (1 - DROWNED) / (over + still) + DROWNED / over;
  const perFlow = ((2 / 3) * (tailwater + rise)) / ((over + still) * rate);
  links.drop[link] = tailwater + (flow === along ? rise : (rise / along) * flow);
  links.slope[link] = flow === along ? perFlow / along : rise / along;
};

const evaluateWeir = (links: LinkNumbers, link: number): void => {
  const flow = links.flow[link]!;
  if (flow < 0) {
    shut(links, link);
    return;
  }
  if (links.parameters[link * PARAMETER_STRIDE + 1]! > 0) {
    evaluateDrownedWeir(links, link);
    return;
  }
  const along = Math.max(flow, STRAIGHT_BELOW);
  const perCoefficient = along / links.parameters[link * PARAMETER_STRIDE]!;
  const level = Math.cbrt(perCoefficient * perCoefficient);
  links.drop[link] = flow === along ? level : (level / along) * flow;
  links.slope[link] = (flow === along ? 2 / 3 : 1) * (level / along);
};

const evaluatePump = (links: LinkNumbers, link: number): void => {
  const at = link * PARAMETER_STRIDE;
  const flow = links.flow[link]!;
  const exponent = links.parameters[at + 2]!;
  const coefficient = links.parameters[at + 1]!;
  const size = Math.abs(flow);
  const straight = exponent < 1 && size < STRAIGHT_BELOW;
  const along = straight ? STRAIGHT_BELOW : size;
  const power = coefficient * (exponent === 2 ? along : along ** (exponent - 1));
  links.drop[link] = power * flow - links.parameters[at]!;
  links.slope[link] = straight ? power : exponent * power;
};

const evaluatePumpPoints = (links: LinkNumbers, link: number): void => {
  const at = link * PARAMETER_STRIDE;
  const start = links.parameters[at]!;
  const last = start + 3 * (links.parameters[at + 1]! - 1);
  const t = links.tables;
  const flow = links.flow[link]!;
  const end = flow < t[start]! ? start : flow > t[last]! ? last : -1;
  if (end >= 0) {
    links.drop[link] = -(t[end + 1]! + t[end + 2]! * (flow - t[end]!));
    links.slope[link] = -t[end + 2]!;
    return;
  }
  let low = start;
  while (low + 6 <= last && t[low + 3]! <= flow) low += 3;
  const width = t[low + 3]! - t[low]!;
  const u = (flow - t[low]!) / width;
  const y0 = t[low + 1]!;
  const rise = t[low + 4]! - y0;
  const m0 = t[low + 2]! * width;
  const m1 = t[low + 5]! * width;
  const c2 = 3 * rise - 2 * m0 - m1;
  const c3 = m0 + m1 - 2 * rise;
  links.drop[link] = -(y0 + u * (m0 + u * (c2 + u * c3)));
  links.slope[link] = -(m0 + u * (2 * c2 + u * 3 * c3)) / width;
};

/** Head that a link takes at its `flow`, and its slope, into `drop` and `slope`. */
export const evaluateLink = (links: LinkNumbers, link: number): void => {
  switch (links.kind[link]) {
    case LINK_KIND.resistance:
      evaluateResistance(links, link);
      break;
    case LINK_KIND.conduit:
      evaluateConduit(links, link);
      break;
    case LINK_KIND['one-way']:
      evaluateOneWay(links, link);
      break;
    case LINK_KIND.weir:
      evaluateWeir(links, link);
      break;
    case LINK_KIND.pump:
      evaluatePump(links, link);
      break;
    case LINK_KIND['pump-points']:
      evaluatePumpPoints(links, link);
      break;
    default:
      links.drop[link] = -links.parameters[link * PARAMETER_STRIDE]!;
  }
};

/** Head that a link by itself takes at a flow, m, whatever flows in its network. */
export const dropAt = (net: CompiledNetwork, id: string, flowM3PerS: number): number => {
  const { links, linkIndex, telling } = net;
  const link = linkIndex.get(id)!;
  links.flow[link] = flowM3PerS;
  evaluateLink(links, link);
  // The network's own flows are told again.
  telling.flows = false;
  telling.heads = false;
  return links.drop[link]!;
};
