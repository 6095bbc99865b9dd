import type { Family, Layout } from '@fettle/engine/families/layout.ts';
import { chambersInWaterOrder } from '@fettle/engine/families/waterOrder.ts';

/** Example figures of a new job, as a technician would write them for a filter of the kind; from memory. */
export interface StartValues {
  readonly tankVolume: string;
  readonly feed: string;
  readonly ratedFlow: string;
  readonly shutoffHead: string;
  readonly airFlow: string;
  readonly power: string;
  readonly price: string;
  readonly intakeLength: string;
  readonly bore: string;
  readonly barbBore: string;
  readonly claims: readonly string[];
  readonly tests: readonly string[];
}

const canister: StartValues = {
  tankVolume: '180 L',
  feed: '1.4 g/d',
  ratedFlow: '900 L/h',
  shutoffHead: '1.3 m',
  airFlow: '90 L/h',
  power: '14 W',
  price: '85 GBP',
  intakeLength: '1.5 m',
  bore: '16 mm',
  barbBore: '12.8 mm',
  claims: ['Pump output 900 L/h', 'For aquariums 100 - 200 L'],
  tests: [
    '{ kind: timed-volume, state: as-found, volume: 5 L ± 1 %, times: [31.2 s, 30.8 s, 31.5 s] }',
    '{ kind: power, state: as-found, power: 13.2 ± 0.5 W }',
  ],
};

const onTheRim: StartValues = {
  tankVolume: '40 L',
  feed: '0.3 g/d',
  ratedFlow: '400 L/h',
  shutoffHead: '0.25 m',
  airFlow: '90 L/h',
  power: '5 W',
  price: '35 GBP',
  intakeLength: '20 cm',
  bore: '14 mm',
  barbBore: '14 mm',
  claims: ['Flow 400 L/h', 'For aquariums up to 60 L'],
  tests: [
    '{ kind: timed-volume, state: as-found, volume: 2 L ± 1 %, times: [23.6 s, 24.1 s, 23.8 s] }',
    '{ kind: power, state: as-found, power: 4.8 ± 0.5 W }',
  ],
};

const insideTheTank: StartValues = {
  ...onTheRim,
  shutoffHead: '0.6 m',
  price: '25 GBP',
  claims: ['Pump output 400 L/h', 'For aquariums 60 to 100 L'],
};

const drivenByAir: StartValues = {
  ...insideTheTank,
  power: '3 W',
  price: '12 GBP',
  claims: ['For aquariums up to 60 L'],
  tests: [
    '{ kind: timed-volume, state: as-found, volume: 1 L ± 2 %, times: [31 s, 32 s, 30 s] }',
    '{ kind: power, state: as-found, power: 2.8 ± 0.5 W }',
  ],
};

/** The example figures for a family, by where it stands: beside the tank, on its rim or in it, there by air. */
export function startValuesOf({ drives, hoses }: Family): StartValues {
  if (drives?.[0] === 'air-lift') return drivenByAir;
  if (hoses.outlet) return canister;
  return hoses.intake ? onTheRim : insideTheTank;
}

const coarseToFine = ['foam-20ppi', 'foam-30ppi', 'ceramic-rings-15mm'] as const;

function mediumAt(place: number, count: number): string {
  if (count < 3 && place > 0) return 'sintered-glass-cylinders-8mm';
  return coarseToFine[place] ?? 'ceramic-rings-15mm';
}

/** A medium for each chamber: coarse foam where the water comes in, then finer foam, then biological media. */
export function startPacking(layout: Layout): ReadonlyMap<string, string> {
  const chambers = chambersInWaterOrder(layout);
  return new Map(chambers.map(({ id }, place) => [id, mediumAt(place, chambers.length)]));
}
