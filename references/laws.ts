import type { Registry } from './registry/adapter.ts';
import { airAndGrainLaws } from './registry/airAndGrains.ts';
import { chemistryLaws } from './registry/chemistry.ts';
import { dirtLaws } from './registry/dirt.ts';
import { elementLaws } from './registry/elements.ts';
import { hydraulicsLaws } from './registry/hydraulics.ts';
import { lifeLaws } from './registry/life.ts';
import { lineupLaws } from './registry/lineup.ts';
import { machineLaws } from './registry/machines.ts';
import { packingLaws } from './registry/packing.ts';
import { residenceLaws } from './registry/residence.ts';
import { tankLaws } from './registry/tank.ts';
import { radialLaws, trickleLaws } from './registry/towers.ts';
import { waterLaws } from './registry/water.ts';

/** Every law that references can call, by the name that the cases use. */
export const laws: Registry = {
  ...waterLaws,
  ...lifeLaws,
  ...chemistryLaws,
  ...hydraulicsLaws,
  ...radialLaws,
  ...trickleLaws,
  ...machineLaws,
  ...elementLaws,
  ...dirtLaws,
  ...packingLaws,
  ...residenceLaws,
  ...airAndGrainLaws,
  ...tankLaws,
  ...lineupLaws,
};
