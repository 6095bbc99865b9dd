import {
  coilFrictionIto1959,
  coilFrictionLaminarWhite1929,
  coilFrictionMishraGupta1979,
} from '@fettle/engine/laws/hydraulics/coils.ts';
import {
  type BoreFlow,
  frictionFactorChurchill1977,
  frictionFactorColebrook1939,
  frictionFactorHaaland1983,
  frictionFactorSwameeJain1976,
  frictionFactorSwameeJainCubic,
} from '@fettle/engine/laws/hydraulics/friction.ts';
import {
  unionizedAmmoniaFraction,
  unionizedAmmoniaFractionBell2007,
  unionizedAmmoniaFractionEmerson1975,
  unionizedAmmoniaFractionKhoo1977,
} from '@fettle/engine/laws/water/ammonia.ts';
import {
  seawaterDensityMilleroPoisson1981,
  waterDensity,
  waterDensityIapwsSr6,
  waterDensityKell1975,
} from '@fettle/engine/laws/water/density.ts';
import {
  oxygenSaturationBensonKrause1984,
  oxygenSaturationGarciaGordon1992,
} from '@fettle/engine/laws/water/oxygen.ts';
import {
  seawaterViscositySharqawy2010,
  waterViscosity,
  waterViscosityIapwsSr6,
} from '@fettle/engine/laws/water/viscosity.ts';

type Point = Readonly<Record<string, number>>;

/** A law that is known to lie further off in part of the grid. */
export interface Outlier<At extends Point> {
  readonly law: string;
  readonly where: (at: At) => boolean;
  readonly withinFraction: number;
  readonly reason: string;
}

/** Laws for one quantity. They have to agree with their median all over the grid. */
export interface Neighbours<At extends Point = Point> {
  readonly quantity: string;
  /** Largest deviation from the median, 1. */
  readonly withinFraction: number;
  readonly grid: readonly At[];
  readonly laws: Readonly<Record<string, (at: At) => number>>;
  readonly outliers: readonly Outlier<At>[];
}

/** One law at one point further from the median than it may be. */
export interface Departure {
  readonly law: string;
  readonly at: Point;
  readonly fraction: number;
  readonly allowed: number;
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
};

/** Where the laws of a group depart further than allowed. */
export const departures = <At extends Point>(group: Neighbours<At>): Departure[] =>
  group.grid.flatMap((at) => {
    const values = Object.entries(group.laws).map(([law, compute]) => ({ law, value: compute(at) }));
    const middle = median(values.map(({ value }) => value));
    return values.flatMap(({ law, value }) => {
      const known = group.outliers.find((outlier) => outlier.law === law && outlier.where(at));
      const allowed = known?.withinFraction ?? group.withinFraction;
      const fraction = Math.abs(value / middle - 1);
      return fraction <= allowed ? [] : [{ law, at, fraction, allowed }];
    });
  });

/** Outliers that no point of the grid needs. */
export const needlessOutliers = <At extends Point>(group: Neighbours<At>): string[] =>
  group.outliers
    .filter((outlier) => {
      const others = group.outliers.filter((each) => each !== outlier);
      return departures({ ...group, outliers: others }).length === departures(group).length;
    })
    .map(({ law }) => law);

const degrees = [0.01, 4, 10, 15, 20, 25, 30, 35, 40];
const fresh = degrees.map((t) => ({ temperatureK: 273.15 + t, salinity: 0 }));
const sea = degrees.flatMap((t) => [5, 20, 35].map((salinity) => ({ temperatureK: 273.15 + t, salinity })));
const sour = [5, 15, 25, 30].flatMap((t) =>
  [6.5, 7.5, 8.3, 9].map((pH) => ({ temperatureK: 273.15 + t, pH, salinity: 0 })),
);
const bores = [2e3, 3e3, 4e3, 1e4, 1e5, 1e6].flatMap((reynolds) =>
  [1e-6, 1e-4, 1e-3, 0.02].map((relativeRoughness) => ({ reynolds, relativeRoughness })),
);

const coils = (reynolds: readonly number[]) =>
  reynolds.flatMap((each) => [0.02, 0.05, 0.1].map((curvature) => ({ reynolds: each, curvature })));
/** Mishra & Gupta over the friction of a smooth straight hose. */
const smoothCoil = (flow: { readonly reynolds: number; readonly curvature: number }): number =>
  coilFrictionMishraGupta1979({
    ...flow,
    straightFactor: frictionFactorChurchill1977({ ...flow, relativeRoughness: 0 }),
  });

/** Lets the laws of a group follow from its grid, then forgets the kind of grid. */
const neighbours = <At extends Point>(group: Neighbours<At>) => ({
  quantity: group.quantity,
  departures: () => departures(group),
  needlessOutliers: () => needlessOutliers(group),
});

export const neighbourhoods = [
  neighbours({
    quantity: 'density of water without salt',
    withinFraction: 6e-6,
    grid: fresh,
    laws: { waterDensityIapwsSr6, waterDensityKell1975, seawaterDensityMilleroPoisson1981, waterDensity },
    outliers: [],
  }),
  neighbours({
    quantity: 'density of sea water',
    withinFraction: 3e-6,
    grid: sea,
    laws: { seawaterDensityMilleroPoisson1981, waterDensity },
    outliers: [],
  }),
  neighbours({
    quantity: 'viscosity of water without salt',
    withinFraction: 2e-3,
    grid: fresh,
    laws: { waterViscosityIapwsSr6, seawaterViscositySharqawy2010, waterViscosity },
    outliers: [],
  }),
  neighbours({
    quantity: 'viscosity of sea water',
    withinFraction: 2e-3,
    grid: sea,
    laws: { seawaterViscositySharqawy2010, waterViscosity },
    outliers: [],
  }),
  neighbours({
    quantity: 'oxygen saturation at one atmosphere',
    withinFraction: 1e-3,
    grid: [...fresh, ...sea],
    laws: {
      oxygenSaturationBensonKrause1984: (water) =>
        oxygenSaturationBensonKrause1984({ ...water, pressurePa: 101_325 }),
      oxygenSaturationGarciaGordon1992,
    },
    outliers: [],
  }),
  neighbours({
    quantity: 'un-ionized ammonia in fresh water',
    withinFraction: 1e-12,
    grid: sour,
    laws: {
      unionizedAmmoniaFractionEmerson1975,
      unionizedAmmoniaFractionKhoo1977,
      unionizedAmmoniaFraction,
    },
    outliers: [],
  }),
  neighbours({
    quantity: 'un-ionized ammonia in sea water',
    withinFraction: 0.03,
    grid: sour.flatMap((water) => [20, 34].map((salinity) => ({ ...water, salinity }))),
    laws: { unionizedAmmoniaFractionKhoo1977, unionizedAmmoniaFractionBell2007 },
    outliers: [],
  }),
  neighbours({
    quantity: 'friction in a full round bore',
    withinFraction: 0.03,
    grid: bores.filter(({ reynolds }) => reynolds >= 1e4),
    laws: {
      frictionFactorChurchill1977,
      frictionFactorColebrook1939,
      frictionFactorHaaland1983,
      frictionFactorSwameeJain1976,
      frictionFactorSwameeJainCubic,
    },
    outliers: [],
  }),
  neighbours({
    quantity: 'friction in a coil, laminar',
    withinFraction: 0.03,
    grid: coils([100, 300, 1000, 2000, 4000]),
    laws: { coilFrictionLaminarWhite1929, coilFrictionMishraGupta1979: smoothCoil },
    outliers: [],
  }),
  neighbours({
    quantity: 'friction in a smooth coil, turbulent',
    withinFraction: 0.03,
    grid: coils([15_000, 30_000, 60_000, 100_000]),
    laws: { coilFrictionIto1959, coilFrictionMishraGupta1979: smoothCoil },
    outliers: [],
  }),
  neighbours({
    quantity: 'friction in a full round bore between laminar and turbulent flow',
    withinFraction: 0.03,
    grid: bores.filter(({ reynolds }) => reynolds < 1e4),
    laws: { frictionFactorChurchill1977, frictionFactorSwameeJainCubic },
    outliers: ['frictionFactorChurchill1977', 'frictionFactorSwameeJainCubic'].map((law) => ({
      law,
      where: ({ reynolds }: BoreFlow) => reynolds > 2000 && reynolds <= 4000,
      withinFraction: 0.15,
      reason:
        'Flow itself changes to and fro here; each law bridges the gap in its own way and none is better than 20 %.',
    })),
  }),
];
