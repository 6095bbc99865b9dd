import type { Measurement } from '@fettle/engine/families/layout.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { inTradeWords } from '@fettle/engine/reckonings/seenWords.ts';
import { writtenPath } from '@fettle/job/fieldPath.ts';
import { measuredAs, measurementExample, measurementText } from '@fettle/job/measurementExample.ts';
import { quantity } from '@fettle/job/schema/fields.ts';
import { useMemo } from 'react';
import { useSystem } from '../app/preferences.ts';
import { useForm } from './JobForm.tsx';
import { problemInWords } from './problemInWords.ts';
import { QuantityField } from './QuantityField.tsx';
import { NumberField, YesNoField } from './simpleFields.tsx';

const schemaOf = (measurement: Measurement) => {
  const { kind, label, least, most } = measurement;
  if (kind === 'count' || kind === 'yes-no') return undefined;
  return quantity({
    dimension: measuredAs[kind],
    says: label,
    example: measurementExample(measurement),
    least: measurementText(measurement, least),
    most: measurementText(measurement, most),
  });
};

/** What is taken where a measurement is not given. */
const assumedText = ({ assumed, kind }: Measurement, system: System): string | undefined => {
  if (assumed === undefined) return undefined;
  const { value } = assumed;
  const because = inTradeWords(assumed.because);
  if (kind === 'yes-no') return `Assumed ${value === 1 ? 'yes' : 'no'}: ${because}`;
  const dimension = kind === 'count' ? 'count' : measuredAs[kind];
  return `Assumed ${printQuantity({ value, dimension, system })}: ${because}`;
};

/** A measurement of the filter, as its family asks for it. */
export function MeasurementField({ measurement }: { readonly measurement: Measurement }) {
  const { document, problems } = useForm();
  const system = useSystem();
  const { key, kind, label, how } = measurement;
  const path = ['filter', 'measurements', key];
  const schema = useMemo(() => schemaOf(measurement), [measurement]);
  const isGiven = Reflect.has(Object(Object(Object(document).filter).measurements), key);
  const name = label.charAt(0).toUpperCase() + label.slice(1);
  const wrong = problems.find((each) => each.path === writtenPath(path));
  const problem = wrong && problemInWords(wrong, name);
  const assumed = isGiven ? undefined : assumedText(measurement, system);
  const shared = {
    path,
    name,
    how,
    example: measurementExample(measurement, system),
    ...(problem === undefined ? {} : { problem }),
    ...(assumed === undefined ? {} : { assumed }),
  };
  if (schema !== undefined) return <QuantityField {...shared} schema={schema} />;
  return kind === 'yes-no' ? <YesNoField {...shared} /> : <NumberField {...shared} />;
}
