import type { Given } from '@fettle/engine/model/model.ts';
import type { FieldPath } from '@fettle/job/fieldPath.ts';
import type { Problem } from '@fettle/job/problems.ts';
import { createContext, use } from 'react';
import type { Edit } from '../session/history.ts';
import type { PlacesOf } from './places.ts';

/** The document that the fields of a form belong to: a job, or one of the technician's books. */
export interface FormOfDocument extends PlacesOf {
  readonly problems: readonly Problem[];
  /** What was assumed where the document is silent, and why. */
  readonly givens: readonly Given[];
  readonly edit: (edit: Edit) => void;
}

const FormContext = createContext<FormOfDocument | undefined>(undefined);

/** Fields within it show and change this document. */
export const JobForm = FormContext.Provider;

/** The document that a field belongs to. */
export const useForm = (): FormOfDocument => {
  const form = use(FormContext);
  if (form === undefined) throw new Error('a field stands outside a form');
  return form;
};

/** A field as a form shows it: where it stands in the document, and what is said of it. */
export interface FieldProps {
  readonly path: FieldPath;
  /** Its name over it; else what the schema says. */
  readonly label?: string;
  /** How to find it out, one sentence. */
  readonly how?: string;
  /** Which of several alike it belongs to; not seen, but read out behind its name. */
  readonly of?: string;
}
