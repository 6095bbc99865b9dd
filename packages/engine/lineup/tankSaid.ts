import type { Model } from '../model/model.ts';
import { quantity } from '../wording/facts.ts';
import { type Fact, type Said, said } from '../wording/said.ts';
import { type Stop, sideBySide } from './stops.ts';
import { NITRATE_PER_NITROGEN, type TankBalance } from './tankBalance.ts';
import type { TankOutcomeName, TankRanges } from './tankDoubt.ts';
import type { TankState } from './tankState.ts';

const WEEK_S = 7 * 86_400;

/** A tank's balance with what is told of it. */
export interface TankOf {
  readonly model: Model;
  readonly balance: TankBalance;
  /** Absent where nothing was drawn. */
  readonly ranges?: TankRanges;
  /** Time constant with which bacteria come back, s. */
  readonly recoveryS: number;
}

const concentration = (kgPerM3: number): Fact =>
  Number.isFinite(kgPerM3)
    ? { ...quantity(kgPerM3, 'concentration'), digits: 2 }
    : said('balance.without-end');

const nitrate = (kgNPerM3: number): Fact => concentration(kgNPerM3 * NITRATE_PER_NITROGEN);

const mass = (kgPerS: number): Fact => ({ ...quantity(kgPerS, 'mass-rate'), digits: 2 });

/** A figure, with its range where it was drawn. */
const ranged = (
  of: TankOf,
  name: TankOutcomeName,
  { told, value }: { readonly told: (value: number) => Fact; readonly value: number },
): Fact => {
  const range = of.ranges?.[name];
  if (range === undefined) return told(value);
  return said('balance.ranged', { value: told(value), low: told(range.low), high: told(range.high) });
};

const levelsSaid = (of: TankOf, state: 'clean' | 'intervalEnd'): Said => {
  const { ammonia, nitrite, nitrate: made } = of.balance[state];
  return said(`balance.levels.${state}`, {
    ammonia: ranged(of, `${state}.ammonia`, { told: concentration, value: ammonia }),
    nitrite: ranged(of, `${state}.nitrite`, { told: concentration, value: nitrite }),
    nitrate: ranged(of, `${state}.nitrate`, { told: nitrate, value: made }),
  });
};

/** Shares below this are not told, 1. */
const LEAST_TOLD = 0.005;

const parts = (
  shares: readonly (readonly [code: string, kgNPerS: number, name?: string | undefined])[],
  all: number,
): readonly Said[] =>
  shares
    .filter(([, kgNPerS]) => kgNPerS >= LEAST_TOLD * all)
    .map(([code, kgNPerS, name]) =>
      said(code, { share: { share: kgNPerS / all }, ...(name === undefined ? {} : { name }) }),
    );

const takersSaid = (state: TankState): Said =>
  said('balance.takers', {
    load: mass(state.loadKgNPerS),
    parts: {
      all: parts(
        [
          ...state.work.map(({ kind, ammonia, name }) => [`balance.by.${kind}`, ammonia, name] as const),
          ['balance.by.plants', state.taken.ammonia],
          ['balance.by.changes', state.changed.ammonia],
          ['balance.by.nothing', state.rising.ammonia],
        ],
        state.loadKgNPerS,
      ),
    },
  });

const whole = (one: TankState['changed']): number => one.ammonia + one.nitrite + one.nitrate;

const endsSaid = (state: TankState): Said =>
  said('balance.ends', {
    parts: {
      all: parts(
        [
          ['balance.end.changes', whole(state.changed)],
          ['balance.end.plants', whole(state.taken)],
          ['balance.end.stays', whole(state.rising)],
        ],
        state.loadKgNPerS,
      ),
    },
  });

const changeSaid = (of: TankOf): Said => {
  const { targetKgNPerM3, changePerS } = of.balance.nitrateHeld;
  const target = nitrate(targetKgNPerM3);
  const now: Fact = { share: of.model.tank.waterChangePerS * WEEK_S };
  if (changePerS <= 0) return said('balance.change.none', { target, now });
  const weekly = (perS: number): Fact => ({ share: perS * WEEK_S });
  const change = ranged(of, 'changePerS', { told: weekly, value: changePerS });
  return said(changePerS * WEEK_S > 1 ? 'balance.change.often' : 'balance.change', { target, change, now });
};

const limeSaid = ({ balance, model }: TankOf): Said => {
  const { usedKgPerS, fallsKgPerM3PerS, settlesKgPerM3, lastsS } = balance.alkalinity;
  if (usedKgPerS <= 0) return said('balance.lime.none');
  const facts = {
    used: { ...quantity(usedKgPerS * WEEK_S, 'mass'), digits: 2 },
    falls: { ...quantity(fallsKgPerM3PerS * WEEK_S, 'alkalinity'), digits: 2 },
    lasts: { spanS: lastsS, beyond: lastsS > 365 * 86_400 },
  };
  if (settlesKgPerM3 <= 0) return said('balance.lime.runs-out', facts);
  return said('balance.lime', {
    ...facts,
    from: { ...quantity(model.tank.alkalinityKgPerM3, 'alkalinity'), digits: 2 },
    settles: { ...quantity(settlesKgPerM3, 'alkalinity'), digits: 2 },
  });
};

const oxygenSaid = ({ balance, model }: TankOf): Said => {
  const { fishKgPerS, bacteriaKgPerS, dirtKgPerS, broughtKgPerS, settlesKgPerM3 } = balance.oxygen;
  return said('balance.oxygen', {
    used: mass(fishKgPerS + bacteriaKgPerS + dirtKgPerS),
    fish: mass(fishKgPerS),
    bacteria: mass(bacteriaKgPerS),
    dirt: mass(dirtKgPerS),
    brought: mass(broughtKgPerS),
    stated: { share: model.tank.oxygenFraction },
    settles: concentration(settlesKgPerM3),
  });
};

const stopSaid = ({ name, share, soon, madeUp }: Stop): Said =>
  said(name === undefined ? 'balance.stop.own' : 'balance.stop.other', {
    ...(name === undefined ? {} : { name }),
    share: { share },
    ammonia: concentration(soon.ammonia),
    nitrite: concentration(soon.nitrite),
    laterAmmonia: concentration(madeUp.ammonia),
    laterNitrite: concentration(madeUp.nitrite),
  });

const wallShare = ({ work, loadKgNPerS }: TankState): number =>
  (work.find(({ kind }) => kind === 'walls')?.ammonia ?? 0) / loadKgNPerS;

const sideBySideSaid = (of: TankOf): Said => {
  const { temperatureK } = of.model.tank;
  const told = (durationS: number): Fact => ({ spanS: durationS });
  const time = ranged(of, 'sideBySideS', {
    told,
    value: sideBySide({ recoveryS: of.recoveryS, temperatureK }),
  });
  return said('balance.side-by-side', { time });
};

/** Where the whole tank settles at its stated feed, one sentence each. */
export const tankSaid = (of: TankOf): readonly Said[] => {
  const { balance } = of;
  const { intervalEnd, stops } = balance;
  if (intervalEnd.loadKgNPerS <= 0) return [said('balance.no-feed')];
  return [
    levelsSaid(of, 'clean'),
    levelsSaid(of, 'intervalEnd'),
    takersSaid(intervalEnd),
    said('balance.margin', {
      walls: ranged(of, 'wallShare', {
        told: (share) => ({ share }),
        value: wallShare(intervalEnd),
      }),
    }),
    endsSaid(intervalEnd),
    changeSaid(of),
    limeSaid(of),
    oxygenSaid(of),
    ...stops.map(stopSaid),
    ...(stops.length > 0 ? [said('balance.stop.time')] : []),
    sideBySideSaid(of),
  ];
};
