import type { Figure } from './figure.ts';

/** What a medium is for. */
export type Stage = 'mechanical' | 'biological' | 'chemical';

export const stages: readonly Stage[] = ['mechanical', 'biological', 'chemical'];

/** How a medium looks in section; decides its hatching, not its figures. */
export type Form = 'foam' | 'fibre' | 'grains' | 'rings' | 'plastic';

/**
 * What a medium is to the hand that lays it, which decides where it can lie: a block of foam, a pad or mat, loose floss,
 * the cloth of a sock, grains, rings and other pieces, a bag of either, or carriers made to tumble.
 */
export const comings = [
  'block',
  'sheet',
  'floss',
  'cloth',
  'grains',
  'pieces',
  'bagged',
  'carriers',
] as const;

export type ComesAs = (typeof comings)[number];

/** What people call each, in English. */
export const comingNames: Readonly<Record<ComesAs, string>> = {
  block: 'foam',
  sheet: 'pads and mats',
  floss: 'floss',
  cloth: 'cloth of a sock',
  grains: 'grains',
  pieces: 'rings and other pieces',
  bagged: 'media in a bag',
  carriers: 'carriers that tumble',
};

/**
 * What resists the water in a bed, and by which law.
 * `foam`: open cells of diameter `cellM`; `fibre`: fibres of diameter `fibreM` filling `solidFraction`;
 * `grains`: solid pieces of diameter `sizeM`; `hollow`: rings and shaped pieces of outer size `sizeM`
 * whose outer surface is `surfacePerM` (m² per m³ of bed). `voidage` is the share of the bed that water
 * can move through, without the pores inside the pieces.
 */
export type Resistance =
  | { readonly law: 'foam'; readonly cellM: Figure; readonly voidage: Figure }
  | { readonly law: 'fibre'; readonly fibreM: Figure; readonly solidFraction: Figure }
  | { readonly law: 'grains'; readonly sizeM: Figure; readonly voidage: Figure }
  | {
      readonly law: 'hollow';
      readonly sizeM: Figure;
      readonly voidage: Figure;
      readonly surfacePerM: Figure;
    };

/** What a chemical medium takes out of the water. */
export type Substance = 'ammonium' | 'phosphate' | 'dissolved-organics' | 'hardness';

/** One medium: what the shelf holds and what the models need, in SI units. */
export interface Medium {
  readonly id: string;
  readonly name: string;
  readonly stage: Stage;
  readonly form: Form;
  /** What it is to the hand, where its form does not say. */
  readonly madeAs?: ComesAs;
  readonly resistance: Resistance;
  /** Area open to nitrifying bacteria, m² per m³ of bed. */
  readonly areaPerM: Figure;
  /** Dry mass per volume of bed, kg/m³. */
  readonly bulkDensityKgPerM3: Figure;
  /** γ in J/J0 = (1 + γσ)², σ the deposit's share of the bed's volume; 1. */
  readonly depositFactor: Figure;
  /** Usual care when it has clogged: rinsed and put back, or replaced. */
  readonly care: 'rinse' | 'replace';
  /** Share of the bacteria left after the usual care, 0 to 1. */
  readonly bacteriaKept: Figure;
  /** Time after which it is replaced whatever its state, s; absent where it lasts. */
  readonly lifeS?: Figure;
  /** Placeholder price per m³ of bed in pounds sterling; the user's own file overrides it. */
  readonly pricePerM3: Figure;
  /** What it takes out of the water, and how much, kg per kg of dry medium. */
  readonly removes?: { readonly substance: Substance; readonly capacityRatio: Figure };
  /** One sentence each; shown where this medium is used. */
  readonly cautions: readonly string[];
}

/**
 * Whether a medium is used up where it lies: thrown away when it clogs, or full or old after a time. What lies in a filter
 * of it counts as spent: cleaning takes fresh in its place.
 */
export const isUsedUp = ({ care, lifeS, removes }: Medium): boolean =>
  care === 'replace' || lifeS !== undefined || removes !== undefined;

const comingOfForm: Readonly<Record<Form, ComesAs>> = {
  foam: 'block',
  fibre: 'sheet',
  grains: 'grains',
  rings: 'pieces',
  plastic: 'pieces',
};

/** What a medium is to the hand that lays it. */
export const comesAs = ({ form, madeAs }: Medium): ComesAs => madeAs ?? comingOfForm[form];
