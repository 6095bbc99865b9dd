import { bedArea, bedLoss, foamLoss } from './beds.ts';
import { convert, pairCheck } from './figures.ts';
import { fittingLoss, hoseLoss } from './hoses.ts';
import { gap, orifice } from './openings.ts';
import { powerCost, pumpDuty, timedFilling, turnover } from './pumps.ts';
import type { Reckoning } from './reckoning.ts';
import { challengeDose, feedLoad, nitriteChloride } from './tank.ts';
import { ammoniaCriteria, carbonDioxide, unionizedAmmonia } from './waterChemistry.ts';
import { density, oxygenSaturation, viscosity } from './waterProperties.ts';

const all: readonly Reckoning[] = [
  density,
  viscosity,
  oxygenSaturation,
  unionizedAmmonia,
  ammoniaCriteria,
  carbonDioxide,
  hoseLoss,
  fittingLoss,
  orifice,
  gap,
  bedLoss,
  foamLoss,
  pumpDuty,
  timedFilling,
  turnover,
  feedLoad,
  bedArea,
  challengeDose,
  nitriteChloride,
  powerCost,
  convert,
  pairCheck,
];

/** Every reckoning by its name. */
export const reckonings: Readonly<Record<string, Reckoning>> = Object.fromEntries(
  all.map((one) => [one.name, one]),
);
