import {
  throatOfFibres,
  throatOfFoam,
  throatOfGrains,
  throatOfHollowPieces,
} from '../laws/dirt/straining.ts';
import type { Medium } from '../model/medium.ts';

/**
 * Narrowest way through a medium, by which coarse is told from fine.
 *
 * Foam 0.45 of the cell, grains 0.155 of the piece, rings as grains of the same hydraulic diameter, fibres their
 * mean spacing less one fibre.
 *
 * @param medium any medium of the shelf or of the technician's own
 * @returns throat, m
 * Accuracy: ×/÷ 2.
 * @source the laws of straining, each with its own
 */
export const throatM = ({ resistance }: Medium): number => {
  switch (resistance.law) {
    case 'foam':
      return throatOfFoam({ cellM: resistance.cellM.value });
    case 'fibre':
      return throatOfFibres({
        fibreM: resistance.fibreM.value,
        solidFraction: resistance.solidFraction.value,
      });
    case 'grains':
      return throatOfGrains({ sizeM: resistance.sizeM.value });
    case 'hollow':
      return throatOfHollowPieces({
        surfacePerM: resistance.surfacePerM.value,
        voidage: resistance.voidage.value,
      });
  }
};
