import {
  adsorbedFreundlich1906,
  adsorbedLangmuir1918,
  exhaustionTime,
} from '@fettle/engine/laws/chemistry/adsorption.ts';
import { adapter, type Registry } from './adapter.ts';

export const chemistryLaws = {
  /** K_F as tables print it: the amount adsorbed at a level of one of their own units. */
  'adsorbedFreundlich1906.byN': adapter({
    inputs: { concentrationKgPerM3: 'kg/m3', adsorbedAtUnitLevel: '1', unitLevel: 'kg/m3', n: '1' },
    result: '1',
    compute: ({ concentrationKgPerM3, adsorbedAtUnitLevel, unitLevel, n }) =>
      adsorbedFreundlich1906({
        concentrationKgPerM3,
        capacityAtUnit: adsorbedAtUnitLevel / unitLevel ** (1 / n),
        intensity: 1 / n,
      }),
  }),
  adsorbedLangmuir1918: adapter({
    inputs: { concentrationKgPerM3: 'kg/m3', capacityRatio: '1', affinityM3PerKg: 'm3/kg' },
    result: '1',
    compute: adsorbedLangmuir1918,
  }),
  exhaustionTime: adapter({
    inputs: { massKg: 'kg', capacityRatio: '1', loadKgPerS: 'kg/s', usedFraction: '1' },
    defaults: { usedFraction: 1 },
    result: 's',
    compute: exhaustionTime,
  }),
} satisfies Registry;
