import { familyById } from '@fettle/engine/families/families.ts';
import type { Layout } from '@fettle/engine/families/layout.ts';
import type { Figure, Source } from '@fettle/engine/model/figure.ts';
import type { Form, Medium, Stage } from '@fettle/engine/model/medium.ts';
import type { Bed, Measurements, Packing } from '@fettle/engine/model/model.ts';
import type { Flows } from '../shares.ts';

/** Invented filters, media and flows on which the drawings are tested. */

const source: Source = { kind: 'memory', text: 'invented for a test' };

function figure(value: number): Figure {
  return { value, source };
}

function resistanceOf(form: Form, sizeM: number): Medium['resistance'] {
  if (form === 'foam') return { law: 'foam', cellM: figure(sizeM), voidage: figure(0.97) };
  if (form === 'fibre') return { law: 'fibre', fibreM: figure(sizeM), solidFraction: figure(0.02) };
  return { law: 'grains', sizeM: figure(sizeM), voidage: figure(0.42) };
}

function medium(named: { id: string; name: string; stage: Stage; form: Form; sizeM: number }): Medium {
  return {
    id: named.id,
    name: named.name,
    stage: named.stage,
    form: named.form,
    resistance: resistanceOf(named.form, named.sizeM),
    areaPerM: figure(400),
    bulkDensityKgPerM3: figure(400),
    depositFactor: figure(10),
    care: 'rinse',
    bacteriaKept: figure(0.7),
    pricePerM3: figure(10000),
    cautions: [],
  };
}

const shelf: readonly Medium[] = [
  medium({ id: 'coarse-foam', name: 'coarse foam', stage: 'mechanical', form: 'foam', sizeM: 0.003 }),
  medium({ id: 'fine-foam', name: 'fine foam', stage: 'mechanical', form: 'foam', sizeM: 0.0009 }),
  medium({ id: 'floss', name: 'polyester floss', stage: 'mechanical', form: 'fibre', sizeM: 0.00003 }),
  medium({ id: 'rings', name: 'sintered rings', stage: 'biological', form: 'rings', sizeM: 0.014 }),
  medium({ id: 'gravel', name: 'quartz gravel', stage: 'biological', form: 'grains', sizeM: 0.004 }),
  medium({ id: 'carrier', name: 'plastic carrier', stage: 'biological', form: 'plastic', sizeM: 0.011 }),
  medium({ id: 'carbon', name: 'granular carbon', stage: 'chemical', form: 'grains', sizeM: 0.002 }),
  medium({
    id: 'long',
    name: 'hand-cut open-cell foam <left over> from the workshop & washed twice, "grey"',
    stage: 'mechanical',
    form: 'foam',
    sizeM: 0.0018,
  }),
];

export const media: Readonly<Record<string, Medium>> = Object.fromEntries(shelf.map((one) => [one.id, one]));

/** Layout of a family that is known to exist. */
export function layoutOf(family: string, measurements: Measurements): Layout {
  const found = familyById(family);
  if (!found) throw new RangeError(`no family ${family}`);
  return found.layOut(measurements);
}

/** Beds by medium and depth in millimetres, numbered within the chamber. */
export function bedsOf(
  chamber: string,
  held: readonly (readonly [medium: string, depthMm: number])[],
): readonly Bed[] {
  return held.map(([id, depthMm], index) => ({
    id: `${chamber}-${index + 1}`,
    medium: id,
    depthM: depthMm / 1000,
  }));
}

/** A packing by medium and depth in millimetres. */
export function packed(chambers: Readonly<Record<string, readonly (readonly [string, number])[]>>): Packing {
  return Object.fromEntries(
    Object.entries(chambers).map(([chamber, held]) => [chamber, bedsOf(chamber, held)]),
  );
}

export interface DrawingCase {
  readonly layout: Layout;
  readonly packing: Packing;
  readonly flows?: Flows;
}
