import type { Link, LinkLaw, NetworkSpec } from '../packages/engine/network/links.ts';
import { solveNetwork } from '../packages/engine/network/solve.ts';
import { compiled, largestFlow } from '../packages/engine/network/testing/solved.ts';
import { REFERENCE_GRAVITY, REFERENCE_VISCOSITY } from '../test/support/generalSolver.ts';

const BASKETS = 4;

const bore = (boreM: number, lengthM: number, minorK: number): LinkLaw => ({
  kind: 'conduit',
  areaM2: (Math.PI * boreM ** 2) / 4,
  hydraulicDiameterM: boreM,
  lengthM,
  relativeRoughness: 1.5e-6 / boreM,
  minorK,
  linear: 0,
  laminarConstant: 64,
  friction: 'swamee-jain-cubic',
});

const loss = (linear: number, quadratic: number): LinkLaw => ({ kind: 'resistance', linear, quadratic });

/** A basket of two beds on its floor, between two spaces of the housing, and the gap beside them. */
const basket = (place: number): Link[] => {
  const [from, to] = [`space${place}`, `space${place + 1}`];
  const [low, high] = [`floor${place}`, `between${place}`];
  return [
    { id: `floor${place}`, from, to: low, law: loss(2, 3e5) },
    { id: `lower-bed${place}`, from: low, to: high, law: loss(60 * (1 + place), 1e5) },
    { id: `upper-bed${place}`, from: high, to, law: loss(150 * (1 + place), 2e5) },
    { id: `gap${place}`, from, to, law: loss(900, 4e7) },
  ];
};

/**
 * An invented canister of 24 links and 6 loops under laws that the general solver has too: hoses and barbs by
 * Swamee–Jain with the cubic transition, beds, floors and gaps as linear–quadratic losses, a pump by three points.
 */
export const canisterNetwork = (): NetworkSpec => ({
  fixedHeadsM: { tank: 0 },
  links: [
    { id: 'strainer', from: 'tank', to: 'strained', law: bore(0.016, 0.05, 2) },
    { id: 'intake-hose', from: 'strained', to: 'intake-barb', law: bore(0.016, 1.4, 0.9) },
    { id: 'intake-barbs', from: 'intake-barb', to: 'space0', law: bore(0.013, 0.06, 1.2) },
    ...Array.from({ length: BASKETS }, (_, place) => basket(place)).flat(),
    { id: 'leak', from: 'space0', to: `space${BASKETS}`, law: loss(4000, 6e8) },
    {
      id: 'pump',
      from: `space${BASKETS}`,
      to: 'pumped',
      law: { kind: 'pump', shutoffHeadM: 1.8, coefficient: 1.8 / (1000 / 3.6e6) ** 2, exponent: 2 },
    },
    { id: 'outlet-barbs', from: 'pumped', to: 'outlet-barb', law: bore(0.013, 0.06, 1.2) },
    { id: 'outlet-hose', from: 'outlet-barb', to: 'spray', law: bore(0.016, 1.3, 1.4) },
    { id: 'spray-bar', from: 'spray', to: 'tank', law: bore(0.011, 0.25, 3) },
  ],
  kinematicViscosityM2PerS: REFERENCE_VISCOSITY,
  gravityMPerS2: REFERENCE_GRAVITY,
  usualFlowM3PerS: 1.5e-4,
});

/** Bore of the pipes that stand for beds in the general solver, m: as wide as a housing, water creeps in it. */
export const BED_BORE = 0.3;

/** Energy tolerance of ours and accuracy of the general solver at which both are within `FLOW_ERROR`. */
export const TOLERANCE = 1e-8;
export const REFERENCE_ACCURACY = 1e-3;
const FLOW_ERROR = 1e-8;

/** Refuses to time flows that are not within 1e-8 of the largest, of those solved as closely as can be. */
export const expectFlows = (flows: ArrayLike<number>, ratio: number): void => {
  const exact = compiled(canisterNetwork());
  exact.resistanceRatio.fill(ratio);
  solveNetwork(exact);
  for (const [place, { id }] of exact.spec.links.entries()) {
    const error = Math.abs(flows[place]! - exact.flow[place]!) / largestFlow(exact);
    if (!(error <= FLOW_ERROR)) throw new Error(`${id} is ${error} off`);
  }
};
