import type { Doubt } from '../model/figure.ts';
import type { Dimension } from './dimensions.ts';
import { dimensions, nounOf } from './dimensions.ts';
import type { QuantityProblem } from './problem.ts';
import { quantityProblem, quoted } from './problem.ts';
import type { Quantity } from './readQuantity.ts';
import { readQuantity } from './readQuantity.ts';
import { nearestWord } from './spelling.ts';
import type { Unit } from './units.ts';
import { fromSi, knownSpellings, plainNumber, readUnit, unitFits } from './units.ts';

/** A quantity in the unit asked for. The doubt is in that unit too. */
export interface Converted {
  readonly ok: true;
  readonly value: number;
  readonly unit: string;
  readonly doubt?: Doubt;
}

function targetUnit(text: string): { readonly ok: true; readonly unit: Unit } | QuantityProblem {
  if (text.length > 200) return quantityProblem('too-long', 'The unit is too long', 'up to 200 characters');
  const reading = text.trim() === '' ? ({ ok: true, unit: plainNumber } as const) : readUnit(text);
  if (reading.ok) return reading;
  if (reading.why === 'ambiguous') {
    const choices = reading.alternatives.join(' or ');
    return quantityProblem('ambiguous-unit', `${quoted(text)} may mean more than one unit`, choices);
  }
  const near = nearestWord(text, knownSpellings);
  const perhaps = near === undefined ? '' : `, perhaps ${near}`;
  return quantityProblem(
    'unknown-unit',
    `${quoted(text)} is not a unit that we know${perhaps}`,
    'L/h, mm, °C…',
  );
}

function inUnit(quantity: Quantity, unit: Unit, dimension: Dimension): Converted | QuantityProblem {
  if (quantity.currency !== unit.currency)
    return quantityProblem(
      'wrong-dimension',
      `${quoted(quantity.written)} is in another currency`,
      `${quantity.currency}, as no rates of exchange are known here`,
    );
  const { doubt, basis } = quantity;
  const named = unit.basis === undefined && basis !== undefined ? `${unit.spelled} ${basis}` : unit.spelled;
  const converted: Converted = { ok: true, value: fromSi(quantity.value, unit, dimension), unit: named };
  if (!doubt) return converted;
  const size = doubt.kind === 'factor' ? doubt.size : fromSi(doubt.size, unit, 'count');
  return { ...converted, doubt: { kind: doubt.kind, size } };
}

/**
 * Converts a written quantity: `612 L/h` to `US gal/h`, `77 °F` to `°C`, `2 mg/L NH4` to `mg/L N`.
 *
 * @param request.text the quantity as `readQuantity` takes it
 * @param request.to the unit wanted
 * @param request.difference true where temperatures are a difference of two
 * @returns the number in that unit, unrounded, or one coded problem
 */
export function convertQuantity(request: {
  readonly text: string;
  readonly to: string;
  readonly difference?: boolean;
}): Converted | QuantityProblem {
  const target = targetUnit(request.to);
  if (!target.ok) return target;
  const { unit } = target;
  const skipped: Dimension = request.difference ? 'temperature' : 'temperature-difference';
  const fitting = dimensions.filter((each) => each !== skipped && unitFits(unit, each));
  let first: QuantityProblem | undefined;
  for (const dimension of fitting) {
    const reading = readQuantity(
      request.text,
      dimension,
      unit.basis === undefined ? {} : { basis: unit.basis },
    );
    if (reading.ok) return inUnit(reading, unit, dimension);
    first ??= reading;
  }
  if (first) return first;
  const is = nounOf(unit.exponents) ?? 'no quantity of ours';
  return quantityProblem('wrong-dimension', `${quoted(unit.spelled)} is ${is}`, 'L/h, mm, °C…');
}
