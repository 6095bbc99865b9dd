import {
  dispersionOfSpread,
  particlePecletChungWen1968,
  spreadOfDispersion,
  spreadOfOpenDispersion,
  tanksOfBed,
} from '@fettle/engine/laws/residence/dispersion.ts';
import {
  morrillIndex,
  routesCumulative,
  routesDensity,
  routesQuantile,
  summariseRoutes,
} from '@fettle/engine/laws/residence/routes.ts';
import {
  inSeries,
  residenceCumulative,
  residenceDensity,
  tanksOfSpread,
} from '@fettle/engine/laws/residence/tanksInSeries.ts';
import { type TracerSample, tracerMoments, tracerQuantile } from '@fettle/engine/laws/residence/tracer.ts';
import { gammaLower, logGamma } from '@fettle/engine/numerics/gamma.ts';
import { adapter, type Registry } from './adapter.ts';

const stretch = { meanS: 's', tanks: '1' } as const;
const samples = {
  stepS: 's',
  c0: '1',
  c1: '1',
  c2: '1',
  c3: '1',
  c4: '1',
  c5: '1',
  c6: '1',
  c7: '1',
} as const;

const curveOf = (test: Readonly<Record<keyof typeof samples, number>>): TracerSample[] =>
  [test.c0, test.c1, test.c2, test.c3, test.c4, test.c5, test.c6, test.c7].map((concentration, i) => ({
    concentration,
    timeS: i * test.stepS,
  }));

/** Readings of a shot at uneven times: every minute to 10 min, then 12 and 14 min, as the print has them. */
const unevenTimes = {
  c0: 0,
  c1: 1,
  c2: 2,
  c3: 3,
  c4: 4,
  c5: 5,
  c6: 6,
  c7: 7,
  c8: 8,
  c9: 9,
  c10: 10,
  c12: 12,
  c14: 14,
};
type Uneven = keyof typeof unevenTimes;
const uneven = Object.fromEntries(Object.keys(unevenTimes).map((name) => [name, '1'])) as Record<
  Uneven,
  string
>;

const unevenCurve = (test: Readonly<Record<Uneven, number>>): TracerSample[] =>
  Object.entries(unevenTimes).map(([name, minutes]) => ({
    timeS: 60 * minutes,
    concentration: test[name as Uneven],
  }));

const bed = { velocityMPerS: 'm/s', sizeM: 'm', voidage: '1', kinematicViscosityM2PerS: 'm2/s' } as const;

const bypassed = { ...stretch, share: '1', otherMeanS: 's', otherTanks: '1' } as const;

const routesOf = (pair: Readonly<Record<keyof typeof bypassed, number>>) => [
  { share: pair.share, meanS: pair.meanS, tanks: pair.tanks },
  { share: 1 - pair.share, meanS: pair.otherMeanS, tanks: pair.otherTanks },
];

export const residenceLaws = {
  'tracerMoments.mean': adapter({
    inputs: samples,
    result: 's',
    compute: (test) => tracerMoments(curveOf(test)).meanS,
  }),
  'tracerMoments.variance': adapter({
    inputs: samples,
    result: 's2',
    compute: (test) => tracerMoments(curveOf(test)).varianceS2,
  }),
  'tracerMoments.area': adapter({
    inputs: samples,
    result: 's',
    compute: (test) => tracerMoments(curveOf(test)).area,
  }),
  'tracerMoments.uneven.mean': adapter({
    inputs: uneven,
    result: 's',
    compute: (test) => tracerMoments(unevenCurve(test)).meanS,
  }),
  'tracerMoments.uneven.variance': adapter({
    inputs: uneven,
    result: 's2',
    compute: (test) => tracerMoments(unevenCurve(test)).varianceS2,
  }),
  particlePecletChungWen1968: adapter({ inputs: bed, result: '1', compute: particlePecletChungWen1968 }),
  tanksOfBed: adapter({ inputs: { ...bed, depthM: 'm' }, result: '1', compute: tanksOfBed }),
  spreadOfDispersion: adapter({
    inputs: { dispersion: '1' },
    result: '1',
    compute: ({ dispersion }) => spreadOfDispersion(dispersion),
  }),
  spreadOfOpenDispersion: adapter({
    inputs: { dispersion: '1' },
    result: '1',
    compute: ({ dispersion }) => spreadOfOpenDispersion(dispersion),
  }),
  dispersionOfSpread: adapter({
    inputs: { spread: '1' },
    result: '1',
    compute: ({ spread }) => dispersionOfSpread(spread),
  }),
  'tracerQuantile.half': adapter({
    inputs: samples,
    result: 's',
    compute: (test) => tracerQuantile(curveOf(test), 0.5),
  }),
  residenceDensity: adapter({ inputs: { ...stretch, timeS: 's' }, result: '1/s', compute: residenceDensity }),
  residenceCumulative: adapter({
    inputs: { ...stretch, timeS: 's' },
    result: '1',
    compute: residenceCumulative,
  }),
  tanksOfSpread: adapter({ inputs: { meanS: 's', varianceS2: 's2' }, result: '1', compute: tanksOfSpread }),
  'inSeries.tanks': adapter({
    inputs: { firstMeanS: 's', firstTanks: '1', secondMeanS: 's', secondTanks: '1' },
    result: '1',
    compute: (two) =>
      inSeries([
        { meanS: two.firstMeanS, tanks: two.firstTanks },
        { meanS: two.secondMeanS, tanks: two.secondTanks },
      ]).tanks,
  }),
  morrillIndex: adapter({ inputs: { t10S: 's', t90S: 's' }, result: '1', compute: morrillIndex }),
  routesQuantile: adapter({
    inputs: { ...stretch, fraction: '1' },
    result: 's',
    compute: ({ fraction, ...one }) => routesQuantile([{ ...one, share: 1 }], fraction),
  }),
  'summariseRoutes.morrillIndex': adapter({
    inputs: stretch,
    result: '1',
    compute: (one) => summariseRoutes([{ ...one, share: 1 }]).morrillIndex,
  }),
  'summariseRoutes.bypassed.t50': adapter({
    inputs: bypassed,
    result: 's',
    compute: (pair) => summariseRoutes(routesOf(pair)).t50S,
  }),
  'summariseRoutes.bypassed.variance': adapter({
    inputs: bypassed,
    result: 's2',
    compute: (pair) => summariseRoutes(routesOf(pair)).varianceS2,
  }),
  'routesCumulative.bypassed': adapter({
    inputs: { ...bypassed, timeS: 's' },
    result: '1',
    compute: (pair) => routesCumulative(routesOf(pair), pair.timeS),
  }),
  'routesDensity.bypassed': adapter({
    inputs: { ...bypassed, timeS: 's' },
    result: '1/s',
    compute: (pair) => routesDensity(routesOf(pair), pair.timeS),
  }),
  gammaLower: adapter({ inputs: { shape: '1', x: '1' }, result: '1', compute: gammaLower }),
  logGamma: adapter({ inputs: { x: '1' }, result: '1', compute: ({ x }) => logGamma(x) }),
} as const satisfies Registry;
