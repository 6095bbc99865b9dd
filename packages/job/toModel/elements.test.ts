import { describe, expect, it } from 'vitest';
import { readJob } from '../read.ts';
import { fullJob } from '../testing/fullJob.ts';

/** A canister with as little as can be said of it, and what is to be tried. */
const plain = {
  fettle: 1,
  tank: { volume: '180 L' },
  filter: {
    family: 'basket-stack-canister',
    measurements: { baskets: 2, basketWidth: '160 mm', basketDepth: '150 mm', basketHeight: '60 mm' },
    pump: { ratedFlow: '900 L/h' },
  },
};
type Fields = Readonly<Record<string, unknown>>;
const withFilterFields = (fields: Fields, tank: Fields = {}) => ({
  ...plain,
  tank: { ...plain.tank, ...tank },
  filter: { ...plain.filter, ...fields },
});
const reading = (document: object) => readJob(JSON.stringify(document));
const modelOf = (document: object) => {
  const read = reading(document);
  if (!read.ok) throw new Error(read.problems.map(({ says }) => says).join(' '));
  return read;
};
const problems = (document: object): string[] => {
  const read = reading(document);
  return read.ok ? [] : read.problems.map(({ code, path }) => `${code} ${path}`);
};

describe('a document that says nothing of heights, coils and second pumps', () => {
  it('leaves them out of the model, and assumes nothing of them', () => {
    const { model } = modelOf(plain);
    expect(Object.keys(model.filter.outlet!).sort()).toEqual(
      ['barbBoreM', 'boreM', 'extraK', 'fittings', 'lengthM', 'roughnessM'].sort(),
    );
    expect(model.filter).not.toHaveProperty('placing');
    expect(model.filter).not.toHaveProperty('secondPump');
    expect(model.filter).not.toHaveProperty('outletBranches');
    expect(model.tank).not.toHaveProperty('surfaceM2');
    expect(model.givens.filter(({ path }) => /placing|surface|second|branch|coil/.test(path))).toEqual([]);
  });
});

describe('heights', () => {
  it('that are not stated beside others are assumed and listed, with the surface of the tank', () => {
    const { model } = modelOf(withFilterFields({ placing: { intakeDepth: '25 cm' } }));
    expect(model.filter.placing).toMatchObject({ intakeDepthM: 0.25, humpM: 0.12, lidDepthM: 0.8 });
    expect(model.tank.surfaceM2).toBeCloseTo(0.45, 12);
    const assumed = model.givens.filter(({ assumedBecause }) => assumedBecause).map(({ path }) => path);
    for (const path of ['tank.surface', 'filter.placing.hump', 'filter.placing.returnDepth'])
      expect(assumed).toContain(path);
    expect(model.filter.placing).not.toHaveProperty('intakeHoleM');
  });

  it('of the full document come out in SI units', () => {
    expect(modelOf(fullJob).model.filter.placing).toEqual({
      humpM: 0.12,
      lidDepthM: 0.9,
      intakeDepthM: 0.35,
      intakeHoleM: 0.03,
      returnDepthM: 0.05,
      returnHoleM: 0.01,
      surfaceRiseM: 0.03,
      spareM3: 0.015,
    });
  });
});

describe('a coil', () => {
  it('without a size is taken as 30 cm wide, and without turns as none, which is told', () => {
    const outlet = (fields: Fields) => withFilterFields({ hoses: { outlet: fields } });
    expect(modelOf(outlet({ turns: 2 })).model.filter.outlet?.coil).toEqual({ turns: 2, diameterM: 0.3 });
    const idle = modelOf(outlet({ coil: '20 cm' }));
    expect(idle.model.filter.outlet).not.toHaveProperty('coil');
    expect(idle.notes.map(({ code, path }) => `${code} ${path}`)).toContain(
      'kept-not-used filter.hoses.outlet.coil',
    );
  });
});

describe('a second pump', () => {
  it('is asked for its flow, and its curve has to fall, like the first', () => {
    const second = (fields: Fields) =>
      problems(withFilterFields({ secondPump: { place: 'beside', ...fields } }));
    expect(second({})).toEqual(['flow-missing filter.secondPump.ratedFlow']);
    expect(second({ ratedFlow: '300 L/h' })).toEqual([]);
    const rising = [
      { flow: '0 L/h', head: '1 m' },
      { flow: '100 L/h', head: '2 m' },
    ];
    expect(second({ curve: rising })).toEqual(['curve-not-falling filter.secondPump.curve[1]']);
  });

  it('runs unless it is said to stand', () => {
    const second = (fields: Fields) =>
      modelOf(withFilterFields({ secondPump: { place: 'behind', ratedFlow: '300 L/h', ...fields } })).model
        .filter.secondPump;
    expect(second({})?.running).toBe(true);
    expect(second({ running: false })?.running).toBe(false);
    expect(second({ checkValve: '3 cm' })?.checkValveHeadM).toBeCloseTo(0.03, 12);
  });
});

describe('a curve as a power of the flow', () => {
  const points = [
    { flow: '0 L/h', head: '1.4 m' },
    { flow: '400 L/h', head: '1.1 m' },
    { flow: '800 L/h', head: '0.3 m' },
  ];
  const pump = (fields: Fields) => withFilterFields({ pump: { curveForm: 'power', ...fields } });

  it('takes three points, or two and the shut-off head', () => {
    expect(problems(pump({ curve: points }))).toEqual([]);
    expect(problems(pump({ curve: points.slice(1), shutoffHead: '1.4 m' }))).toEqual([]);
    const { curve } = modelOf(pump({ curve: points })).model.filter.pump;
    expect(curve).toMatchObject({ kind: 'points', form: 'power' });
  });

  it('refuses any other number of points', () => {
    const refused = ['curve-not-of-three filter.pump.curveForm'];
    expect(problems(pump({ curve: points.slice(1) }))).toEqual(refused);
    expect(problems(pump({ curve: [...points, { flow: '900 L/h', head: '0 m' }] }))).toEqual(refused);
    expect(problems(pump({ ratedFlow: '900 L/h' }))).toEqual(refused);
  });
});
