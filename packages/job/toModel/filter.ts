import type { Family, Layout } from '@fettle/engine/families/layout.ts';
import type { Filter, Measurements, Tank } from '@fettle/engine/model/model.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import type { Quantity } from '@fettle/engine/quantities/readQuantity.ts';
import type { Context } from '../context.ts';
import { type Default, defaults } from '../defaults.ts';
import { driveIn } from '../drive.ts';
import { otherSlotsOf } from '../laying.ts';
import { type Note, note } from '../notes.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import { filterSchema, gapField, intakeSchema, secondPumpSchema } from '../schema/filter.ts';
import type { JobDocument } from '../schema/job.ts';
import { airPumpOf } from './airPump.ts';
import { byName, readGiven, type Taker } from './givens.ts';
import { hosesOf } from './hoses.ts';
import { placingOf } from './placing.ts';
import { pumpOf } from './pump.ts';

type DocumentFilter = JobDocument['filter'];

/** What the filter is built with. */
interface Setting {
  readonly family: Family;
  readonly context: Context;
  readonly layout: Layout;
  readonly tank: Tank;
  readonly taker: Taker;
}

const secondsPerYear = 31_557_600;

/** The filter in SI units. */
export function filterOf(filter: DocumentFilter, setting: Setting): Filter {
  const { family, taker } = setting;
  const pump =
    driveIn(filter.pump, family) === 'air-lift'
      ? airPumpOf(filter.pump, setting)
      : pumpOf(filter.pump, setting);
  const price = readGiven(filterSchema.shape.price, filter.price);
  return {
    name: filter.name ?? family.name,
    family: family.id,
    measurements: measurementsOf(setting),
    pump,
    ...secondPumpOf(filter, setting),
    ...hosesOf(filter.hoses, { pump, family, taker }),
    ...placingOf(filter.placing, { family, taker }),
    chamberGapM: gapsOf(filter, taker),
    ...slotsOf(filter, setting.context),
    ...(price === undefined
      ? {}
      : {
          price: taker.note(
            { path: ['filter', 'price'], modelPath: 'filter.price', unit: price.unit },
            price,
          ),
        }),
    lifeYears: lifeOf(filter, taker),
  };
}

function secondPumpOf(
  { secondPump }: DocumentFilter,
  { family, taker }: Setting,
): Pick<Filter, 'secondPump'> {
  if (secondPump === undefined) return {};
  const place = { path: ['filter', 'secondPump'], modelPath: 'filter.secondPump.pump' };
  const opensAt = readGiven(secondPumpSchema.shape.checkValve, secondPump.checkValve);
  const valve = {
    path: ['filter', 'secondPump', 'checkValve'],
    modelPath: 'filter.secondPump.checkValveHeadM',
    unit: 'm',
  };
  return {
    secondPump: {
      pump: pumpOf(secondPump, { family, taker }, place),
      place: secondPump.place,
      running: secondPump.running ?? true,
      ...(opensAt === undefined ? {} : { checkValveHeadM: taker.note(valve, opensAt) }),
    },
  };
}

function lifeOf(filter: DocumentFilter, taker: Taker): number {
  const stated: Default | Quantity = readGiven(filterSchema.shape.life, filter.life) ?? defaults.life;
  const because = 'because' in stated ? stated.because : undefined;
  const { value, doubt } = stated;
  const inYears = doubt?.kind === 'plus-minus' ? { ...doubt, size: doubt.size / secondsPerYear } : doubt;
  const place = { path: ['filter', 'life'], modelPath: 'filter.lifeYears', unit: 'a' };
  return taker.note(place, { value: value / secondsPerYear, doubt: inYears, because });
}

const unitOfKind = { length: 'm', area: 'm2', count: '1', fraction: '1', 'yes-no': 'yes or no' } as const;

function measurementsOf({ family, context, taker }: Setting): Measurements {
  const measurements: Record<string, number> = {};
  for (const { key, kind, assumed } of family.measurements) {
    const place = {
      path: ['filter', 'measurements', key],
      modelPath: `filter.measurements.${key}`,
      unit: unitOfKind[kind],
    };
    const given = context.measurements[key];
    if (given !== undefined) measurements[key] = taker.note(place, given);
    else if (assumed !== undefined) {
      const doubt =
        assumed.doubtFactor === undefined
          ? undefined
          : ({ kind: 'factor', size: assumed.doubtFactor } as const);
      measurements[key] = taker.note(place, {
        value: assumed.value,
        doubt,
        because: `not stated: ${assumed.because}`,
      });
    }
  }
  return measurements;
}

/** Figures of the filter that can hardly be meant as they stand. */
export function filterNotes(filter: DocumentFilter, { family, layout }: Context): readonly Note[] {
  const sides = ['intake', 'outlet'] as const;
  return [
    ...sides.flatMap((side) => [...barbNotes(filter, side), ...coilNotes(filter, side)]),
    ...branchNotes(filter),
    ...(family === undefined || layout === undefined ? [] : weirNotes(layout)),
  ];
}

/** The size of a coil by itself says nothing: it takes turns to make one. */
function coilNotes(filter: DocumentFilter, side: 'intake' | 'outlet'): readonly Note[] {
  const hose = filter.hoses?.[side];
  if (hose?.coil === undefined || hose.turns !== undefined) return [];
  const what = 'a coil without its number of turns';
  return [note('kept-not-used', ['filter', 'hoses', side, 'coil'], { what })];
}

/** An outlet hose that parts into others has no end of its own to be lifted. */
function branchNotes(filter: DocumentFilter): readonly Note[] {
  const outlet = filter.hoses?.outlet;
  if (outlet?.lift === undefined || (outlet.branches ?? []).length === 0) return [];
  const what = 'the lift of a hose that parts into branches, which have their own';
  return [note('kept-not-used', ['filter', 'hoses', 'outlet', 'lift'], { what })];
}

function barbNotes(filter: DocumentFilter, side: 'intake' | 'outlet'): readonly Note[] {
  const hose = filter.hoses?.[side];
  const bore = readGiven(intakeSchema.shape.bore, hose?.bore);
  const barbs = readGiven(intakeSchema.shape.barbBore, hose?.barbBore);
  if (bore === undefined || barbs === undefined || barbs.value <= bore.value) return [];
  const facts = { barbs: barbs.written, hose: bore.written };
  return [note('barbs-wider-than-hose', ['filter', 'hoses', side, 'barbBore'], facts)];
}

function weirNotes({ weirs }: Layout): readonly Note[] {
  const crest = (purpose: 'outlet' | 'overflow') => weirs.find((weir) => weir.purpose === purpose);
  const [outlet, overflow] = [crest('outlet'), crest('overflow')];
  if (outlet === undefined || overflow === undefined) return [];
  if (overflow.crestHeightM > outlet.crestHeightM) return [];
  const facts = { overflow: height(overflow.crestHeightM), outlet: height(outlet.crestHeightM) };
  return [note('overflow-below-outlet', ['filter', 'measurements', 'overflowCrestHeight'], facts)];
}

function height(metres: number): string {
  return printQuantity({ value: metres, dimension: 'length', system: 'metric' });
}

function slotsOf({ slots }: DocumentFilter, { layout }: Context): Pick<Filter, 'otherSlots'> {
  if (slots === undefined || slots.length === 0 || layout === undefined) return {};
  return { otherSlots: otherSlotsOf(slots, layout.chambers) };
}

function gapsOf(filter: DocumentFilter, taker: Taker): Readonly<Record<string, number>> {
  const gaps = Object.entries(filter.gaps ?? {})
    .toSorted(byName)
    .map(([chamber, written]) => {
      const place = {
        path: ['filter', 'gaps', chamber],
        modelPath: `filter.chamberGapM.${chamber}`,
        unit: 'm',
      };
      return [chamber, taker.note(place, acceptedQuantity(gapField, written))] as const;
    });
  return Object.fromEntries(gaps);
}
