import type { CompiledNetwork } from './compiled.ts';
import { evaluateLink, frictionPerFlow } from './evaluate.ts';
import { PARAMETER_STRIDE } from './lawNumbers.ts';

/** Adds up what resistances and conduits take, at the ratios as they stand now. */
const gatherResistances = ({ ways, resistanceRatio }: CompiledNetwork): void => {
  const { linear, quadratic, members } = ways;
  const { way, link, ratio, steadyFrom } = members;
  const { linear: memberLinear, quadratic: memberQuadratic } = members;
  for (let at = 0; at < steadyFrom; at += 1) {
    const into = way[at]!;
    const times = resistanceRatio[link[at]!]!;
    ratio[at] = times;
    linear[into] = linear[into]! + times * memberLinear[at]!;
    quadratic[into] = quadratic[into]! + times * memberQuadratic[at]!;
  }
};

/** Adds friction in all bores as the lines that were last worked out. */
const gatherFriction = ({ ways }: CompiledNetwork): void => {
  const { linear, quadratic, members, bores } = ways;
  const { bore, friction, ratio, conduitsFrom, steadyFrom } = members;
  const { way, weight, atRest, rise } = bores;
  for (let place = 0; place < weight.length; place += 1) weight[place] = 0;
  for (let at = conduitsFrom; at < steadyFrom; at += 1) {
    weight[bore[at]!] = weight[bore[at]!]! + ratio[at]! * friction[at]!;
  }
  for (let place = 0; place < weight.length; place += 1) {
    const into = way[place]!;
    linear[into] = linear[into]! + weight[place]! * atRest[place]!;
    quadratic[into] = quadratic[into]! + weight[place]! * rise[place]!;
  }
};

/** Adds what pumps and held levels give, as their numbers stand now. */
const gatherSteady = ({ ways, parameters }: CompiledNetwork): void => {
  const { given, linear, quadratic, members } = ways;
  for (let at = members.steadyFrom; at < members.othersFrom; at += 1) {
    const into = members.way[at]!;
    const numbers = members.link[at]! * PARAMETER_STRIDE;
    given[into] = given[into]! - members.sense[at]! * parameters[numbers]!;
    const falls = parameters[numbers + 1]!;
    if (parameters[numbers + 2] === 1) linear[into] = linear[into]! + falls;
    else quadratic[into] = quadratic[into]! + falls;
  }
};

/** Puts the law of each way together anew, from ratios and parameters as they stand now. */
export const gatherLaws = (net: CompiledNetwork): void => {
  const { given, linear, quadratic } = net.ways;
  for (let way = 0; way < given.length; way += 1) {
    given[way] = 0;
    linear[way] = 0;
    quadratic[way] = 0;
  }
  gatherResistances(net);
  gatherFriction(net);
  gatherSteady(net);
};

/** Works friction in a bore out anew, and puts the new line into its way's law. */
const renewFriction = ({ ways, links }: CompiledNetwork, bore: number, size: number): void => {
  const { linear, quadratic } = ways;
  const { way, link, weight, atRest, rise, touches } = ways.bores;
  const into = way[bore]!;
  const friction = frictionPerFlow(links, link[bore]!, size);
  const rest = friction.value - friction.rise * size;
  linear[into] = linear[into]! + weight[bore]! * (rest - atRest[bore]!);
  quadratic[into] = quadratic[into]! + weight[bore]! * (friction.rise - rise[bore]!);
  atRest[bore] = rest;
  rise[bore] = friction.rise;
  touches[bore] = size;
};

/** Works friction out anew wherever the flow is further from where its line touches the law than that may be. */
const renewFarFriction = (net: CompiledNetwork): void => {
  const { flow } = net.ways;
  const { way, touches, reach } = net.ways.bores;
  const { reachSquared } = net.telling;
  for (let bore = 0; bore < way.length; bore += 1) {
    const size = Math.abs(flow[way[bore]!]!);
    const off = size - touches[bore]!;
    if (!(off * off <= reachSquared * reach[bore]! * size * size)) renewFriction(net, bore, size);
  }
};

/** Asks the links one by one whose laws have forms of their own; tells the largest head. */
const evaluateOthers = ({ ways, links }: CompiledNetwork): number => {
  const { flow, drop, slope, members } = ways;
  let largest = 0;
  for (let at = members.othersFrom; at < members.link.length; at += 1) {
    const link = members.link[at]!;
    const way = members.way[at]!;
    const sense = members.sense[at]!;
    links.flow[link] = sense * flow[way]!;
    evaluateLink(links, link);
    drop[way] = drop[way]! + sense * links.drop[link]!;
    slope[way] = slope[way]! + links.slope[link]!;
    largest = Math.max(largest, Math.abs(links.drop[link]!));
  }
  return largest;
};

/**
 * Head that every way takes at its flow, and its slope.
 * @returns the largest head taken or given, m
 */
export const evaluateWays = (net: CompiledNetwork): number => {
  renewFarFriction(net);
  const { given, linear, quadratic, flow, drop, slope, leastSlope, members } = net.ways;
  let largest = net.givenHeadM;
  for (let way = 0; way < flow.length; way += 1) {
    const through = flow[way]!;
    const steep = quadratic[way]! * Math.abs(through);
    const along = linear[way]! + steep;
    const head = along * through;
    drop[way] = given[way]! + head;
    slope[way] = Math.max(along + steep, leastSlope[way]!);
    largest = Math.max(largest, Math.abs(head));
  }
  return members.othersFrom < members.link.length ? Math.max(largest, evaluateOthers(net)) : largest;
};

/** Slopes for a first step from rest, where a quadratic law would be flat: those of the usual flow. */
export const takeUsualSlopes = ({ ways, usualSlope, resistanceRatio }: CompiledNetwork): void => {
  const { slope, leastSlope, members } = ways;
  for (let way = 0; way < slope.length; way += 1) slope[way] = leastSlope[way]!;
  for (let at = 0; at < members.link.length; at += 1) {
    const link = members.link[at]!;
    const way = members.way[at]!;
    slope[way] = slope[way]! + usualSlope[link]! * resistanceRatio[link]!;
  }
};
