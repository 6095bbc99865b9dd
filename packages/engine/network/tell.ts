import type { CompiledNetwork } from './compiled.ts';
import { evaluateLink } from './evaluate.ts';
import { evaluateWays } from './wayLaws.ts';

/** Flow of every link from that of its way, if it has not been told since the last solve. */
export const tellFlows = ({ ways, links, telling }: CompiledNetwork): void => {
  if (telling.flows) return;
  telling.flows = true;
  const { link, way, sense } = ways.members;
  for (let at = 0; at < link.length; at += 1) links.flow[link[at]!] = sense[at]! * ways.flow[way[at]!]!;
};

/** What every link takes and every node's head, if they have not been told since the last solve. */
export const tellHeads = (net: CompiledNetwork): void => {
  if (net.telling.heads) return;
  net.telling.heads = true;
  tellFlows(net);
  // The last step may not have been evaluated: friction and the links that are asked one by one are told by this.
  evaluateWays(net);
  tellResisting(net);
  const { members, stillLinks } = net.ways;
  for (let at = members.steadyFrom; at < members.othersFrom; at += 1)
    evaluateLink(net.links, members.link[at]!);
  for (let place = 0; place < stillLinks.length; place += 1) evaluateLink(net.links, stillLinks[place]!);
  tellNodes(net);
};

/** Heads and slopes of resistances and conduits, at the ratios for which the network was solved. */
const tellResisting = ({ ways, links }: CompiledNetwork): void => {
  const { members, bores } = ways;
  for (let at = 0; at < members.steadyFrom; at += 1) {
    const link = members.link[at]!;
    const through = links.flow[link]!;
    let linear = members.linear[at]!;
    let quadratic = members.quadratic[at]!;
    if (at >= members.conduitsFrom) {
      linear += members.friction[at]! * bores.atRest[members.bore[at]!]!;
      quadratic += members.friction[at]! * bores.rise[members.bore[at]!]!;
    }
    const along = linear + quadratic * Math.abs(through);
    links.drop[link] = members.ratio[at]! * along * through;
    links.slope[link] = members.ratio[at]! * (along + quadratic * Math.abs(through));
  }
};

const tellNodes = ({ head, links, topology }: CompiledNetwork): void => {
  const { drop } = links;
  const { walkLink, walkNode, walkParent, walkSign } = topology;
  head[0] = 0;
  for (let place = 0; place < walkLink.length; place += 1) {
    head[walkNode[place]!] = head[walkParent[place]!]! - walkSign[place]! * drop[walkLink[place]!]!;
  }
};
