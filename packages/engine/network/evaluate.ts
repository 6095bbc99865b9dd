import { type CompiledNetwork, LINK_KIND, PARAMETER_STRIDE } from './compile.ts';
import { churchill, type FrictionCell, swameeJainCubic } from './conduit.ts';

/**
 * What a one-way link in the tree takes from water that would run back, s/m². One that closes a loop is held
 * at exactly nothing instead; only where one-way links alone join a part to the rest must one stand in the tree.
 */
const SHUT = 1e10;

/** Below this flow, m³/s, a law whose slope at zero would be infinite runs straight to zero. */
const STRAIGHT_BELOW = 1e-12;

const cell: FrictionCell = { factor: 0, slope: 0 };

const conduit = (net: CompiledNetwork, link: number): void => {
  const p = net.parameters;
  const at = link * PARAMETER_STRIDE;
  const flow = net.flow[link]!;
  const size = Math.abs(flow);
  const ratio = net.resistanceRatio[link]!;
  const velocityHead = p[at]! * p[at]! * p[at + 7]!;
  const reach = p[at + 2]!;
  const laminarSlope = (p[at + 5]! / p[at + 1]!) * reach * velocityHead;
  const Re = p[at + 1]! * size;
  const minor = p[at + 3]!;
  const linear = p[at + 8]!;
  if (Re < 1e-9) {
    net.drop[link] = ratio * (laminarSlope + linear) * flow;
    net.slope[link] = ratio * (laminarSlope + linear);
    return;
  }
  if (p[at + 6] === 0) churchillAt(p, at, Re);
  else swameeJainCubic(Re, p[at + 4]!, cell);
  const k = cell.factor * reach + minor;
  net.drop[link] = ratio * (k * velocityHead * size + linear) * flow;
  net.slope[link] = ratio * (velocityHead * size * (2 * k + cell.slope * Re * reach) + linear);
};

const shape = { relativeRoughness: 0, laminarConstant: 64 };

const churchillAt = (p: Float64Array, at: number, Re: number): void => {
  shape.relativeRoughness = p[at + 4]!;
  shape.laminarConstant = p[at + 5]!;
  churchill(Re, shape, cell);
};

const pumpPoints = (net: CompiledNetwork, link: number): void => {
  const at = link * PARAMETER_STRIDE;
  const start = net.parameters[at]!;
  const last = start + 3 * (net.parameters[at + 1]! - 1);
  const t = net.tables;
  const flow = net.flow[link]!;
  let low = start;
  while (low + 3 < last && t[low + 3]! <= flow) low += 3;
  const x0 = t[low]!;
  const width = t[low + 3]! - x0;
  const end = flow < t[start]! ? start : flow > t[last]! ? last : -1;
  if (end >= 0) {
    net.drop[link] = -(t[end + 1]! + t[end + 2]! * (flow - t[end]!));
    net.slope[link] = -t[end + 2]!;
    return;
  }
  const u = (flow - x0) / width;
  const y0 = t[low + 1]!;
  const rise = t[low + 4]! - y0;
  const m0 = t[low + 2]! * width;
  const m1 = t[low + 5]! * width;
  const c2 = 3 * rise - 2 * m0 - m1;
  const c3 = m0 + m1 - 2 * rise;
  net.drop[link] = -(y0 + u * (m0 + u * (c2 + u * c3)));
  net.slope[link] = -(m0 + u * (2 * c2 + u * 3 * c3)) / width;
};

const weir = (net: CompiledNetwork, link: number): void => {
  const flow = net.flow[link]!;
  const coefficient = net.parameters[link * PARAMETER_STRIDE]!;
  if (flow < 0) {
    net.drop[link] = SHUT * flow;
    net.slope[link] = SHUT;
  } else if (flow < STRAIGHT_BELOW) {
    const slope = (STRAIGHT_BELOW / coefficient) ** (2 / 3) / STRAIGHT_BELOW;
    net.drop[link] = slope * flow;
    net.slope[link] = slope;
  } else {
    const level = (flow / coefficient) ** (2 / 3);
    net.drop[link] = level;
    net.slope[link] = (2 / 3) * (level / flow);
  }
};

const resistance = (net: CompiledNetwork, link: number, oneWay: boolean): void => {
  const at = link * PARAMETER_STRIDE;
  const flow = net.flow[link]!;
  const size = Math.abs(flow);
  const ratio = net.resistanceRatio[link]!;
  const linear = net.parameters[at]!;
  const quadratic = net.parameters[at + 1]!;
  if (oneWay && flow < 0) {
    net.drop[link] = SHUT * flow;
    net.slope[link] = SHUT;
    return;
  }
  net.drop[link] = ratio * (linear + quadratic * size) * flow;
  net.slope[link] = ratio * (linear + 2 * quadratic * size);
};

const pump = (net: CompiledNetwork, link: number): void => {
  const at = link * PARAMETER_STRIDE;
  const flow = net.flow[link]!;
  const size = Math.abs(flow);
  const exponent = net.parameters[at + 2]!;
  const coefficient = net.parameters[at + 1]!;
  if (exponent < 1 && size < STRAIGHT_BELOW) {
    const slope = coefficient * STRAIGHT_BELOW ** (exponent - 1);
    net.drop[link] = slope * flow - net.parameters[at]!;
    net.slope[link] = slope;
    return;
  }
  const power = coefficient * (exponent === 2 ? size : size ** (exponent - 1));
  net.drop[link] = power * flow - net.parameters[at]!;
  net.slope[link] = exponent * power;
};

/** Head taken by every link at `flow`, and its slope, into `drop` and `slope`. */
export const evaluateLinks = (net: CompiledNetwork): void => {
  for (let link = 0; link < net.kind.length; link += 1) {
    switch (net.kind[link]) {
      case LINK_KIND.resistance:
        resistance(net, link, false);
        break;
      case LINK_KIND.conduit:
        conduit(net, link);
        break;
      case LINK_KIND.pump:
        pump(net, link);
        break;
      case LINK_KIND['pump-points']:
        pumpPoints(net, link);
        break;
      case LINK_KIND.weir:
        weir(net, link);
        break;
      case LINK_KIND['one-way']:
        resistance(net, link, true);
        break;
      default:
        net.drop[link] = -net.parameters[link * PARAMETER_STRIDE]!;
        net.slope[link] = 0;
    }
  }
};

/** Flow of every link from the flows of the chords: mass is kept at every node by construction. */
export const spreadChordFlows = (net: CompiledNetwork, chordFlow: Float64Array): void => {
  const { loopStart, loopLink, loopSign, flow } = net;
  flow.fill(0);
  for (let chord = 0; chord < chordFlow.length; chord += 1) {
    const value = chordFlow[chord]!;
    for (let at = loopStart[chord]!; at < loopStart[chord + 1]!; at += 1) {
      flow[loopLink[at]!] = flow[loopLink[at]!]! + loopSign[at]! * value;
    }
  }
};
