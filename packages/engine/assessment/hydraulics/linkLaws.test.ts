import { describe, expect, it } from 'vitest';
import { fittings } from '../../catalogue/fittings.ts';
import { media } from '../../catalogue/media.ts';
import { bedShapes } from '../../families/bedShape.ts';
import { familyById } from '../../families/families.ts';
import type { Chamber } from '../../families/layout.ts';
import { GRAVITY } from '../../laws/constants.ts';
import {
  fittingKHooper1981,
  suddenContractionKCrane1988,
  suddenExpansionKBorda1766,
} from '../../laws/hydraulics/fittings.ts';
import { frictionFactorChurchill1977 } from '../../laws/hydraulics/friction.ts';
import {
  ORIFICE_DISCHARGE_COEFFICIENT,
  orificePressure,
  perforatedPlateK,
} from '../../laws/hydraulics/orifice.ts';
import { dutyAtSpeed, pumpHeadTwoPoint } from '../../laws/hydraulics/pump.ts';
import { slotPressure } from '../../laws/hydraulics/slot.ts';
import type { LinkLaw } from '../../network/links.ts';
import { flowOf, solveNetwork } from '../../network/solve.ts';
import { compiled } from '../../network/testing/solved.ts';
import { hose, stackCanister, withFilter } from '../testing/models.ts';
import { bedResistance } from './bed.ts';
import { barbsLaw, bedLaw, fittingsLaw, floorLaw, hoseLaw, openingLaw, slotLaw } from './linkLaws.ts';
import { pumpLaw } from './pumpLaws.ts';
import { waterState } from './water.ts';

const model = stackCanister();
const water = waterState(model.tank);
const { densityKgPerM3, viscosityPaS, kinematicViscosityM2PerS } = water;
const perHead = densityKgPerM3 * GRAVITY;

/** Flow that a link lets through between two levels, m³/s. */
const through = (law: LinkLaw, headM: number): number => {
  const net = compiled({
    fixedHeadsM: { above: headM, below: 0 },
    links: [{ id: 'one', from: 'above', to: 'below', law }],
    kinematicViscosityM2PerS,
    gravityMPerS2: GRAVITY,
    usualFlowM3PerS: 1e-4,
  });
  solveNetwork(net);
  return flowOf(net, 'one');
};

const run = {
  ...hose({ lengthM: 1.4, boreM: 0.016, barbBoreM: 0.0125, extraK: 1.3 }),
  fittings: ['elbow-90'],
};
const velocityIn = (boreM: number, flow: number): number => (4 * flow) / (Math.PI * boreM ** 2);
const headOf = (k: number, velocity: number): number => (k * velocity ** 2) / (2 * GRAVITY);
const frictionK = (boreM: number, lengthM: number, flow: number): number => {
  const reynolds = (velocityIn(boreM, flow) * boreM) / kinematicViscosityM2PerS;
  const relativeRoughness = run.roughnessM / boreM;
  return (frictionFactorChurchill1977({ reynolds, relativeRoughness }) * lengthM) / boreM;
};

const ends = { smallBoreM: run.barbBoreM, largeBoreM: run.boreM };
/** Loss of one fitting of the catalogue by Hooper's law, velocity heads. */
const fittingK = (id: string, flow: number): number => {
  const { k1, kInfinity, scalesWithBore } = fittings[id]!;
  const reynolds = (velocityIn(run.boreM, flow) * run.boreM) / kinematicViscosityM2PerS;
  const boreM = scalesWithBore ? run.boreM : Number.POSITIVE_INFINITY;
  return fittingKHooper1981({ k1: k1.value, kInfinity: kInfinity.value, reynolds, boreM });
};
const barbK = suddenContractionKCrane1988(ends) + suddenExpansionKBorda1766(ends);

const gap = { thicknessM: 6e-4, widthM: 0.5, lengthM: 0.05 };
const holeM = 0.011;
const chamber = familyById(model.filter.family)!.layOut(model.filter.measurements).chambers[0]!;
const width = (2 * chamber.areaM2) / (chamber.widthM + chamber.areaM2 / chamber.widthM);
const hydraulicWidthOf = ({ areaM2, widthM }: Chamber): number => (2 * areaM2) / (widthM + areaM2 / widthM);
const inChamber = (flow: number): number => flow / chamber.areaM2;

const bedHead = (id: string, depthM: number) => (flow: number) => {
  const perDepth = bedResistance(media[id]!, { water, vesselM: width });
  const u = inChamber(flow);
  return (depthM * (perDepth.linearPaSPerM2 * u + perDepth.quadraticPaS2PerM3 * u ** 2)) / perHead;
};

/** What resists in a filter, beside the head that its published law gives at a flow, m. */
const resisting: readonly (readonly [what: string, law: LinkLaw, headM: (flow: number) => number])[] = [
  [
    'a hose: Churchill 1977',
    hoseLaw(run),
    (flow) => headOf(frictionK(run.boreM, run.lengthM, flow), velocityIn(run.boreM, flow)),
  ],
  [
    'fittings of the intake, its mouth and coils: Hooper 1981',
    fittingsLaw(run, 'intake', water),
    (flow) =>
      headOf(
        fittingK('elbow-90', flow) + fittingK('entrance-sharp', flow) + run.extraK,
        velocityIn(run.boreM, flow),
      ),
  ],
  [
    'fittings of the outlet and its end: Hooper 1981',
    fittingsLaw(run, 'outlet', water),
    (flow) =>
      headOf(fittingK('elbow-90', flow) + fittingK('exit', flow) + run.extraK, velocityIn(run.boreM, flow)),
  ],
  [
    'two barbs of 3 cm: Crane 1988 into them, Borda 1766 out of them',
    barbsLaw(run),
    (flow) => headOf(2 * barbK + frictionK(run.barbBoreM, 0.06, flow), velocityIn(run.barbBoreM, flow)),
  ],
  [
    'a gap: plane slot after Churchill 1977',
    slotLaw(gap),
    (flowM3PerS) => slotPressure({ ...gap, flowM3PerS, densityKgPerM3, viscosityPaS }) / perHead,
  ],
  [
    'an opening: Torricelli with Sampson 1891',
    openingLaw((Math.PI * holeM ** 2) / 4, water),
    (flowM3PerS) =>
      orificePressure({
        flowM3PerS,
        diameterM: holeM,
        dischargeCoefficient: ORIFICE_DISCHARGE_COEFFICIENT,
        densityKgPerM3,
        viscosityPaS,
      }) / perHead,
  ],
  [
    'a floor with holes: Idelchik 1986',
    floorLaw(chamber),
    (flow) => headOf(perforatedPlateK({ openFraction: chamber.floorOpenFraction }), inChamber(flow)),
  ],
  ...['foam-30ppi', 'floss-packed', 'ceramic-rings-15mm', 'gravel-4mm'].map(
    (id) =>
      [
        `a bed of ${id}, by the law of its medium`,
        bedLaw({ medium: media[id]!, shape: bedShapes(chamber, [{ depthM: 0.07 }])[0]! }, chamber, water),
        bedHead(id, 0.07),
      ] as const,
  ),
];

describe.each(resisting)('%s', (_what, law, headM) => {
  it.each([2e-7, 1e-5, 1.2e-4, 6e-4])('lets %s m³/s through at the head that its law gives', (flow) => {
    expect(through(law, headM(flow)) / flow).toBeCloseTo(1, 9);
  });
});

describe('a bed about a tube', () => {
  const chamberAbout = (innerRadiusM: number, depthM: number): Chamber => ({
    ...chamber,
    areaM2: Math.PI * 0.2 * (2 * innerRadiusM + depthM),
    depthM,
    ring: { innerRadiusM, lengthM: 0.2 },
  });
  const lawAbout = (id: string, about: Chamber): LinkLaw =>
    bedLaw({ medium: media[id]!, shape: bedShapes(about, [{ depthM: about.depthM }])[0]! }, about, water);

  it.each(['foam-20ppi', 'floss-packed', 'gravel-4mm'])(
    'of %s takes what its rings take one after the other',
    (id) => {
      const about = chamberAbout(0.012, 0.04);
      const perDepth = bedResistance(media[id]!, { water, vesselM: hydraulicWidthOf(about) });
      const [rings, flow] = [4000, 2e-4];
      let headM = 0;
      for (let ring = 0; ring < rings; ring += 1) {
        const u = flow / (2 * Math.PI * 0.2 * (0.012 + (0.04 * (ring + 0.5)) / rings));
        headM += (perDepth.linearPaSPerM2 * u + perDepth.quadraticPaS2PerM3 * u ** 2) * (0.04 / rings);
      }
      expect(through(lawAbout(id, about), headM / perHead) / flow).toBeCloseTo(1, 6);
    },
  );

  it.each([
    ['a tenth', 0.1],
    ['a hundredth', 0.01],
    ['a thousandth', 0.001],
  ])('as thick as %s of its radius is a plane bed within a quarter of the square of that', (_part, part) => {
    const about = chamberAbout(0.05, 0.05 * part);
    const { ring: _, ...plane } = about;
    const flow = 2e-4;
    const round = lawAbout('foam-30ppi', about);
    const flat = lawAbout('foam-30ppi', plane);
    if (round.kind !== 'resistance' || flat.kind !== 'resistance') throw new Error('not a bed');
    const head = (law: typeof round): number => law.linear * flow + law.quadratic * flow ** 2;
    // By series: t²/(12 r²) for the part that goes with the flow, t²/(4 r²) for its square.
    expect(Math.abs(head(round) / head(flat) - 1)).toBeLessThan(part ** 2 / 4);
    expect(head(round)).toBeGreaterThan(head(flat));
  });

  it('takes more head the narrower its tube, for the water crowds there', () => {
    const heads = [0.03, 0.02, 0.01, 0.005].map((innerRadiusM) => {
      const law = lawAbout('foam-30ppi', chamberAbout(innerRadiusM, 0.05 - innerRadiusM));
      return law.kind === 'resistance' ? law.quadratic : 0;
    });
    expect(heads).toEqual(heads.toSorted((a, b) => a - b));
  });
});

describe('a pump', () => {
  const curve = { kind: 'two-point', shutoffHeadM: 1.6, freeFlowM3PerS: 3e-4 } as const;

  it.each([1, 0.8, 0.5])('at speed %s gives what the affinity laws make of its curve', (speedRatio) => {
    const pump = { ...model.filter.pump, curve, speedRatio };
    const law = pumpLaw({ ...withFilter(model, { pump }), tests: [] });
    const flowM3PerS = 1.3e-4;
    const duty = dutyAtSpeed({
      flowM3PerS,
      headM: pumpHeadTwoPoint({ ...curve, flowM3PerS }),
      powerW: 0,
      speedRatio,
    });
    expect(through(law, -duty.headM) / duty.flowM3PerS).toBeCloseTo(1, 9);
  });
});
