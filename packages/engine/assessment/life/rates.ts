import { solidsDecayRate } from '../../laws/dirt/decay.ts';
import { ammoniumDiffusivity, filmTransferWilsonGeankoplis1966 } from '../../laws/life/filmTransfer.ts';
import {
  AMMONIUM_SLOPE_VELOCITY_M_PER_S,
  KINETICS_REFERENCE_K,
  pHFactor,
  temperatureFactor,
} from '../../laws/life/nitrification.ts';
import type { Compiled, CompiledBed } from '../compiled.ts';
import { wettedShare } from '../hydraulics/trickling.ts';
import type { BacteriaShares } from './bacteria.ts';
import type { Rates } from './oxidation.ts';

/** What pH and alkalinity leave of the bacteria's rate, 0 to 1: below the least alkalinity in proportion. */
export const chemistryFactor = (
  { constants }: Pick<Compiled, 'constants'>,
  water: { readonly pH: number; readonly alkalinityKgPerM3: number },
): number => pHFactor(water) * Math.min(1, water.alkalinityKgPerM3 / constants.leastAlkalinityKgPerM3);

/** What the tank's pH and alkalinity leave of the bacteria's rate, 0 to 1. */
export const waterFactor = (compiled: Compiled): number => chemistryFactor(compiled, compiled.model.tank);

/** Share of the dirt caught evenly that rots as fast as it comes, `ageS` after cleaning; 0 to 1. */
export const decayedFraction = ({ water, constants }: Compiled, ageS: number): number =>
  -Math.expm1(
    -solidsDecayRate({ temperatureK: water.temperatureK, warmPerS: constants.solidsDecayPerS }) * ageS,
  );

/** Film transfer beyond that at which the kinetic slope was measured, as a resistance, s/m. */
const extraFilmResistance = (compiled: Compiled, bed: CompiledBed, velocityMPerS: number): number => {
  const { temperatureK, viscosityPaS } = compiled.water;
  const diffusivityM2PerS = ammoniumDiffusivity({ temperatureK, viscosityPaS });
  const film = (velocity: number): number =>
    filmTransferWilsonGeankoplis1966({
      velocityMPerS: velocity,
      sizeM: bed.pieceM,
      voidage: bed.voidage,
      densityKgPerM3: compiled.water.densityKgPerM3,
      viscosityPaS,
      diffusivityM2PerS,
    });
  return Math.max(0, 1 / film(velocityMPerS) - 1 / film(AMMONIUM_SLOPE_VELOCITY_M_PER_S));
};

/** Film resistance of a bed at the flow of the last solve, s/m: endless where no water comes. */
const filmOf = (compiled: Compiled, bed: CompiledBed): number => {
  const through = compiled.network.flow[bed.link]! / bed.areaM2;
  // Pieces that tumble meet water faster than that which passes their chamber.
  const velocity = bed.moved && through > 0 ? AMMONIUM_SLOPE_VELOCITY_M_PER_S : through;
  return velocity > 0 ? extraFilmResistance(compiled, bed, velocity) : Number.POSITIVE_INFINITY;
};

const inSeries = (kineticMPerS: number, filmSPerM: number): number => 1 / (1 / kineticMPerS + filmSPerM);

/**
 * Rates of all beds at the flows of the last solve.
 * @param caughtKgPerS solids that each bed catches, kg/s
 * @param ageS time since cleaning, s: how far decay of the caught solids has come
 * @param areaFactor scales every area, to see how much the area binds; 1 as it is
 */
export const ratesOf = (
  compiled: Compiled,
  shares: BacteriaShares,
  state: { readonly caughtKgPerS: readonly number[]; readonly ageS: number; readonly areaFactor: number },
): Rates => {
  const { beds, water, constants } = compiled;
  const heat = { temperatureK: water.temperatureK, referenceK: KINETICS_REFERENCE_K };
  const ammoniaHeat = temperatureFactor({ ...heat, theta: constants.ammoniaTemperatureTheta });
  const nitriteHeat = temperatureFactor({ ...heat, theta: constants.nitriteTemperatureTheta });
  const slope = constants.ammoniumSlopeMPerS;
  const chemistry = waterFactor(compiled);
  const decayed = decayedFraction(compiled, state.ageS);
  const rates: Rates = {
    areaPerM: new Float64Array(beds.length),
    ammoniaSlopeMPerS: new Float64Array(beds.length),
    nitriteSlopeMPerS: new Float64Array(beds.length),
    ammoniaCeiling: constants.fluxCeilingKgNPerM2PerS * ammoniaHeat,
    nitriteCeiling: constants.fluxCeilingKgNPerM2PerS * nitriteHeat,
    kineticSlopeMPerS: slope * ammoniaHeat,
    oxygenHalfSaturationKgPerM3: constants.oxygenHalfSaturationKgPerM3,
    dirtOxygenKgPerS: new Float64Array(beds.length),
  };
  for (const [place, bed] of beds.entries()) {
    const film = filmOf(compiled, bed);
    const share = shares.carbonFactor[place]! * shares.cleaningFactor[place]! * chemistry;
    rates.areaPerM[place] = bed.medium.areaPerM.value * wettedShare(compiled, bed) * share * state.areaFactor;
    rates.ammoniaSlopeMPerS[place] = inSeries(slope * ammoniaHeat, film);
    rates.nitriteSlopeMPerS[place] = inSeries(slope * constants.nitriteSlopeRatio * nitriteHeat, film);
    rates.dirtOxygenKgPerS[place] = state.caughtKgPerS[place]! * decayed * constants.oxygenPerSolidsRatio;
  }
  return rates;
};
