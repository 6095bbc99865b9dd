import { describe, expect, it } from 'vitest';
import { printLength, printShare } from './lengths.ts';

describe('lengths on drawings', () => {
  it.each([
    [0.16, 'metric', '160 mm'],
    [0.0005, 'metric', '0.5 mm'],
    [0.0125, 'metric', '12.5 mm'],
    [0.152, 'metric', '152 mm'],
    [0.00999, 'metric', '10 mm'],
    [1.2, 'metric', '1200 mm'],
    // 1 in = 25.4 mm exactly (international inch, 1959)
    [0.0254, 'us', '1 in'],
    [0.16, 'us', '6.3 in'],
    [0.0005, 'us', '0.02 in'],
    [0.3048, 'us', '12 in'],
  ] as const)('prints %d m in %s as %s', (lengthM, units, printed) => {
    expect(printLength({ lengthM, units }).replace('\u00a0', ' ')).toBe(printed);
  });
});

describe('shares of the flow', () => {
  it.each([
    [0, '0 %'],
    [0.004, '<1 %'],
    [0.126, '13 %'],
    [0.996, '>99 %'],
    [1, '100 %'],
  ])('prints %d as %s', (share, printed) => {
    expect(printShare(share).replace('\u00a0', ' ')).toBe(printed);
  });
});
