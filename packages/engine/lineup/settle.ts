import { type Plants, plantUptake } from '../assessment/tank/plants.ts';
import { bracketedRoot } from '../numerics/roots.ts';

/** TAN and nitrite that bacteria oxidise, kg N/s. */
export interface Oxidised {
  readonly ammonia: number;
  readonly nitrite: number;
}

/** A well mixed tank as a balance of nitrogen. */
export interface TankTerms {
  readonly volumeM3: number;
  /** Ammonia nitrogen that comes in, kg N/s. */
  readonly loadKgNPerS: number;
  /** Share of the water changed per second, 1/s, against water without nitrogen. */
  readonly changePerS: number;
  /** Absent in a tank without plants. */
  readonly plants?: Plants | undefined;
  /** What all bacteria do at levels in kg N/m³: rises with TAN and with nitrite. */
  readonly oxidise: (ammonia: number, nitrite: number) => Oxidised;
}

/** Where a tank settles: levels in kg N/m³, endless where one rises for ever; rates in kg N/s. */
export interface Settled {
  readonly ammonia: number;
  readonly nitrite: number;
  readonly nitrate: number;
  readonly oxidised: Oxidised;
  /** Taken up by plants as ammonia and as nitrate. */
  readonly taken: Oxidised & { readonly nitrate: number };
  /** Carried off by water changes, by what it is. */
  readonly changed: Oxidised & { readonly nitrate: number };
  /** What stays in the water and makes a level rise for ever. */
  readonly rising: Oxidised & { readonly nitrate: number };
}

/** A level above this counts as endless where nothing but bacteria takes it down, kg N/m³: 1 g/L. */
const ENDLESS = 1;
const NO_PLANTS: Plants = { mostKgNPerM3PerS: 0, halfKgNPerM3: 1 };

/** Where a falling function crosses nothing between 0 and `most`; `most` where it stays above it. */
const fallsTo = (residual: (level: number) => number, most: number): number => {
  if (residual(0) <= 0) return 0;
  if (residual(most) >= 0) return most;
  return bracketedRoot(residual, { low: 0, high: most });
};

/** The level at which nothing more is left to rise, and what rises where there is none. */
interface Level {
  readonly at: number;
  readonly rising: number;
}

const levelOf = (residual: (level: number) => number, most: number, isEndless: boolean): Level => {
  const at = fallsTo(residual, most);
  return { at, rising: isEndless && at === most ? Math.max(0, residual(most)) : 0 };
};

/** Nitrate at which plants and water changes take what is made; plants have their strength left over from ammonia. */
const nitrateOf = (terms: TankTerms, madeKgNPerS: number, ammonia: number): Level => {
  const { volumeM3, changePerS, plants = NO_PLANTS } = terms;
  const made = madeKgNPerS / volumeM3;
  const residual = (nitrate: number): number =>
    made - plantUptake(plants, { ammonia, nitrate }).nitrate - changePerS * nitrate;
  const { mostKgNPerM3PerS: most, halfKgNPerM3: half } = plants;
  if (changePerS > 0) return { at: fallsTo(residual, made / changePerS), rising: 0 };
  const left = most - plantUptake(plants, { ammonia, nitrate: 0 }).ammonia;
  // Without water changes half-saturation alone decides: m = left·N/(half + N).
  if (made < left) return { at: (made * half) / (left - made), rising: 0 };
  return made <= 0
    ? { at: 0, rising: 0 }
    : { at: Number.POSITIVE_INFINITY, rising: (made - left) * volumeM3 };
};

const nitriteAt = (terms: TankTerms, ammonia: number): Level => {
  const { volumeM3, changePerS, loadKgNPerS, oxidise } = terms;
  const washed = volumeM3 * changePerS;
  const residual = (nitrite: number): number => {
    const done = oxidise(ammonia, nitrite);
    return done.ammonia - done.nitrite - washed * nitrite;
  };
  const most = washed > 0 ? Math.max(loadKgNPerS, oxidise(ammonia, 0).ammonia) / washed : ENDLESS;
  return levelOf(residual, most, washed <= 0);
};

/**
 * Where a tank settles under a constant load: each level at which bacteria, plants and water changes take as much as comes.
 * What bacteria do must rise with both levels; then there is one answer, and it is enclosed from both sides.
 *
 * @returns levels and rates; what comes is taken up, carried off or rises, to the accuracy of numbers
 */
export const settle = (terms: TankTerms): Settled => {
  const { volumeM3, loadKgNPerS, changePerS, plants = NO_PLANTS, oxidise } = terms;
  const washed = volumeM3 * changePerS;
  const uptake = (ammonia: number): number => volumeM3 * plantUptake(plants, { ammonia, nitrate: 0 }).ammonia;
  const residual = (ammonia: number): number =>
    loadKgNPerS - oxidise(ammonia, nitriteAt(terms, ammonia).at).ammonia - uptake(ammonia) - washed * ammonia;
  const most = washed > 0 ? loadKgNPerS / washed : ENDLESS;
  const ammonia = levelOf(residual, most, washed <= 0);
  const nitrite = nitriteAt(terms, ammonia.at);
  const oxidised = oxidise(ammonia.at, nitrite.at);
  const nitrate = nitrateOf(terms, oxidised.nitrite, ammonia.at);
  const taken = Number.isFinite(nitrate.at)
    ? plantUptake(plants, { ammonia: ammonia.at, nitrate: nitrate.at }).nitrate
    : plants.mostKgNPerM3PerS - uptake(ammonia.at) / volumeM3;
  const shown = ({ at, rising }: Level): number => (rising > 0 ? Number.POSITIVE_INFINITY : at);
  return {
    ammonia: shown(ammonia),
    nitrite: shown(nitrite),
    nitrate: nitrate.at,
    oxidised,
    taken: { ammonia: uptake(ammonia.at), nitrite: 0, nitrate: volumeM3 * taken },
    changed: {
      ammonia: washed * ammonia.at,
      nitrite: washed * nitrite.at,
      nitrate: washed > 0 ? washed * nitrate.at : 0,
    },
    rising: { ammonia: ammonia.rising, nitrite: nitrite.rising, nitrate: nitrate.rising },
  };
};

/** How closely a share of water to change is sought, 1. */
const CHANGE_TOLERANCE = 1e-7;

/**
 * Share of the water to change per second that holds nitrate at a level, 1/s; 0 where plants do it alone.
 * @param targetKgNPerM3 nitrate, kg N/m³; above 0
 */
export const changeHolding = (terms: TankTerms, targetKgNPerM3: number): number => {
  const { volumeM3, loadKgNPerS, plants = NO_PLANTS } = terms;
  const surplus = (changePerS: number): number => {
    const { oxidised, ammonia } = settle({ ...terms, changePerS });
    const level = Number.isFinite(ammonia) ? ammonia : ENDLESS;
    const taken = plantUptake(plants, { ammonia: level, nitrate: targetKgNPerM3 }).nitrate;
    return oxidised.nitrite / volumeM3 - taken - changePerS * targetKgNPerM3;
  };
  if (surplus(0) <= 0) return 0;
  const most = loadKgNPerS / (volumeM3 * targetKgNPerM3);
  if (surplus(most) >= 0) return most;
  return bracketedRoot(surplus, { low: 0, high: most, tolerance: CHANGE_TOLERANCE });
};
