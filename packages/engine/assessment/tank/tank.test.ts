import { describe, expect, test } from 'vitest';
import { leastSubstrateRittmannMcCarty1980 } from '../../laws/life/growth.ts';
import type { Model } from '../../model/model.ts';
import { beginStiff, marchStiff } from '../../numerics/stiff.ts';
import { assess } from '../assess.ts';
import { compiledOf } from '../compile.ts';
import { march } from '../dirt/march.ts';
import { bacteriaShares } from '../life/bacteria.ts';
import { carriesIn } from '../life/carries.ts';
import { hangOnBack, internalBox, splitCanister, stackCanister } from '../testing/models.ts';
import { beginTank } from './beginTank.ts';
import type { Happening, TankScenario } from './scenario.ts';
import { stagedChanges } from './stagedChange.ts';
import { forecastTank } from './tankForecast.ts';
import { at, LEVELS, ledgerError } from './tankState.ts';
import { heldAsStated } from './testing/heldAsStated.ts';

const DAY_S = 86_400;

/** A job in water that suits bacteria, fed a share of what its filter carries. */
const fedAt = (model: Model, share: number, temperatureK = 298.65): Model => {
  const suited = { ...model, tank: { ...model.tank, temperatureK, pH: 7.5, alkalinityKgPerM3: 0.12 } };
  const feedKgPerS = share * assess(suited).carries.day.feedKgPerS;
  return { ...suited, tank: { ...suited.tank, feedKgPerS } };
};

const scenario = (of: Partial<TankScenario> = {}): TankScenario => ({
  days: 60,
  start: { kind: 'mature' },
  happenings: [],
  ...of,
});

const with_ = (...happenings: readonly Happening[]): TankScenario => scenario({ happenings });

describe('agreement with the steady state', () => {
  /** The filter alone, as the assessment has it: no walls, plants or water changes, and pH and alkalinity as they stand. */
  test.each([
    ['canister with baskets', stackCanister()],
    ['canister of two halves', splitCanister()],
    ['hang-on-back', hangOnBack()],
    ['internal box', internalBox()],
  ])('%s: a ripe bed settles at the level that the assessment takes its feed from', (_, plain) => {
    const model = { ...plain, tank: { ...plain.tank, waterChangePerS: 0, planted: false } };
    const compiled = compiledOf(model);
    const marched = march(compiled, model.tank.feedKgPerS * 0.25, 60 * DAY_S);
    const tan = model.tank.feedKgPerS * model.tank.feedProteinFraction * 0.092;
    const shares = bacteriaShares(compiled, marched, tan);
    const ripe = { ...shares, cleaningFactor: shares.cleaningFactor.map((one) => (one > 0 ? 1 : 0)) };
    const { carries, capacity } = carriesIn(compiled, ripe, marched.atDay);
    const tank = beginTank(
      model,
      scenario({ start: { kind: 'seeded', share: 1 }, walls: false, plants: false }),
    );
    // The dirt stays that of the job's own feed, as in the assessment; only the ammonia is that of what is carried.
    tank.regime.feedKgPerS = carries.oxidisedKgNPerS / tank.regime.habitat.nitrogenPerFeedRatio;
    const start = tank.march.y.slice();
    start[at.oxygen] = compiled.water.oxygenKgPerM3;
    // Oxygen and alkalinity are held where the assessment has them.
    const held = heldAsStated(tank);
    const settled = beginStiff(held, { time: 0, y: start }, tank.march.closeness);
    marchStiff(settled, 1000 * DAY_S);
    const { y } = settled;
    tank.system.derivative(0, y, new Float64Array(held.size));
    expect(y[at.ammonia]! / capacity.ammoniaKgNPerM3).toBeCloseTo(1, 3);
    expect(y[at.nitrite]! / capacity.nitriteKgNPerM3).toBeCloseTo(1, 3);
    const first = tank.system.work.first.reduce((sum, one) => sum + one, 0);
    expect(first / carries.oxidisedKgNPerS).toBeCloseTo(1, 4);
    // With endless bacteria the levels are the roots that the assessment finds, and there at once.
    Object.assign(tank.regime, { countsBacteria: false });
    const endless = beginStiff(held, { time: 0, y: start }, tank.march.closeness);
    marchStiff(endless, 20 * DAY_S);
    expect(endless.y[at.ammonia]! / capacity.ammoniaKgNPerM3).toBeCloseTo(1, 4);
    expect(endless.y[at.nitrite]! / capacity.nitriteKgNPerM3).toBeCloseTo(1, 4);
  });

  test('a tank with little to eat stands at the level at which growth is decay', () => {
    const model = fedAt(splitCanister(), 0.05);
    const tank = beginTank(model, scenario({ walls: false }));
    const { first } = tank.regime.habitat;
    const oxygen = tank.march.y[at.oxygen]!;
    const least = leastSubstrateRittmannMcCarty1980({
      growthPerS: (first.growthPerS * oxygen) / (oxygen + 0.5e-3),
      decayPerS: first.decayPerS,
      halfKgPerM3: first.halfKgNPerM3,
    });
    expect(tank.march.y[at.ammonia]! / least).toBeGreaterThan(0.9);
    expect(tank.march.y[at.ammonia]! / least).toBeLessThan(1.15);
  });
});

describe('closed forms without bacteria', () => {
  const lifeless = (waterChangePerS: number) => {
    const plain = fedAt(splitCanister(), 0.5);
    const model = { ...plain, tank: { ...plain.tank, waterChangePerS } };
    const tank = beginTank(model, scenario({ start: { kind: 'new' }, plants: false }));
    tank.march.y.fill(0, LEVELS);
    return tank;
  };
  const riseOf = ({ regime }: ReturnType<typeof lifeless>): number =>
    (regime.habitat.nitrogenPerFeedRatio * regime.feedKgPerS) / regime.volumeM3;

  test('ammonia rises in a straight line', () => {
    const tank = lifeless(0);
    marchStiff(tank.march, 30 * DAY_S);
    expect(tank.march.y[at.ammonia]! / (riseOf(tank) * 30 * DAY_S)).toBeCloseTo(1, 9);
  });

  test('with water changes it settles at what comes in over what goes out', () => {
    const change = 0.05 / DAY_S;
    const tank = lifeless(change);
    marchStiff(tank.march, 30 * DAY_S);
    const wanted = (riseOf(tank) / change) * -Math.expm1(-change * 30 * DAY_S);
    expect(tank.march.y[at.ammonia]! / wanted).toBeCloseTo(1, 4);
  });
});

test.each([
  ['from nothing', scenario({ start: { kind: 'new' } })],
  [
    'with dated water changes',
    scenario({ start: { kind: 'seeded', share: 0.2 }, changes: { share: 0.3, everyDays: 7 } }),
  ],
  [
    'through everything at once',
    with_(
      { day: 3, kind: 'replace', beds: 'biological', share: 0.5 },
      { day: 5, kind: 'dose', riseKgNPerM3: 2e-3 },
      { day: 8, kind: 'change', share: 0.5 },
      { day: 10, kind: 'harm', killed: 0.5, activity: 0.3, forDays: 4 },
      { day: 20, kind: 'temperature', temperatureK: 288.15, forDays: 10 },
      { day: 25, kind: 'stop', hours: 6, rinsed: false },
      { day: 35, kind: 'feed', factor: 2, forDays: 7 },
      { day: 50, kind: 'clean', beds: 'all', water: 'tap' },
    ),
  ],
])('the nitrogen balance closes to 1e-9: %s', (_, how) => {
  const { ledger } = forecastTank(
    { ...fedAt(splitCanister(), 0.6), tank: { ...fedAt(splitCanister(), 0.6).tank, planted: true } },
    how,
  );
  expect(Math.abs(ledger.error)).toBeLessThan(1e-9);
  const { startKg, fedKg, changedKg, takenKg, endKg } = ledger;
  expect((startKg + fedKg - changedKg - takenKg) / endKg).toBeCloseTo(1, 9);
  expect(takenKg).toBeGreaterThan(0);
});

describe('a new tank', () => {
  const backDays = (celsius: number, share = 0.4): number => {
    const told = forecastTank(
      fedAt(splitCanister(), share, 273.15 + celsius),
      scenario({ days: 200, start: { kind: 'new' } }),
    );
    expect(told.nitrite.stillAbove).toBe(false);
    return Math.max(told.ammonia.backS ?? 0, told.nitrite.backS ?? 0) / DAY_S;
  };

  test('is through in four to six weeks at 24 to 27 °C: what the inoculum was set by', () => {
    expect(backDays(24)).toBeLessThanOrEqual(42);
    expect(backDays(27)).toBeGreaterThanOrEqual(28);
  });

  test('ammonia peaks before nitrite, and nitrite before nitrate has taken its place', () => {
    const told = forecastTank(fedAt(splitCanister(), 0.4), scenario({ start: { kind: 'new' } }));
    expect(told.ammonia.peak.timeS).toBeLessThan(told.nitrite.peak.timeS);
    expect(told.days.nitrateKgNPerM3.at(-1)!).toBeGreaterThan(told.days.nitriteKgNPerM3.at(-1)!);
  });

  test('takes longer the colder it is, and shorter the more of a ripe filter it is given', () => {
    const cold = backDays(16);
    expect(cold).toBeGreaterThan(backDays(25));
    const seeded = [0.01, 0.1, 0.5].map((share) => {
      const told = forecastTank(fedAt(splitCanister(), 0.4), scenario({ start: { kind: 'seeded', share } }));
      return told.nitrite.peak.value;
    });
    expect(seeded[1]!).toBeLessThan(seeded[0]!);
    expect(seeded[2]!).toBeLessThan(seeded[1]!);
  });
});

describe('more of a trouble is never better', () => {
  const model = fedAt(splitCanister(), 0.6);
  const peaks = (happening: Happening): readonly [number, number] => {
    const told = forecastTank(model, with_(happening));
    return [told.ammonia.peak.value, told.nitrite.peak.value];
  };
  const rising = (values: readonly (readonly [number, number])[]): void => {
    values.slice(1).forEach((one, before) => {
      expect(one[0]).toBeGreaterThanOrEqual(values[before]![0] * (1 - 1e-3));
      expect(one[1]).toBeGreaterThanOrEqual(values[before]![1] * (1 - 1e-3));
    });
  };

  test('feed', () => {
    rising([1, 1.5, 2, 3].map((factor) => peaks({ day: 1, kind: 'feed', factor, forDays: 7 })));
  });

  test('media replaced', () => {
    rising([0.2, 0.5, 0.8, 1].map((share) => peaks({ day: 1, kind: 'replace', beds: 'all', share })));
  });

  test('bacteria killed', () => {
    rising(
      [0, 0.5, 0.9, 0.99].map((killed) => peaks({ day: 1, kind: 'harm', killed, activity: 1, forDays: 1 })),
    );
  });

  test('tap water against tank water', () => {
    rising((['tank', 'tap'] as const).map((water) => peaks({ day: 1, kind: 'clean', beds: 'all', water })));
  });

  test('hours without a pump', () => {
    rising([1, 6, 24].map((hours) => peaks({ day: 1, kind: 'stop', hours, rinsed: true })));
  });
});

test('warmth that comes back leaves the tank as it was', () => {
  const model = fedAt(splitCanister(), 0.5);
  const told = forecastTank(
    model,
    scenario({ days: 400, happenings: [{ day: 5, kind: 'temperature', temperatureK: 288.15, forDays: 20 }] }),
  );
  const [first, last] = [told.days.ammoniaKgNPerM3[0]!, told.days.ammoniaKgNPerM3.at(-1)!];
  expect(last / first).toBeCloseTo(1, 1);
});

test('a stopped filter lasts shorter the more dirt there is, and never runs again after half an hour', () => {
  const few = forecastTank(fedAt(splitCanister(), 0.2), scenario()).stopped;
  const much = forecastTank(fedAt(splitCanister(), 0.9), scenario()).stopped;
  expect(much.lastsS.value).toBeLessThan(few.lastsS.value);
  expect(few.restartWithinS).toBeLessThanOrEqual(1800);
  expect(few.lastsS.low).toBeLessThan(few.lastsS.value);
});

test('alkalinity runs out where nothing brings any, and nitrification stops with it', () => {
  const plain = fedAt(splitCanister(), 0.8);
  const model = { ...plain, tank: { ...plain.tank, waterChangePerS: 0, alkalinityKgPerM3: 0.05 } };
  const told = forecastTank(model, scenario({ days: 120, start: { kind: 'seeded', share: 1 } }));
  expect(told.leastAlkalinity.value).toBeLessThan(0.015);
  expect(told.ammonia.stillAbove).toBe(true);
});

test('media may be changed in fewer parts the less they do', () => {
  const told = stagedChanges(fedAt(splitCanister(), 0.8));
  expect(told.length).toBeGreaterThan(0);
  for (const one of told) {
    expect(one.share).toBeGreaterThan(0);
    if (one.parts === 1) continue;
    expect(one.peakAmmoniaKgNPerM3).toBeLessThanOrEqual(one.wholeAmmoniaKgNPerM3);
    expect(one.peakNitriteKgNPerM3).toBeLessThanOrEqual(one.wholeNitriteKgNPerM3);
  }
  const partsOf = (share: number): number =>
    Math.max(...stagedChanges(fedAt(splitCanister(), share)).map(({ parts }) => parts ?? 9));
  expect(partsOf(0.3)).toBeLessThanOrEqual(partsOf(0.9));
});

test('the ledger of a run that is not stopped counts both steps', () => {
  const tank = beginTank(fedAt(splitCanister(), 0.5), scenario());
  const start = tank.march.y.slice();
  marchStiff(tank.march, 30 * DAY_S);
  const { y } = tank.march;
  expect(Math.abs(ledgerError(start, y))).toBeLessThan(1e-12);
  expect(y[at.second]!).toBeLessThanOrEqual(y[at.first]! * 1.01);
});
