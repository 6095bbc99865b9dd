import type { Tank } from '@fettle/engine/model/model.ts';
import { defaults, surfaceFor } from '../defaults.ts';
import { productDoubt } from '../doubts.ts';
import { type Note, note } from '../notes.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import type { JobDocument } from '../schema/job.ts';
import { tankSchema } from '../schema/tank.ts';
import { feedOf, feedSource } from './feed.ts';
import { readGiven, type Taker } from './givens.ts';

type DocumentTank = JobDocument['tank'];

const { shape } = tankSchema;

/**
 * The tank in SI units.
 * @param isPlaced whether it is told how the filter stands about it: then its surface is needed
 */
export function tankOf(tank: DocumentTank, taker: Taker, isPlaced: boolean): Tank {
  const take = simpleTaker(tank, taker);
  const volumeM3 = taker.note(place('volume', 'volumeM3', 'm3'), acceptedQuantity(shape.volume, tank.volume));
  const temperatureK = take('temperature', 'temperatureK', 'K');
  const feedProteinFraction = take('protein', 'feedProteinFraction', '1');
  return {
    volumeM3,
    temperatureK,
    salinity: take('salinity', 'salinity', '1'),
    pH: take('pH', 'pH', '1'),
    alkalinityKgPerM3: take('alkalinity', 'alkalinityKgPerM3', 'kg/m3 CaCO3'),
    feedKgPerS: feedOf(tank, { volumeM3, temperatureK, taker }),
    feedProteinFraction,
    waterChangePerS: waterChangeOf(tank, taker),
    planted: plantedOf(tank, taker),
    ...(tank.planted === 'lightly' || tank.planted === 'densely' ? { planting: tank.planted } : {}),
    oxygenFraction: take('oxygen', 'oxygenFraction', '1'),
    pressurePa: pressureOf(tank, taker),
    ...surfaceOf(tank, { volumeM3, taker, isPlaced }),
    ...currentOf(tank, taker),
  };
}

function surfaceOf(
  { surface }: DocumentTank,
  { volumeM3, taker, isPlaced }: { volumeM3: number; taker: Taker; isPlaced: boolean },
): Pick<Tank, 'surfaceM2'> {
  if (surface === undefined && !isPlaced) return {};
  const field = { ...place('surface', 'surfaceM2', 'm2'), schema: shape.surface, written: surface };
  return { surfaceM2: taker.take(field, surfaceFor(volumeM3)) };
}

function currentOf({ current }: DocumentTank, taker: Taker): Pick<Tank, 'standsCurrentMPerS'> {
  const stated = readGiven(shape.current, current);
  if (stated === undefined) return {};
  return { standsCurrentMPerS: taker.note(place('current', 'standsCurrentMPerS', 'm/s'), stated) };
}

function place(field: string, modelField: string, unit: string) {
  return { path: ['tank', field], modelPath: `tank.${modelField}`, unit };
}

type SimpleField = 'temperature' | 'pH' | 'alkalinity' | 'salinity' | 'oxygen' | 'protein';

function simpleTaker(tank: DocumentTank, taker: Taker) {
  return (field: SimpleField, modelField: string, unit: string) =>
    taker.take(
      { ...place(field, modelField, unit), schema: shape[field], written: tank[field] },
      defaults[field],
    );
}

function waterChangeOf(tank: DocumentTank, taker: Taker): number {
  const where = place('waterChange', 'waterChangePerS', '1/s');
  if (tank.waterChange === undefined) {
    const { value, doubt, because } = defaults.waterChange;
    return taker.note(where, { value, doubt, because });
  }
  const fields = shape.waterChange.unwrap().shape;
  const share = acceptedQuantity(fields.share, tank.waterChange.share);
  const every = acceptedQuantity(fields.every, tank.waterChange.every);
  const doubt = productDoubt([
    { value: share.value, doubt: share.doubt },
    { value: every.value, doubt: every.doubt },
  ]);
  return taker.note(where, { value: share.value / every.value, doubt });
}

/** What there is to know about where the feed comes from. */
export function feedNotes(tank: DocumentTank): readonly Note[] {
  if (tank.feed !== undefined) return [];
  return [note('feed-not-stated', ['tank', 'feed'], { from: feedSource(tank) })];
}

function plantedOf({ planted }: DocumentTank, taker: Taker): boolean {
  if (planted !== undefined) return planted === true || planted === 'lightly' || planted === 'densely';
  taker.note(place('planted', 'planted', 'yes or no'), {
    value: 0,
    because: 'not stated: taken without plants',
  });
  return false;
}

function pressureOf({ altitude }: DocumentTank, taker: Taker): number {
  const where = place('altitude', 'pressurePa', 'Pa');
  const height = readGiven(shape.altitude, altitude);
  if (height === undefined) {
    const { value, because } = defaults.altitude;
    return taker.note(where, { value: pressureAt(value), because });
  }
  const { value, doubt } = height;
  const size = doubt?.kind === 'plus-minus' ? doubt.size : 0;
  const half = (pressureAt(value - size) - pressureAt(value + size)) / 2;
  const inPressure = half > 0 ? ({ kind: 'plus-minus', size: half } as const) : undefined;
  return taker.note(where, { value: pressureAt(value), doubt: inPressure });
}

/**
 * Air pressure, Pa, at a height above the sea of -430 to 5000 m in the standard atmosphere:
 * p = 101325 (1 - 2.25577e-5 h)^5.25588 (ISO 2533:1975, from memory); weather moves it by about 3 %.
 */
export function pressureAt(heightM: number): number {
  return 101_325 * (1 - 2.25577e-5 * heightM) ** 5.25588;
}
