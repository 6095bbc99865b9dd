import type { CompiledNetwork } from './compile.ts';
import { churchill, coil, type FrictionCell, swameeJainCubic } from './conduit.ts';
import { LINK_KIND, PARAMETER_STRIDE } from './lawNumbers.ts';

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

const evaluateConduits = (net: CompiledNetwork, links: Int32Array): void => {
  const { parameters: p, flow, drop, slope, resistanceRatio } = net;
  for (let place = 0; place < links.length; place += 1) {
    const link = links[place]!;
    const at = link * PARAMETER_STRIDE;
    const through = flow[link]!;
    const size = Math.abs(through);
    const ratio = resistanceRatio[link]!;
    const velocityHead = p[at]!;
    const ReynoldsPerFlow = p[at + 1]!;
    const reach = p[at + 2]!;
    const linear = p[at + 6]!;
    const Re = ReynoldsPerFlow * size;
    if (Re < CREEPING) {
      const creeping = ratio * ((p[at + 5]! / ReynoldsPerFlow) * reach * velocityHead + linear);
      drop[link] = creeping * through;
      slope[link] = creeping;
      continue;
    }
    if (p[at + 7] === 0) {
      shape.relativeRoughness = p[at + 4]!;
      shape.laminarConstant = p[at + 5]!;
      churchill(Re, shape, cell);
    } else swameeJainCubic(Re, p[at + 4]!, cell);
    if (p[at + 8]! > 0) coil(Re, p[at + 8]!, cell);
    const k = cell.factor * reach + p[at + 3]!;
    const quadratic = velocityHead * size;
    drop[link] = ratio * (k * quadratic + linear) * through;
    slope[link] = ratio * (quadratic * (2 * k + cell.slope * Re * reach) + linear);
  }
};

const evaluateResistances = (net: CompiledNetwork, links: Int32Array): void => {
  const { parameters: p, flow, drop, slope, resistanceRatio } = net;
  for (let place = 0; place < links.length; place += 1) {
    const link = links[place]!;
    const at = link * PARAMETER_STRIDE;
    const through = flow[link]!;
    const ratio = resistanceRatio[link]!;
    const linear = ratio * p[at]!;
    const quadratic = ratio * p[at + 1]! * Math.abs(through);
    drop[link] = (linear + quadratic) * through;
    slope[link] = linear + 2 * quadratic;
  }
};

/** Gives a one-way link or a weir the steep law of a shut way where water would run back. */
const shut = (net: CompiledNetwork, link: number): void => {
  net.drop[link] = SHUT * net.flow[link]!;
  net.slope[link] = SHUT;
};

const evaluateOneWays = (net: CompiledNetwork, links: Int32Array): void => {
  evaluateResistances(net, links);
  for (let place = 0; place < links.length; place += 1) {
    const link = links[place]!;
    if (net.flow[link]! < 0) shut(net, link);
    else net.drop[link] = net.drop[link]! + net.parameters[link * PARAMETER_STRIDE + 2]!;
  }
};

/** Villemonte's share of the flow of a free crest, (1 − (h₂/h₁)^1.5)^0.385. */
const DROWNED = 0.385;
const MOST_WEIR_STEPS = 60;

/**
 * Level in front of a drowned crest from its flow: with u = h₁^1.5 and t that of the water behind it,
 * Q = C·u^0.615·(u − t)^0.385. With w = u − t that is a rising law of w, solved by Newton on its logarithm.
 */
const evaluateDrownedWeir = (net: CompiledNetwork, link: number): void => {
  const at = link * PARAMETER_STRIDE;
  const flow = net.flow[link]!;
  const coefficient = net.parameters[at]!;
  const tailwater = net.parameters[at + 1]!;
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
  net.drop[link] = tailwater + (flow === along ? rise : (rise / along) * flow);
  net.slope[link] = flow === along ? perFlow / along : rise / along;
};

const evaluateWeir = (net: CompiledNetwork, link: number): void => {
  const flow = net.flow[link]!;
  if (flow < 0) {
    shut(net, link);
    return;
  }
  if (net.parameters[link * PARAMETER_STRIDE + 1]! > 0) {
    evaluateDrownedWeir(net, link);
    return;
  }
  const along = Math.max(flow, STRAIGHT_BELOW);
  const perCoefficient = along / net.parameters[link * PARAMETER_STRIDE]!;
  const level = Math.cbrt(perCoefficient * perCoefficient);
  net.drop[link] = flow === along ? level : (level / along) * flow;
  net.slope[link] = (flow === along ? 2 / 3 : 1) * (level / along);
};

const evaluatePump = (net: CompiledNetwork, link: number): void => {
  const at = link * PARAMETER_STRIDE;
  const flow = net.flow[link]!;
  const exponent = net.parameters[at + 2]!;
  const coefficient = net.parameters[at + 1]!;
  const size = Math.abs(flow);
  const straight = exponent < 1 && size < STRAIGHT_BELOW;
  const along = straight ? STRAIGHT_BELOW : size;
  const power = coefficient * (exponent === 2 ? along : along ** (exponent - 1));
  net.drop[link] = power * flow - net.parameters[at]!;
  net.slope[link] = straight ? power : exponent * power;
};

const evaluatePumpPoints = (net: CompiledNetwork, link: number): void => {
  const at = link * PARAMETER_STRIDE;
  const start = net.parameters[at]!;
  const last = start + 3 * (net.parameters[at + 1]! - 1);
  const t = net.tables;
  const flow = net.flow[link]!;
  const end = flow < t[start]! ? start : flow > t[last]! ? last : -1;
  if (end >= 0) {
    net.drop[link] = -(t[end + 1]! + t[end + 2]! * (flow - t[end]!));
    net.slope[link] = -t[end + 2]!;
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
  net.drop[link] = -(y0 + u * (m0 + u * (c2 + u * c3)));
  net.slope[link] = -(m0 + u * (2 * c2 + u * 3 * c3)) / width;
};

const forEachLink = (
  net: CompiledNetwork,
  links: Int32Array,
  evaluate: (net: CompiledNetwork, link: number) => void,
): void => {
  for (let place = 0; place < links.length; place += 1) evaluate(net, links[place]!);
};

/** Head taken by every link at `flow`, and its slope, into `drop` and `slope`. */
export const evaluateLinks = (net: CompiledNetwork): void => {
  const { linksByKind } = net;
  evaluateResistances(net, linksByKind[LINK_KIND.resistance]!);
  evaluateConduits(net, linksByKind[LINK_KIND.conduit]!);
  evaluateOneWays(net, linksByKind[LINK_KIND['one-way']]!);
  forEachLink(net, linksByKind[LINK_KIND.weir]!, evaluateWeir);
  forEachLink(net, linksByKind[LINK_KIND.pump]!, evaluatePump);
  forEachLink(net, linksByKind[LINK_KIND['pump-points']]!, evaluatePumpPoints);
  const fixed = linksByKind[LINK_KIND['fixed-head']]!;
  for (let place = 0; place < fixed.length; place += 1) {
    net.drop[fixed[place]!] = -net.parameters[fixed[place]! * PARAMETER_STRIDE]!;
  }
};

/** Flow of every link from falls and the flows of the chords: mass is kept at every node by construction. */
export const spreadChordFlows = (net: CompiledNetwork, chordFlow: Float64Array): void => {
  const { flow } = net;
  const { loopStart, loopLink, loopSign } = net.topology;
  flow.set(net.fallen);
  for (let chord = 0; chord < chordFlow.length; chord += 1) {
    const value = chordFlow[chord]!;
    for (let at = loopStart[chord]!; at < loopStart[chord + 1]!; at += 1) {
      flow[loopLink[at]!] = flow[loopLink[at]!]! + loopSign[at]! * value;
    }
  }
};
