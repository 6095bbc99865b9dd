import { describe, expect, it } from 'vitest';
import { typeset } from './typeset.ts';

describe('a sentence in print', () => {
  it.each([
    ['210 times the 3 m2/L that bacteria can use', '210 times the 3 m²/L that bacteria can use'],
    ['280 m2/m3 (85 ft2/ft3)', '280 m²/m³ (85 ft²/ft³)'],
    ['14 dKH (250 ppm CaCO3)', '14 dKH (250 ppm CaCO₃)'],
    ['NO2 and NH4-N, 0.3 mg/L', 'NO₂ and NH₄-N, 0.3 mg/L'],
  ])('has powers raised and counts of atoms lowered: %s', (written, printed) => {
    expect(typeset(written)).toBe(printed);
  });

  it.each(['basket 2', 'M2, 25 mm of floss', '600 × 10 mm', 'in 2 rows', 'job 5, form2'])(
    'leaves alone what is neither unit nor formula: %s',
    (text) => {
      expect(typeset(text)).toBe(text);
    },
  );

  it('leaves what is quoted as it was written', () => {
    expect(typeset('“620 m2/L” and "5 m2" against 3 m2/L')).toBe('“620 m2/L” and "5 m2" against 3 m²/L');
    expect(typeset('„620 m2/L“ gegen 3 m2/L')).toBe('„620 m2/L“ gegen 3 m²/L');
  });
});
