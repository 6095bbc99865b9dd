import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import { type Problem, problem } from '../problems.ts';
import { readField, type WrittenQuantity } from '../schema/fields.ts';
import { curvePointSchema, pumpSchema } from '../schema/filter.ts';
import { checkChamber } from './names.ts';

/** Pump, hoses and gaps against the family. */
export function checkFilter(draft: Draft, context: Context): readonly Problem[] {
  return [
    ...checkPump(draft),
    ...checkHose(draft, context, 'intake'),
    ...checkHose(draft, context, 'outlet'),
    ...Object.keys(draft.filter?.gaps ?? {}).flatMap((id) =>
      checkChamber(id, ['filter', 'gaps', id], context),
    ),
  ];
}

function checkPump(draft: Draft): readonly Problem[] {
  const pump = draft.filter?.pump;
  if (pump === undefined) return [];
  // A field that was refused still stands in the draft, empty: it is wrong, not missing.
  if (!('ratedFlow' in pump) && !('curve' in pump)) {
    const allowed = 'filter.pump.ratedFlow such as 900 L/h, or filter.pump.curve';
    return [problem('flow-missing', ['filter', 'pump', 'ratedFlow'], { facts: {}, allowed })];
  }
  return pump.curve === undefined
    ? []
    : [...checkCurve(pump.curve), ...checkShutoff(pump.curve, pump.shutoffHead)];
}

type Curve = NonNullable<NonNullable<NonNullable<Draft['filter']>['pump']>['curve']>;

function checkCurve(curve: Curve): readonly Problem[] {
  const path = ['filter', 'pump', 'curve'];
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
function checkShutoff(curve: Curve, written: WrittenQuantity | undefined): readonly Problem[] {
  const shutoff = readField(pumpSchema.shape.shutoffHead, written);
  const flow = readField(curvePointSchema.shape.flow, curve[0]?.flow);
  const head = readField(curvePointSchema.shape.head, curve[0]?.head);
  if (!shutoff.ok || !flow.ok || !head.ok || flow.value === 0 || shutoff.value > head.value) return [];
  const detail = `${shutoff.written} without flow, and then ${flow.written} at ${head.written}`;
  return [problem('curve-not-falling', ['filter', 'pump', 'shutoffHead'], { facts: { detail } })];
}

function checkHose(draft: Draft, { family }: Context, side: 'intake' | 'outlet'): readonly Problem[] {
  const hose = draft.filter?.hoses?.[side];
  if (hose === undefined || family === undefined || family.hoses[side]) return [];
  const facts = { what: `an ${side} hose`, family: family.name };
  return [problem('not-in-family', ['filter', 'hoses', side], { facts })];
}
