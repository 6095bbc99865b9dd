import type { Chamber } from '../../families/layout.ts';
import { areaOfFibres, areaOfSpheres } from '../../laws/hydraulics/area.ts';
import { foamAreaDietrich2012 } from '../../laws/hydraulics/foam.ts';
import {
  holdUpOtakeOkada1953,
  wallFlowFraction,
  wettedFractionOnda1968,
} from '../../laws/hydraulics/trickle.ts';
import type { Medium } from '../../model/medium.ts';
import type { Compiled, CompiledBed } from '../compiled.ts';
import { pieceOf } from './bed.ts';

/** Surface tension of water at 25 °C, N/m (IAPWS R1-76, from memory). */
const WATER_TENSION_N_PER_M = 0.072;

/** Growth makes any piece wet like ceramic (our own prior); new plastic would be 0.033 N/m. */
const GROWN_OVER_N_PER_M = 0.061;

const surfacePerM = ({ resistance }: Medium): number => {
  switch (resistance.law) {
    case 'foam':
      return foamAreaDietrich2012({ cellM: resistance.cellM.value, voidage: resistance.voidage.value });
    case 'fibre':
      return areaOfFibres({
        fibreM: resistance.fibreM.value,
        solidFraction: resistance.solidFraction.value,
      });
    case 'grains':
      return areaOfSpheres({ sizeM: resistance.sizeM.value, voidage: resistance.voidage.value });
    case 'hollow':
      return resistance.surfacePerM.value;
  }
};

const trickleThrough = ({ water, network }: Compiled, bed: CompiledBed) => ({
  loadKgPerM2S: (network.flow[bed.link]! * water.densityKgPerM3) / bed.areaM2,
  surfacePerM: surfacePerM(bed.medium),
  densityKgPerM3: water.densityKgPerM3,
  viscosityPaS: water.viscosityPaS,
});

/** Share of a bed's surface that water reaches at the flow of the last solve: all of it under water. */
export const wettedShare = (compiled: Compiled, bed: CompiledBed): number => {
  if (!bed.trickles) return 1;
  if (!(compiled.network.flow[bed.link]! > 0)) return 0;
  return wettedFractionOnda1968({
    ...trickleThrough(compiled, bed),
    tensionNPerM: WATER_TENSION_N_PER_M,
    wettingTensionNPerM: GROWN_OVER_N_PER_M,
  });
};

/** Water in a bed at the flow of the last solve, m³: its pores under water, else what trickles through it. */
export const waterInBed = (compiled: Compiled, bed: CompiledBed): number => {
  const pores = bed.volumeM3 * bed.voidage;
  if (!bed.trickles || !(compiled.network.flow[bed.link]! > 0)) return pores;
  const held = holdUpOtakeOkada1953({ ...trickleThrough(compiled, bed), sizeM: bed.pieceM });
  return Math.min(pores, bed.volumeM3 * held);
};

/** Share of the water that runs down the walls of a trickling chamber, by its largest pieces; 0 where it is empty. */
export const wallShare = ({ areaM2, widthM }: Chamber, media: readonly Medium[]): number => {
  if (media.length === 0) return 0;
  const towerM = (2 * areaM2) / (widthM + areaM2 / widthM);
  return wallFlowFraction({ sizeM: Math.max(...media.map(pieceOf)), towerM });
};
