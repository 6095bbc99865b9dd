import type { Range } from '@fettle/engine/doubt/ranges.ts';
import { type Stop, sideBySide } from '@fettle/engine/lineup/stops.ts';
import type { TankRanges } from '@fettle/engine/lineup/tankDoubt.ts';
import { type TankOf, tankSaid } from '@fettle/engine/lineup/tankSaid.ts';
import type { TankState } from '@fettle/engine/lineup/tankState.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';
import { z } from 'zod';
import { type Figure, type FixedUnit, figure, figureSchema, inUnit } from './figures.ts';

const WEEK_S = 7 * 86_400;

const level = figureSchema.optional();

const levelsSchema = z
  .strictObject({ ammonia: level, nitrite: level, nitrate: level })
  .meta({ description: 'As N; a level that rises without end is absent.' });

const stateSchema = levelsSchema.extend({
  load: figureSchema.meta({ description: 'Ammonia nitrogen of feed and rotting dirt.' }),
  takers: z
    .array(
      z.strictObject({
        by: z.enum(['filter', 'other', 'walls', 'plants', 'changes', 'nothing']),
        name: z.string().optional(),
        share: figureSchema,
      }),
    )
    .meta({ description: 'Who takes the ammonia; together 1.' }),
  ends: z
    .array(z.strictObject({ by: z.enum(['changes', 'plants', 'stays']), share: figureSchema }))
    .meta({ description: 'Where the nitrogen goes in the end; together 1.' }),
});

/** Where the whole tank settles at its stated feed, as results carry it. */
export const balanceSchema = z
  .strictObject({
    clean: stateSchema,
    intervalEnd: stateSchema,
    oxygen: z.strictObject({
      fish: figureSchema,
      bacteria: figureSchema,
      dirt: figureSchema,
      brought: figureSchema.meta({
        description: 'By the laws of surface, falling water and bubbles, at the oxygen that the job states.',
      }),
      settles: figureSchema.meta({ description: 'Oxygen at which they bring what is used.' }),
    }),
    alkalinity: z.strictObject({
      usedPerWeek: figureSchema.meta({ description: 'As CaCO3.' }),
      fallsPerWeek: figureSchema,
      settles: figureSchema.meta({ description: 'With the water changes; 0 where it runs out.' }),
      lasts: figureSchema
        .optional()
        .meta({ description: 'Without water changes; absent where none is used.' }),
    }),
    nitrateHeld: z.strictObject({
      target: figureSchema.meta({ description: 'As N.' }),
      changePerWeek: figureSchema.meta({ description: 'Share of the water a week that holds it.' }),
    }),
    stops: z
      .array(
        z.strictObject({
          name: z.string().optional().meta({ description: 'Absent where it is the filter of the job.' }),
          share: figureSchema,
          soon: levelsSchema,
          madeUp: levelsSchema,
        }),
      )
      .meta({ description: 'One of several filters stopped; empty where there is one alone.' }),
    sideBySide: figureSchema.meta({ description: 'Time that a new filter runs beside the old one.' }),
    says: z.array(z.string()),
  })
  .meta({ description: 'Steady state of the whole tank at its stated feed.' });

type BalanceResult = z.infer<typeof balanceSchema>;

const within = (
  value: number,
  unit: FixedUnit,
  { range, per = 1 }: { readonly range: Range | undefined; readonly per?: number },
): Figure => ({
  ...figure(value * per, unit),
  ...(range !== undefined && Number.isFinite(range.low) && Number.isFinite(range.high)
    ? { low: inUnit(range.low * per, unit), high: inUnit(range.high * per, unit) }
    : {}),
});

type LevelName = 'ammonia' | 'nitrite' | 'nitrate';

const toLevels = (
  state: Readonly<Record<LevelName, number>>,
  rangeOf: (name: LevelName) => Range | undefined = () => undefined,
): z.infer<typeof levelsSchema> =>
  Object.fromEntries(
    (['ammonia', 'nitrite', 'nitrate'] as const)
      .filter((name) => Number.isFinite(state[name]))
      .map((name) => [name, within(state[name], 'mg/L', { range: rangeOf(name) })]),
  );

const whole = ({ ammonia, nitrite, nitrate }: TankState['changed']): number => ammonia + nitrite + nitrate;

const toState = (
  state: TankState,
  name: 'clean' | 'intervalEnd',
  ranges: TankRanges | undefined,
): BalanceResult['clean'] => {
  const { loadKgNPerS: load, work, taken, changed, rising } = state;
  const share = (kgNPerS: number): Figure => figure(load > 0 ? kgNPerS / load : 0, '1');
  return {
    ...toLevels(state, (level) => ranges?.[`${name}.${level}`]),
    load: figure(load, 'g/d'),
    takers: [
      ...work.map(({ kind, name: called, ammonia }) => ({
        by: kind,
        ...(called === undefined ? {} : { name: called }),
        share: share(ammonia),
      })),
      { by: 'plants', share: share(taken.ammonia) },
      { by: 'changes', share: share(changed.ammonia) },
      { by: 'nothing', share: share(rising.ammonia) },
    ],
    ends: [
      { by: 'changes', share: share(whole(changed)) },
      { by: 'plants', share: share(whole(taken)) },
      { by: 'stays', share: share(whole(rising)) },
    ],
  };
};

const toStop = ({ name, share, soon, madeUp }: Stop): BalanceResult['stops'][number] => ({
  ...(name === undefined ? {} : { name }),
  share: figure(share, '1'),
  soon: toLevels(soon),
  madeUp: toLevels(madeUp),
});

/** The balance of a tank as results carry it. */
export const toBalance = (of: TankOf, system: System): BalanceResult => {
  const { balance, ranges, model, recoveryS } = of;
  const { oxygen, alkalinity, nitrateHeld } = balance;
  const { lastsS } = alkalinity;
  const { temperatureK } = model.tank;
  return {
    clean: toState(balance.clean, 'clean', ranges),
    intervalEnd: toState(balance.intervalEnd, 'intervalEnd', ranges),
    oxygen: {
      fish: figure(oxygen.fishKgPerS, 'g/d'),
      bacteria: figure(oxygen.bacteriaKgPerS, 'g/d'),
      dirt: figure(oxygen.dirtKgPerS, 'g/d'),
      brought: figure(oxygen.broughtKgPerS, 'g/d'),
      settles: figure(oxygen.settlesKgPerM3, 'mg/L'),
    },
    alkalinity: {
      usedPerWeek: figure(alkalinity.usedKgPerS * WEEK_S, 'g'),
      fallsPerWeek: figure(alkalinity.fallsKgPerM3PerS * WEEK_S, 'mg/L'),
      settles: figure(alkalinity.settlesKgPerM3, 'mg/L'),
      ...(Number.isFinite(lastsS) ? { lasts: figure(lastsS, 'd') } : {}),
    },
    nitrateHeld: {
      target: figure(nitrateHeld.targetKgNPerM3, 'mg/L'),
      changePerWeek: within(nitrateHeld.changePerS, '1', { range: ranges?.changePerS, per: WEEK_S }),
    },
    stops: balance.stops.map(toStop),
    sideBySide: within(sideBySide({ recoveryS, temperatureK }), 'd', { range: ranges?.sideBySideS }),
    says: tankSaid(of).map((one) => word(one, { language: engineEnglish, units: system })),
  };
};
