import { fibreSpacing } from '../../laws/dirt/straining.ts';
import {
  bedResistanceCarmanHollow,
  bedResistanceEisfeldSchnitzlein2001,
  bedResistanceFibreDavies1952,
  bedResistanceFoamDietrich2012,
} from '../../laws/hydraulics/beds.ts';
import type { Medium } from '../../model/medium.ts';
import type { WaterState } from './water.ts';

/** Share of a bed that water moves through, without the pores inside its pieces; 0 to 1. */
export const voidageOf = (medium: Medium): number =>
  medium.resistance.law === 'fibre'
    ? 1 - medium.resistance.solidFraction.value
    : medium.resistance.voidage.value;

/** Size of a piece, cell or fibre, m: the thickness of one layer. */
export const pieceOf = (medium: Medium): number => {
  switch (medium.resistance.law) {
    case 'foam':
      return medium.resistance.cellM.value;
    case 'fibre':
      return medium.resistance.fibreM.value;
    default:
      return medium.resistance.sizeM.value;
  }
};

/** Length over which the water in a bed mixes, m: a piece or a cell; in floss the spacing of its fibres. */
export const mixingLengthOf = ({ resistance }: Medium): number => {
  switch (resistance.law) {
    case 'foam':
      return resistance.cellM.value;
    case 'fibre':
      return fibreSpacing({
        fibreM: resistance.fibreM.value,
        solidFraction: resistance.solidFraction.value,
      });
    default:
      return resistance.sizeM.value;
  }
};

/**
 * Pressure gradient of a clean bed as linear·U + quadratic·U², by the law that fits the medium's form.
 * @param place the water, and how wide the chamber is as 4·area/perimeter, m: grains lie loosely at its walls
 * @returns coefficients in Pa·s/m² and Pa·s²/m³ on the superficial velocity U
 */
export const bedResistance = (
  medium: Medium,
  place: { readonly water: WaterState; readonly vesselM: number },
) => {
  const { densityKgPerM3, viscosityPaS } = place.water;
  const { resistance } = medium;
  switch (resistance.law) {
    case 'foam':
      return bedResistanceFoamDietrich2012({
        cellM: resistance.cellM.value,
        voidage: resistance.voidage.value,
        densityKgPerM3,
        viscosityPaS,
      });
    case 'fibre':
      return bedResistanceFibreDavies1952({
        fibreM: resistance.fibreM.value,
        solidFraction: resistance.solidFraction.value,
        viscosityPaS,
      });
    case 'grains':
      return bedResistanceEisfeldSchnitzlein2001({
        sizeM: resistance.sizeM.value,
        voidage: resistance.voidage.value,
        vesselM: place.vesselM,
        densityKgPerM3,
        viscosityPaS,
      });
    case 'hollow':
      return bedResistanceCarmanHollow({
        surfacePerM: resistance.surfacePerM.value,
        voidage: resistance.voidage.value,
        densityKgPerM3,
        viscosityPaS,
      });
  }
};
