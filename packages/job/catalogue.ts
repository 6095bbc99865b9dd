import type { Medium } from '@fettle/engine/model/medium.ts';

const f = (value: number, size?: number) => ({
  value,
  ...(size ? { doubt: { kind: 'factor' as const, size } } : {}),
  source: { kind: 'memory' as const, text: 'from memory' },
});
const base = {
  stage: 'mechanical' as const,
  form: 'foam' as const,
  areaPerM: f(700, 2),
  bulkDensityKgPerM3: f(25, 1.2),
  depositFactor: f(17, 3),
  care: 'rinse' as const,
  bacteriaKept: f(0.7, 1.3),
  pricePerM3: f(4000, 1.5),
  cautions: [],
};
/** Media by id. */
export const media: Readonly<Record<string, Medium>> = {
  'foam-20ppi': {
    ...base,
    id: 'foam-20ppi',
    name: 'foam, 20 ppi',
    resistance: { law: 'foam', cellM: f(0.003, 1.2), voidage: f(0.97) },
  },
  floss: {
    ...base,
    id: 'floss',
    name: 'floss',
    form: 'fibre',
    resistance: { law: 'fibre', fibreM: f(0.00003, 1.3), solidFraction: f(0.02, 2) },
  },
  'ceramic-rings-12mm': {
    ...base,
    id: 'ceramic-rings-12mm',
    name: 'ceramic rings',
    form: 'rings',
    stage: 'biological',
    resistance: { law: 'hollow', sizeM: f(0.012), voidage: f(0.65), surfacePerM: f(400, 1.3) },
  },
};

/** Ids of fittings. */
export const fittingIds: readonly string[] = ['strainer'];
/** Ids of kinds of fish. */
export const fishIds: readonly string[] = ['small-tetra'];
const perDay = 0.008 / 86_400;
export const stockClasses = {
  light: { feedKgPerM3PerS: { value: perDay / 2 } },
  normal: { feedKgPerM3PerS: { value: perDay } },
  heavy: { feedKgPerM3PerS: { value: perDay * 2 } },
};
