import { GRAVITY } from '../laws/constants.ts';
import {
  ORIFICE_DISCHARGE_COEFFICIENT,
  orificeFlow,
  orificePressureRange,
} from '../laws/hydraulics/orifice.ts';
import { slotFlow, slotPressureRange } from '../laws/hydraulics/slot.ts';
import { quantity, quantityOr, temperature } from './inputs.ts';
import { outsideOf } from './outside.ts';
import { reckoning } from './reckoning.ts';
import { freshWater, outsideOfWater } from './waterProperties.ts';

const flowResult = { label: 'flow', unit: 'L/h', dimension: 'flow' } as const;

export const orifice = reckoning({
  name: 'orifice-flow',
  says: 'Flow through a round, sharp-edged hole under water, from creeping to fast.',
  formula: 'ρgh = ρ/2 (Q/(Cd A))² + 3µQ/r³',
  inputs: {
    diameter: quantity('length', { label: 'diameter of the hole', example: '6 mm', above: '0 mm' }),
    head: quantity('length', { label: 'head over the hole', example: '10 cm', least: '0 m' }),
    cd: quantityOr('count', {
      label: 'discharge coefficient',
      example: '0.61',
      above: '0',
      most: '1',
      otherwise: String(ORIFICE_DISCHARGE_COEFFICIENT),
    }),
    temperature,
  },
  results: { flow: flowResult },
  source:
    'Torricelli’s law with a discharge coefficient; creeping term of Sampson 1891, Phil. Trans. A 182, 449–518',
  compute: (values) => {
    const water = freshWater(values.temperature);
    const flow = orificeFlow({
      ...water,
      diameterM: values.diameter,
      dischargeCoefficient: values.cd,
      pressurePa: water.densityKgPerM3 * GRAVITY * values.head,
    });
    const outside = outsideOf(orificePressureRange, {
      dischargeCoefficient: { label: 'discharge coefficient', value: values.cd },
      diameterM: { label: 'diameter', value: values.diameter, dimension: 'length' },
    });
    return { answers: { flow }, outside: [...outsideOfWater(values.temperature), ...outside] };
  },
  examples: [
    {
      source: 'Torricelli’s law with Sampson’s creeping term, worked out for water of 20 °C',
      seen: 'formula',
      inputs: { diameter: '6 mm', head: '0.1 m', cd: '0.61', temperature: '20 °C' },
      expected: { flow: '86.84 L/h' },
    },
  ],
});

export const gap = reckoning({
  name: 'gap-flow',
  says: 'Flow that slips through a plane gap, for example past a basket.',
  formula: 'Δp = f(Re) L/(2h) ρV²/2 + 1.5 ρV²/2, V = Q/(wh), Re = 2hρV/µ',
  inputs: {
    height: quantity('length', { label: 'clear height of the gap', example: '0.5 mm', above: '0 mm' }),
    width: quantity('length', { label: 'width across the flow', example: '100 mm', above: '0 mm' }),
    length: quantity('length', { label: 'length along the flow', example: '5 mm', above: '0 mm' }),
    pressure: quantity('pressure', { label: 'pressure difference', example: '200 Pa', least: '0 Pa' }),
    temperature,
  },
  results: { flow: flowResult },
  source:
    'plane Poiseuille flow; Churchill 1977, Chem. Eng. 84(24), 91–92, above it; entrance loss 1.5 after Shah & London 1978',
  compute: (values) => {
    const water = freshWater(values.temperature);
    const flow = slotFlow({
      ...water,
      thicknessM: values.height,
      widthM: values.width,
      lengthM: values.length,
      pressurePa: values.pressure,
    });
    const reynolds = (2 * water.densityKgPerM3 * flow) / (values.width * water.viscosityPaS);
    const outside = outsideOf(slotPressureRange, {
      thicknessM: { label: 'height', value: values.height, dimension: 'length' },
      reynolds: { label: 'Reynolds number', value: reynolds },
    });
    const notes =
      values.height > values.width / 5
        ? ['A gap this high for its width is no plane slot: its ends hold the water back, too.']
        : [];
    return { answers: { flow }, outside: [...outsideOfWater(values.temperature), ...outside], notes };
  },
  examples: [
    {
      source: '12µLQ/(wh³) + 1.5 ρ(Q/wh)²/2 = Δp solved for water of 20 °C',
      seen: 'formula',
      inputs: { height: '0.5 mm', width: '100 mm', length: '5 mm', pressure: '200 Pa', temperature: '20 °C' },
      expected: { flow: '1.903e-5 m3/s' },
    },
  ],
});
