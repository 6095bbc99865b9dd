import type { Example } from './reckoning.ts';

const cengel = 'Çengel & Cimbala, Fluid Mechanics, 3rd ed. 2014';

/** Water of 20 °C in a bore of 100 mm at Re 100 000, with walls rough by a ten-thousandth of it. */
const rough = {
  flow: '28370.5 L/h',
  bore: '100 mm',
  length: '1 m',
  roughness: '10 µm',
  temperature: '20 °C',
};

const byLaw = (law: string, printed: string): Example => ({
  source: `tests of the open library fluids 1.3.1: ${law} at Re 100 000 and a relative roughness of 0.0001`,
  seen: 'printed',
  inputs: { law, ...rough },
  expected: { friction: printed },
  wider: { share: 2e-5, because: 'The flow gives the Reynolds number of the print to five digits only.' },
});

/** Smooth bore of 20 mm, water of 20 °C. */
const measured = (flow: string, printed: string): Example => ({
  source: 'Swanson et al. 2002, J. Fluid Mech. 461, 51–60, measured in a smooth pipe',
  seen: 'secondary',
  inputs: { flow, bore: '20 mm', length: '1 m', roughness: '0 mm', temperature: '20 °C' },
  expected: { friction: printed },
  wider: { share: 0.05, because: 'Measured, and scattering by 3 to 5 % around any smooth curve.' },
});

export const hoseExamples: readonly Example[] = [
  {
    source: `${cengel}, example 8-2: 0.9 m/s in 3 mm, 9 m long, water of 1.519 mPa·s`,
    seen: 'printed',
    inputs: { flow: '22.90 L/h', bore: '3 mm', length: '9 m', temperature: '5 °C' },
    expected: { friction: '0.0360', head: '4.46 m', velocity: '0.90 m/s' },
  },
  {
    source: `${cengel}, example 8-3: 6 L/s in 50 mm of drawn steel, water of 1.138 mPa·s`,
    seen: 'printed',
    inputs: {
      flow: '6 L/s',
      bore: '50 mm',
      length: '60 m',
      roughness: '2 µm',
      temperature: '15 °C',
      law: 'colebrook',
    },
    expected: { friction: '0.0172' },
  },
  byLaw('colebrook', '0.0185138660775'),
  byLaw('churchill', '0.0184626245663'),
  byLaw('haaland', '0.0182650530148'),
  byLaw('swamee-jain', '0.0184524244319'),
  measured('33.08 L/h', '0.1126'),
  measured('78.87 L/h', '0.04815'),
  measured('338.12 L/h', '0.0361'),
  measured('1077.5 L/h', '0.0267'),
  measured('6809 L/h', '0.01686'),
];
