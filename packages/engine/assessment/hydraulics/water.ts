import { waterDensity } from '../../laws/water/density.ts';
import { oxygenSaturationBensonKrause1984 } from '../../laws/water/oxygen.ts';
import { waterViscosity } from '../../laws/water/viscosity.ts';
import type { Tank } from '../../model/model.ts';

/** The tank's water as the other models need it. */
export interface WaterState {
  readonly temperatureK: number;
  readonly densityKgPerM3: number;
  readonly viscosityPaS: number;
  readonly kinematicViscosityM2PerS: number;
  /** Oxygen in the tank, kg/m³. */
  readonly oxygenKgPerM3: number;
  /** Oxygen in water that stands in air, kg/m³. */
  readonly saturatedOxygenKgPerM3: number;
}

/** Properties of the tank's water by its temperature, salinity and air pressure. */
export const waterState = (tank: Tank): WaterState => {
  const { temperatureK, salinity, pressurePa } = tank;
  const densityKgPerM3 = waterDensity({ temperatureK, salinity });
  const viscosityPaS = waterViscosity({ temperatureK, salinity });
  const saturatedOxygenKgPerM3 = oxygenSaturationBensonKrause1984({ temperatureK, salinity, pressurePa });
  return {
    temperatureK,
    densityKgPerM3,
    viscosityPaS,
    kinematicViscosityM2PerS: viscosityPaS / densityKgPerM3,
    oxygenKgPerM3: tank.oxygenFraction * saturatedOxygenKgPerM3,
    saturatedOxygenKgPerM3,
  };
};
