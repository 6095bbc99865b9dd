import type { Measurement } from '@fettle/engine/families/layout.ts';
import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { writtenPath } from '@fettle/job/fieldPath.ts';
import { quantity } from '@fettle/job/schema/fields.ts';
import { useMemo } from 'react';
import { useForm } from './JobForm.tsx';
import { problemInWords } from './problemInWords.ts';
import { QuantityField } from './QuantityField.tsx';
import { NumberField, YesNoField } from './simpleFields.tsx';

const written: Readonly<
  Record<'length' | 'area' | 'fraction', { dimension: Dimension; write: (si: number) => string }>
> = {
  length: { dimension: 'length', write: (si) => `${si * 1000} mm` },
  area: { dimension: 'area', write: (si) => `${si * 1e4} cm2` },
  fraction: { dimension: 'fraction', write: (si) => `${si * 100} %` },
};

/** A length that such a filter might have, as people write it. */
const exampleOf = ({ least, most, assumed }: Measurement, write: (si: number) => string): string =>
  write(Number((assumed?.value ?? Math.sqrt(Math.max(least, most / 1000) * most)).toPrecision(2)));

const schemaOf = (measurement: Measurement) => {
  const { kind, label, least, most } = measurement;
  if (kind === 'count' || kind === 'yes-no') return undefined;
  const { dimension, write } = written[kind];
  return quantity({
    dimension,
    says: label,
    example: exampleOf(measurement, write),
    least: write(least),
    most: write(most),
  });
};

/** What is taken where a measurement is not given. */
const assumedText = ({ assumed, kind }: Measurement): string | undefined => {
  if (assumed === undefined) return undefined;
  const { value, because } = assumed;
  if (kind === 'yes-no') return `Assumed ${value === 1 ? 'yes' : 'no'}: ${because}`;
  const dimension = kind === 'count' ? 'count' : written[kind].dimension;
  return `Assumed ${printQuantity({ value, dimension, system: 'metric' })}: ${because}`;
};

/** A measurement of the filter, as its family asks for it. */
export function MeasurementField({ measurement }: { readonly measurement: Measurement }) {
  const { document, problems } = useForm();
  const { key, kind, label, how } = measurement;
  const path = ['filter', 'measurements', key];
  const schema = useMemo(() => schemaOf(measurement), [measurement]);
  const isGiven = Reflect.has(Object(Object(Object(document).filter).measurements), key);
  const name = label.charAt(0).toUpperCase() + label.slice(1);
  const wrong = problems.find((each) => each.path === writtenPath(path));
  const problem = wrong && problemInWords(wrong, name);
  const assumed = isGiven ? undefined : assumedText(measurement);
  const shared = {
    path,
    name,
    how,
    ...(problem === undefined ? {} : { problem }),
    ...(assumed === undefined ? {} : { assumed }),
  };
  if (schema !== undefined) return <QuantityField {...shared} schema={schema} />;
  return kind === 'yes-no' ? <YesNoField {...shared} /> : <NumberField {...shared} />;
}
