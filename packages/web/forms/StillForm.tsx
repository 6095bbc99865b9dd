import { type ReactNode, useRef } from 'react';
import { JobForm, useForm } from './JobForm.tsx';

/** Fields that stand still while a hand moves something else, and then show what has come of it. */
export function StillForm({
  isStill,
  children,
}: {
  readonly isStill: boolean;
  readonly children: ReactNode;
}) {
  const form = useForm();
  const last = useRef(form);
  if (!isStill) last.current = form;
  return <JobForm value={last.current}>{children}</JobForm>;
}
