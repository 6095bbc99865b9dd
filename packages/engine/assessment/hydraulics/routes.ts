import { type Stage, stages } from '../../model/medium.ts';
import type { Route } from '../assessment.ts';
import type { Compiled } from '../compiled.ts';
import { waterInBed } from './trickling.ts';

/** Routes that carry less than this share of the flow are gathered into one named `rest`. */
const SMALLEST_SHARE = 1e-3;
/** Ways that carry less than this share of a space's water are not followed. */
const SMALLEST_BRANCH = 1e-9;

const waterOf = (compiled: Compiled, space: number): number =>
  compiled.ways.reduce(
    (sum, way) => (way.from === space ? sum + Math.max(0, compiled.network.flow[way.link]!) : sum),
    0,
  );

const contactTimeS = (compiled: Compiled, beds: readonly number[]): number =>
  beds.reduce((sum, place) => {
    const bed = compiled.beds[place]!;
    return sum + waterInBed(compiled, bed) / compiled.network.flow[bed.link]!;
  }, 0);

interface Trace {
  readonly space: number;
  readonly share: number;
  readonly beds: readonly number[];
  readonly past: readonly string[];
  /** Every way taken, by place. */
  readonly ways: readonly number[];
}

/** One route with the one or more ways through the filter that make it: they meet the same beds past the same gaps. */
export interface TracedRoute extends Pick<Trace, 'share' | 'beds' | 'past'> {
  readonly paths: readonly Pick<Trace, 'share' | 'ways'>[];
}

const follow = (compiled: Compiled): Trace[] => {
  const waters = compiled.spaces.map((_, space) => waterOf(compiled, space));
  const done: Trace[] = [];
  const open: Trace[] = waters[0]! > 0 ? [{ space: 0, share: 1, beds: [], past: [], ways: [] }] : [];
  for (let trace = open.pop(); trace; trace = open.pop()) {
    for (const [place, way] of compiled.ways.entries()) {
      if (way.from !== trace.space) continue;
      const fraction = Math.max(0, compiled.network.flow[way.link]!) / waters[trace.space]!;
      if (fraction < SMALLEST_BRANCH) continue;
      const next: Trace = {
        space: way.to,
        share: trace.share * fraction,
        beds: [...trace.beds, ...way.beds],
        past:
          way.beds.length === 0 && way.to >= 0 && isPast(compiled, way.id)
            ? [...trace.past, way.id]
            : trace.past,
        ways: [...trace.ways, place],
      };
      if (way.to < 0)
        done.push(isOverflow(compiled, way.id) ? { ...next, past: [...next.past, way.id] } : next);
      else open.push(next);
    }
  }
  return done;
};

/** A slot beside a chamber that holds beds. */
const isPastBeds = ({ model, beds }: Compiled, id: string): boolean => {
  const slot = model.filter.otherSlots?.find((one) => `slot:${one.id}` === id);
  return beds.some((bed) => bed.chamber === slot?.chamber);
};

/** A way that goes past media: a gap beside a chamber that holds beds, a leak, or an opening not meant. */
const isPast = (compiled: Compiled, id: string): boolean => {
  if (id.startsWith('gap:')) return compiled.beds.some((bed) => `gap:${bed.chamber}` === id);
  if (id.startsWith('slot:')) return isPastBeds(compiled, id);
  if (id.startsWith('floor:') || id.startsWith('bed:')) return false;
  if (compiled.layout.weirs.some((weir) => weir.id === id && weir.purpose === 'passage')) return false;
  return compiled.layout.openings.find((opening) => opening.id === id)?.bypass ?? true;
};

const isOverflow = (compiled: Compiled, id: string): boolean =>
  compiled.layout.weirs.some((weir) => weir.id === id && weir.purpose === 'overflow');

/** Every route at the flows of the last solve, the largest share first; `rest` is what is too small to be followed. */
export const tracedRoutes = (
  compiled: Compiled,
): { readonly routes: readonly TracedRoute[]; readonly rest: number | undefined } => {
  const merged = new Map<string, TracedRoute>();
  for (const { share, beds, past, ways } of follow(compiled)) {
    const key = `${beds.join(',')}|${past.join(',')}`;
    const before = merged.get(key);
    const paths = [...(before?.paths ?? []), { share, ways }];
    merged.set(key, { share: share + (before?.share ?? 0), beds, past, paths });
  }
  const sorted = [...merged.values()].sort((a, b) => b.share - a.share);
  const routes = sorted.filter((route) => route.share >= SMALLEST_SHARE);
  const rest = 1 - routes.reduce((sum, route) => sum + route.share, 0);
  const isWhole = routes.length === sorted.length && sorted.length > 0;
  return { routes, rest: isWhole ? undefined : Math.max(0, rest) };
};

/**
 * Every route from inlet to outlet with its share of the flow, at the flows of the last solve. Spaces between
 * chambers are fully mixed, so a route's share is the product of its branches' shares.
 */
export const routesOf = (compiled: Compiled): Route[] => {
  const { routes, rest } = tracedRoutes(compiled);
  const named: Route[] = routes.map(({ share, beds, past }, place) => ({
    id: `route-${place + 1}`,
    share,
    beds: beds.map((bed) => compiled.beds[bed]!.id),
    past,
    contactTimeS: contactTimeS(compiled, beds),
  }));
  if (rest === undefined) return named;
  return [...named, { id: 'rest', share: rest, beds: [], past: [], contactTimeS: 0 }];
};

/** Share of the flow that meets no medium of each stage; 1 for a stage without a bed. */
export const bypassOf = (compiled: Compiled): Record<Stage, number> => {
  const missing = (stage: Stage): number => {
    if (!compiled.beds.some((bed) => bed.medium.stage === stage) || waterOf(compiled, 0) <= 0) return 1;
    const missed = new Float64Array(compiled.spaces.length);
    missed[0] = 1;
    let out = 0;
    for (const way of compiled.ways) {
      const water = waterOf(compiled, way.from);
      if (water <= 0) continue;
      const meets = way.beds.some((place) => compiled.beds[place]!.medium.stage === stage);
      const share = meets ? 0 : (missed[way.from]! * Math.max(0, compiled.network.flow[way.link]!)) / water;
      if (way.to < 0) out += share;
      else missed[way.to] = missed[way.to]! + share;
    }
    return Math.min(1, out);
  };
  const [mechanical, biological, chemical] = stages.map(missing) as [number, number, number];
  return { mechanical, biological, chemical };
};
