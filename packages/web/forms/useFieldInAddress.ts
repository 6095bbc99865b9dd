import type { Problem } from '@fettle/job/problems.ts';
import { useEffect, useRef } from 'react';
import { placeOf, valueAt } from './places.ts';
import { writtenText } from './understood.ts';

/** The field that the address names behind its `#`; empty where it names none. */
const fieldInAddress = (): string => {
  try {
    return decodeURIComponent(window.location.hash.slice(1));
  } catch {
    return '';
  }
};

type Input = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

const saysOf = (input: Input): readonly string[] =>
  (input.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? '');

/** The input that shows a problem: the one that says it, else one that is marked wrong and holds what is wrong. */
const inputOf = (problem: Problem, held: string): Input | undefined => {
  const wrong = [...document.querySelectorAll<Input>('[aria-invalid="true"]')];
  return (
    wrong.find((input) => saysOf(input).includes(problem.says)) ?? wrong.find((input) => input.value === held)
  );
};

/** Takes the focus, once, to the field that the address names, as soon as its form shows what is wrong with it. */
export function useFieldInAddress(problems: readonly Problem[], worked: unknown, part: string): void {
  const went = useRef('');
  useEffect(() => {
    const path = fieldInAddress();
    const address = `${part} ${path}`;
    if (path === '') went.current = '';
    if (path === '' || went.current === address) return;
    const problem = problems.find((each) => each.path === path);
    if (problem === undefined) return;
    const input = inputOf(problem, writtenText(valueAt(worked, placeOf(path))));
    if (input === undefined) return;
    went.current = address;
    input.focus();
  }, [problems, worked, part]);
}
