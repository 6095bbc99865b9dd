import { fittings } from '../catalogue/fittings.ts';
import { fittingKHooper1981, fittingKHooper1981Range } from '../laws/hydraulics/fittings.ts';
import {
  type BoreFlow,
  frictionFactorChurchill1977,
  frictionFactorChurchill1977Range,
  frictionFactorColebrook1939,
  frictionFactorColebrook1939Range,
  frictionFactorHaaland1983,
  frictionFactorHaaland1983Range,
  frictionFactorSwameeJain1976,
  frictionFactorSwameeJain1976Range,
  frictionFactorSwameeJainCubic,
  frictionFactorSwameeJainCubicRange,
  headLossDarcyWeisbach,
  reynoldsOfBore,
} from '../laws/hydraulics/friction.ts';
import { velocityHead, velocityInBore } from '../laws/hydraulics/jet.ts';
import type { ValidRange } from '../laws/range.ts';
import { hoseExamples } from './hoseExamples.ts';
import { choiceOr, entry, quantity, quantityOr, temperature } from './inputs.ts';
import { outsideOf } from './outside.ts';
import { reckoning } from './reckoning.ts';
import { freshWater, outsideOfWater } from './waterProperties.ts';

const laws = {
  churchill: {
    factor: frictionFactorChurchill1977,
    range: frictionFactorChurchill1977Range,
    source: 'Churchill 1977, Chem. Eng. 84(24), 91–92',
  },
  colebrook: {
    factor: frictionFactorColebrook1939,
    range: frictionFactorColebrook1939Range,
    source: 'Colebrook 1939, J. Inst. Civ. Eng. 11, 133–156',
  },
  haaland: {
    factor: frictionFactorHaaland1983,
    range: frictionFactorHaaland1983Range,
    source: 'Haaland 1983, J. Fluids Eng. 105, 89–90',
  },
  'swamee-jain': {
    factor: frictionFactorSwameeJain1976,
    range: frictionFactorSwameeJain1976Range,
    source: 'Swamee & Jain 1976, J. Hydraul. Div. ASCE 102, 657–664',
  },
  'swamee-jain-cubic': {
    factor: frictionFactorSwameeJainCubic,
    range: frictionFactorSwameeJainCubicRange,
    source: 'Swamee & Jain 1976, with the cubic of Dunlop 1991 (WADI Users Manual) between Re 2000 and 4000',
  },
} as const satisfies Readonly<
  Record<string, { factor: (flow: BoreFlow) => number; range: ValidRange; source: string }>
>;

const flow = quantity('flow', { label: 'flow', example: '600 L/h', least: '0 L/h' });
const bore = quantity('length', { label: 'inside diameter', example: '12 mm', above: '0 mm' });

interface Run {
  readonly flow: number;
  readonly bore: number;
  readonly temperature: number;
}

const motionIn = (run: Run) => {
  const { densityKgPerM3, viscosityPaS } = freshWater(run.temperature);
  const inBore = { flowM3PerS: run.flow, boreM: run.bore };
  return {
    velocityMPerS: velocityInBore(inBore),
    reynolds: reynoldsOfBore({ ...inBore, kinematicViscosityM2PerS: viscosityPaS / densityKgPerM3 }),
  };
};

const still = 'No water flows, so nothing is lost and no loss coefficient can be named.';

export const hoseLoss = reckoning({
  name: 'hose-loss',
  says: 'Head that a run of hose with its fittings takes from a flow.',
  formula: 'h = (f L/D + K) V²/(2g)',
  inputs: {
    flow,
    bore,
    length: quantity('length', { label: 'length', example: '1.5 m', least: '0 m' }),
    roughness: quantityOr('length', {
      label: 'roughness of the wall',
      example: '1.5 µm',
      least: '0 µm',
      otherwise: '1.5 µm',
    }),
    temperature,
    law: choiceOr(['churchill', 'colebrook', 'haaland', 'swamee-jain', 'swamee-jain-cubic'], {
      label: 'law of friction',
      otherwise: 'churchill',
    }),
    minor: quantityOr('count', {
      label: 'sum of the loss coefficients K of all fittings',
      example: '3',
      least: '0',
      otherwise: '0',
    }),
  },
  results: {
    head: { label: 'head lost, friction and fittings', unit: 'm', dimension: 'length' },
    friction: { label: 'friction factor (Darcy)', unit: '1', dimension: 'count' },
    reynolds: { label: 'Reynolds number', unit: '1', dimension: 'count' },
    velocity: { label: 'velocity', unit: 'm/s', dimension: 'velocity' },
  },
  source: 'Weisbach 1845 and Darcy 1857, with the friction factor of Churchill 1977 or another by choice',
  compute: (values) => {
    const { law, roughness } = values;
    const { velocityMPerS, reynolds } = motionIn(values);
    const chosen = laws[law];
    const relativeRoughness = roughness / values.bore;
    const source = `Weisbach 1845, Darcy 1857; ${chosen.source}`;
    const ofWater = outsideOfWater(values.temperature);
    if (reynolds === 0)
      return { answers: { head: 0, reynolds, velocity: 0 }, outside: ofWater, notes: [still], source };
    const friction = chosen.factor({ reynolds, relativeRoughness });
    const head = headLossDarcyWeisbach({
      frictionFactor: friction,
      lengthM: values.length,
      boreM: values.bore,
      velocityMPerS,
      minorK: values.minor,
    });
    const outside = outsideOf(chosen.range, {
      reynolds: { label: 'Reynolds number', value: reynolds },
      relativeRoughness: { label: 'roughness over bore', value: relativeRoughness },
    });
    return {
      answers: { head, friction, reynolds, velocity: velocityMPerS },
      outside: [...ofWater, ...outside],
      source,
    };
  },
  examples: hoseExamples,
});

export const fittingLoss = reckoning({
  name: 'fitting-loss',
  says: 'Head that one fitting of the catalogue takes from a flow.',
  formula: 'h = K V²/(2g), K = k1/Re + k∞ (1 + 1 in/D); K = k∞ for entrances, exits and other fixed losses',
  inputs: {
    fitting: entry(fittings, {
      label: 'fitting',
      example: 'elbow-90',
      takes: 'the id of a fitting of the catalogue',
    }),
    bore,
    flow,
    temperature,
  },
  results: {
    k: { label: 'loss coefficient K', unit: '1', dimension: 'count', digits: 3 },
    head: { label: 'head lost', unit: 'm', dimension: 'length', digits: 3 },
  },
  source: 'Hooper 1981, Chem. Eng. 88(17), 96–100, or what the catalogue gives for the fitting',
  compute: (values) => {
    const { fitting } = values;
    const { velocityMPerS, reynolds } = motionIn(values);
    const ofWater = outsideOfWater(values.temperature);
    // A fixed loss has no laminar term, so there is nothing to cite for it.
    const figures = fitting.k1.value === 0 ? [fitting.kInfinity] : [fitting.kInfinity, fitting.k1];
    const source = [...new Set(figures.map((figure) => figure.source.text))].join('; ');
    if (reynolds === 0) return { answers: { head: 0 }, outside: ofWater, notes: [still], source };
    const k = fitting.scalesWithBore
      ? fittingKHooper1981({
          k1: fitting.k1.value,
          kInfinity: fitting.kInfinity.value,
          reynolds,
          boreM: values.bore,
        })
      : fitting.k1.value / reynolds + fitting.kInfinity.value;
    const outside = fitting.scalesWithBore
      ? outsideOf(fittingKHooper1981Range, {
          reynolds: { label: 'Reynolds number', value: reynolds },
          boreM: { label: 'bore', value: values.bore, dimension: 'length' },
        })
      : [];
    return {
      answers: { k, head: k * velocityHead(velocityMPerS) },
      outside: [...ofWater, ...outside],
      source,
    };
  },
  examples: (
    [
      ['3.60305 L/h', '9.2'],
      ['36.0305 L/h', '2.0'],
      ['360.31 L/h', '1.28'],
      ['3603.05 L/h', '1.208'],
    ] as const
  ).map(([flowAt, printed]) => ({
    source: 'Hooper 1981, Chem. Eng. 88(17), 96–100, his equation at Re 100, 1000, 10 000 and 100 000',
    seen: 'formula' as const,
    inputs: { fitting: 'elbow-90-screwed', bore: '0.5 in', flow: flowAt, temperature: '20 °C' },
    expected: { k: printed },
  })),
});
