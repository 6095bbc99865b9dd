import type { Figure } from '@fettle/engine/model/figure.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';

/** One figure of a medium, as it is shown. */
export interface MediumFigure {
  readonly label: string;
  readonly figure: Figure;
  readonly dimension: Dimension;
}

const resistanceFigures = ({ resistance }: Medium): readonly MediumFigure[] => {
  switch (resistance.law) {
    case 'foam':
      return [
        { label: 'diameter of the cells', figure: resistance.cellM, dimension: 'length' },
        { label: 'share open to the water', figure: resistance.voidage, dimension: 'fraction' },
      ];
    case 'fibre':
      return [
        { label: 'diameter of the fibres', figure: resistance.fibreM, dimension: 'length' },
        { label: 'share filled by fibres', figure: resistance.solidFraction, dimension: 'fraction' },
      ];
    case 'grains':
      return [
        { label: 'size of a piece', figure: resistance.sizeM, dimension: 'length' },
        { label: 'share open to the water', figure: resistance.voidage, dimension: 'fraction' },
      ];
    case 'hollow':
      return [
        { label: 'size of a piece', figure: resistance.sizeM, dimension: 'length' },
        { label: 'share open to the water', figure: resistance.voidage, dimension: 'fraction' },
        { label: 'outer surface of the pieces', figure: resistance.surfacePerM, dimension: 'specific-area' },
      ];
  }
};

const removed = ({ removes }: Medium): readonly MediumFigure[] =>
  removes === undefined
    ? []
    : [
        {
          label: `takes out ${removes.substance.replaceAll('-', ' ')}`,
          figure: removes.capacityRatio,
          dimension: 'mass-ratio',
        },
      ];

const lifeOf = ({ lifeS }: Medium): readonly MediumFigure[] =>
  lifeS === undefined ? [] : [{ label: 'replaced after', figure: lifeS, dimension: 'time' }];

/** Every figure of a medium, what resists the water first. */
export const mediumFigures = (medium: Medium): readonly MediumFigure[] => [
  ...resistanceFigures(medium),
  { label: 'area open to bacteria', figure: medium.areaPerM, dimension: 'specific-area' },
  { label: 'dry mass by volume of bed', figure: medium.bulkDensityKgPerM3, dimension: 'density' },
  { label: 'how steeply dirt raises the resistance', figure: medium.depositFactor, dimension: 'count' },
  {
    label: `bacteria left after it is ${medium.care === 'rinse' ? 'rinsed' : 'replaced'}`,
    figure: medium.bacteriaKept,
    dimension: 'fraction',
  },
  ...lifeOf(medium),
  ...removed(medium),
  { label: 'price where the shelf has none', figure: medium.pricePerM3, dimension: 'price-per-volume' },
];

/** A figure with its unit and its doubt. */
export const figureText = ({ figure, dimension }: MediumFigure, system: System): string =>
  printQuantity({
    value: figure.value,
    dimension,
    system,
    ...(figure.doubt === undefined ? {} : { doubt: figure.doubt }),
    ...(dimension === 'price-per-volume' ? { currency: 'GBP' } : {}),
  });
