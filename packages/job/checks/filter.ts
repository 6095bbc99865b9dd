import type { Family } from '@fettle/engine/families/layout.ts';
import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import { driveIn } from '../drive.ts';
import { type Problem, problem } from '../problems.ts';
import { readField, type WrittenQuantity } from '../schema/fields.ts';
import { curvePointSchema, pumpSchema } from '../schema/filter.ts';
import { checkChamber } from './names.ts';

/** Pump, hoses and gaps against the family. */
export function checkFilter(draft: Draft, context: Context): readonly Problem[] {
  return [
    ...checkFirstPump(draft, context),
    ...checkPump(draft.filter?.secondPump, 'secondPump'),
    ...checkHose(draft, context, 'intake'),
    ...checkHose(draft, context, 'outlet'),
    ...Object.keys(draft.filter?.gaps ?? {}).flatMap((id) =>
      checkChamber(id, ['filter', 'gaps', id], context),
    ),
    ...(draft.filter?.slots ?? []).flatMap((slot, index) =>
      checkChamber(slot?.past, ['filter', 'slots', index, 'past'], context),
    ),
  ];
}

type DraftFilter = NonNullable<Draft['filter']>;
type DraftPump = NonNullable<DraftFilter['pump']>;

/** What drives the filter: air, or the pump in the water. */
function checkFirstPump(draft: Draft, { family }: Context): readonly Problem[] {
  const pump = draft.filter?.pump;
  return pump !== undefined && family !== undefined && driveIn(pump, family) === 'air-lift'
    ? checkAirLift(pump, family)
    : checkPump(pump, 'pump');
}

/** A pump by the place where it stands in the document. */
function checkPump(pump: DraftPump | undefined, at: 'pump' | 'secondPump'): readonly Problem[] {
  if (pump === undefined) return [];
  const path = ['filter', at];
  // A field that was refused still stands in the draft, empty: it is wrong, not missing.
  if (!('ratedFlow' in pump) && !('curve' in pump)) {
    const allowed = `filter.${at}.ratedFlow such as 900 L/h, or filter.${at}.curve`;
    return [problem('flow-missing', [...path, 'ratedFlow'], { facts: {}, allowed })];
  }
  if (pump.curve === undefined) return checkForm(pump, path);
  return [
    ...checkCurve(pump.curve, [...path, 'curve']),
    ...checkShutoff(pump.curve, pump.shutoffHead, path),
    ...checkForm(pump, path),
  ];
}

/** Fields that say something of a pump in the water and nothing of air. */
const pumpsOwn = ['ratedFlow', 'shutoffHead', 'curve', 'speed'] as const;

function checkAirLift(pump: object, family: Family): readonly Problem[] {
  const path = ['filter', 'pump', 'airFlow'];
  if (family.drives?.includes('air-lift') !== true) {
    return [problem('not-in-family', path, { facts: { what: 'an air-lift', family: family.name } })];
  }
  const beside = pumpsOwn.filter((field) => field in pump);
  if (beside.length === 0) return [];
  const facts = { fields: 'airFlow and ratedFlow', found: ['airFlow', ...beside].join(' and ') };
  return [problem('one-of-fields', ['filter', 'pump'], { facts })];
}

type Curve = NonNullable<DraftPump['curve']>;

function checkCurve(curve: Curve, path: readonly string[]): readonly Problem[] {
  if (curve.length < 2) return [problem('list-too-short', path, { facts: { least: 2 } })];
  const points = curve.map((point) => ({
    flow: readField(curvePointSchema.shape.flow, point?.flow),
    head: readField(curvePointSchema.shape.head, point?.head),
  }));
  const problems: Problem[] = [];
  points.forEach((point, index) => {
    const before = points[index - 1];
    if (before === undefined || !point.flow.ok || !point.head.ok || !before.flow.ok || !before.head.ok)
      return;
    const pair = `${point.flow.written} at ${point.head.written} after ${before.flow.written} at ${before.head.written}`;
    if (point.flow.value > before.flow.value && point.head.value < before.head.value) return;
    problems.push(problem('curve-not-falling', [...path, index], { facts: { detail: pair } }));
  });
  return problems;
}

/** A shut-off head that leads the curve must stand above its first point. */
function checkShutoff(
  curve: Curve,
  written: WrittenQuantity | undefined,
  path: readonly string[],
): readonly Problem[] {
  const shutoff = readField(pumpSchema.shape.shutoffHead, written);
  const flow = readField(curvePointSchema.shape.flow, curve[0]?.flow);
  const head = readField(curvePointSchema.shape.head, curve[0]?.head);
  if (!shutoff.ok || !flow.ok || !head.ok || flow.value === 0 || shutoff.value > head.value) return [];
  const detail = `${shutoff.written} without flow, and then ${flow.written} at ${head.written}`;
  return [problem('curve-not-falling', [...path, 'shutoffHead'], { facts: { detail } })];
}

/** A power form goes through three points, of which the first, or the stated shut-off head, has no flow. */
function checkForm(pump: DraftPump, path: readonly string[]): readonly Problem[] {
  if (pump.curveForm !== 'power') return [];
  const curve = pump.curve ?? [];
  const first = readField(curvePointSchema.shape.flow, curve[0]?.flow);
  const startsAtRest = !first.ok || first.value === 0;
  const leads = !startsAtRest && 'shutoffHead' in pump;
  if (curve.length + (leads ? 1 : 0) === 3 && (startsAtRest || leads)) return [];
  return [problem('curve-not-of-three', [...path, 'curveForm'], { facts: { count: curve.length } })];
}

function checkHose(draft: Draft, { family }: Context, side: 'intake' | 'outlet'): readonly Problem[] {
  const hose = draft.filter?.hoses?.[side];
  if (hose === undefined || family === undefined || family.hoses[side]) return [];
  const facts = { what: `an ${side} hose`, family: family.name };
  return [problem('not-in-family', ['filter', 'hoses', side], { facts })];
}
