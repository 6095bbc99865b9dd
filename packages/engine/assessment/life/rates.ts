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

/** What the tank's pH and alkalinity leave of the bacteria's rate, 0 to 1: below the least alkalinity in proportion. */
export const waterFactor = ({ model, constants }: Compiled): number => {
  const { pH, alkalinityKgPerM3 } = model.tank;
  return pHFactor({ pH }) * Math.min(1, alkalinityKgPerM3 / constants.leastAlkalinityKgPerM3);
};

/** Share of the dirt caught evenly that rots as fast as it comes, `ageS` after cleaning; 0 to 1. */
export const decayedFraction = ({ water, constants }: Compiled, ageS: number): number =>
  -Math.expm1(
    -solidsDecayRate({ temperatureK: water.temperatureK, warmPerS: constants.solidsDecayPerS }) * ageS,
  );

/** Film transfer beyond that at which the kinetic slope was measured, as a resistance, s/m. */
const extraFilmResistance = (compiled: Compiled, bed: CompiledBed, velocityMPerS: number): number => {
  const { water } = compiled;
  const film = (velocity: number): number =>
    filmTransferWilsonGeankoplis1966({
      velocityMPerS: velocity,
      sizeM: bed.pieceM,
      voidage: bed.voidage,
      densityKgPerM3: water.densityKgPerM3,
      viscosityPaS: water.viscosityPaS,
      diffusivityM2PerS: ammoniumDiffusivity({
        temperatureK: water.temperatureK,
        viscosityPaS: water.viscosityPaS,
      }),
    });
  return Math.max(0, 1 / film(velocityMPerS) - 1 / film(AMMONIUM_SLOPE_VELOCITY_M_PER_S));
};

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
  const { beds, network, water, constants } = compiled;
  const heat = { temperatureK: water.temperatureK, referenceK: KINETICS_REFERENCE_K };
  const ammoniaHeat = temperatureFactor({ ...heat, theta: constants.ammoniaTemperatureTheta });
  const nitriteHeat = temperatureFactor({ ...heat, theta: constants.nitriteTemperatureTheta });
  const slope = constants.ammoniumSlopeMPerS;
  const inSeries = (kinetic: number, film: number): number => 1 / (1 / kinetic + film);
  const films = beds.map((bed) => {
    const through = network.flow[bed.link]! / bed.areaM2;
    // Pieces that tumble meet water faster than that which passes their chamber.
    const velocity = bed.moved && through > 0 ? AMMONIUM_SLOPE_VELOCITY_M_PER_S : through;
    return velocity > 0 ? extraFilmResistance(compiled, bed, velocity) : Number.POSITIVE_INFINITY;
  });
  const chemistry = waterFactor(compiled);
  const share = (place: number): number =>
    shares.carbonFactor[place]! * shares.cleaningFactor[place]! * chemistry;
  const decayed = decayedFraction(compiled, state.ageS);
  return {
    areaPerM: Float64Array.from(
      beds,
      (bed, place) =>
        bed.medium.areaPerM.value * wettedShare(compiled, bed) * share(place) * state.areaFactor,
    ),
    ammoniaSlopeMPerS: Float64Array.from(films, (film) => inSeries(slope * ammoniaHeat, film)),
    nitriteSlopeMPerS: Float64Array.from(films, (film) =>
      inSeries(slope * constants.nitriteSlopeRatio * nitriteHeat, film),
    ),
    ammoniaCeiling: constants.fluxCeilingKgNPerM2PerS * ammoniaHeat,
    nitriteCeiling: constants.fluxCeilingKgNPerM2PerS * nitriteHeat,
    kineticSlopeMPerS: slope * ammoniaHeat,
    oxygenHalfSaturationKgPerM3: constants.oxygenHalfSaturationKgPerM3,
    dirtOxygenKgPerS: Float64Array.from(
      state.caughtKgPerS,
      (caught) => caught * decayed * constants.oxygenPerSolidsRatio,
    ),
  };
};
