import { writtenPath } from '@fettle/job/fieldPath.ts';
import { printer } from '@fettle/workflows/printing.ts';
import { assumedText } from '@fettle/workflows/report/assumed.ts';
import * as z from 'zod';
import { useSystem } from '../app/preferences.ts';
import { type FieldProps, useForm } from './JobForm.tsx';
import { LineField } from './LineField.tsx';
import { factsAt, labelAt } from './labels.ts';
import { schemaOf } from './places.ts';
import { problemInWords } from './problemInWords.ts';
import { QuantityField } from './QuantityField.tsx';
import { ChoiceField, DayField, NumberField, TextField, YesNoField } from './simpleFields.tsx';

/** What the engine took where the document says nothing. */
function useAssumed(path: string): string | undefined {
  const { givens } = useForm();
  const system = useSystem();
  const given = givens.find((each) => each.path === path && each.assumedBecause !== undefined);
  if (given === undefined) return undefined;
  return `Assumed ${assumedText(given, printer(system))}`;
}

/** Where words stand beside another way of writing them, such as yes and no, the words are offered. */
const choiceOf = (schema: z.core.$ZodType | undefined): z.core.$ZodType | undefined =>
  schema instanceof z.ZodUnion
    ? (schema.options.find((option: z.core.$ZodType) => option instanceof z.ZodEnum) ?? schema)
    : schema;

/** A field of the form's document, of the kind that its schema asks for. */
export function Field({ path, label, how, of }: FieldProps) {
  const form = useForm();
  const schema = choiceOf(schemaOf(form, path));
  const written = writtenPath(path);
  const assumed = useAssumed(written);
  if (schema === undefined) return null;
  const facts = factsAt(form, path);
  const name = label ?? labelAt(form, path);
  const wrong = form.problems.find((problem) => problem.path === written);
  const says = wrong && problemInWords(wrong, name);
  const shared = {
    path,
    name,
    ...(how === undefined ? {} : { how }),
    ...(of === undefined ? {} : { of }),
    ...(says === undefined ? {} : { problem: says }),
    ...(assumed === undefined ? {} : { assumed }),
    ...(facts?.example === undefined ? {} : { example: facts.example }),
  };
  if (facts?.quantity !== undefined) return <QuantityField {...shared} schema={schema} />;
  if (schema instanceof z.ZodEnum)
    return <ChoiceField {...shared} choices={schema.options.map((option) => String(option))} />;
  if (schema instanceof z.ZodBoolean) return <YesNoField {...shared} />;
  if (schema instanceof z.ZodISODate) return <DayField {...shared} />;
  if (schema instanceof z.ZodNumber) return <NumberField {...shared} />;
  if (schema instanceof z.ZodString)
    return (schema.maxLength ?? 0) > 500 ? <TextField {...shared} /> : <LineField {...shared} />;
  return null;
}
