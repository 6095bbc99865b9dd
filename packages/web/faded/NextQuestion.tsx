import type { RankedQuestion } from '@fettle/engine/elimination/questions.ts';
import type { Print } from '@fettle/workflows/printing.ts';
import { questionText } from '@fettle/workflows/report/faded.ts';
import type { MouseEvent } from 'react';
import { goToFirstOf } from '../forms/goToField.ts';
import { useForm } from '../forms/JobForm.tsx';
import { putting, valueAt } from '../forms/places.ts';

interface QuestionProps {
  readonly asked: RankedQuestion;
  readonly print: Print;
  /** How much of what is open its answer settles, printed. */
  readonly settles: string;
}

/** Takes the focus to a field beside the button, once it is there. */
const goTo = ({ currentTarget }: MouseEvent, path: string): void => {
  const form = currentTarget.closest('.faded');
  requestAnimationFrame(() => form !== null && goToFirstOf(form, [path]));
};

/** Buttons that take the answer: yes or no at once, or the field in which it is typed. */
function Answers({ asked: { question } }: Pick<QuestionProps, 'asked'>) {
  const { document, edit } = useForm();
  if (question.kind === 'look') {
    const { sign } = question;
    const answer = (seen: boolean) => () =>
      edit({
        says: `answer ${sign.replace('-', ' ')}: ${seen ? 'yes' : 'no'}`,
        recipe: putting(['faded', 'signs', sign], seen),
      });
    return (
      <>
        <button type="button" onClick={answer(true)}>
          Yes
        </button>
        <button type="button" onClick={answer(false)}>
          No
        </button>
      </>
    );
  }
  if (question.kind === 'shutoff')
    return (
      <button type="button" onClick={(event) => goTo(event, 'faded.shutoffNow')}>
        Type the height
      </button>
    );
  const { trial } = question;
  const done = valueAt(document, ['faded', 'done']);
  const place = Array.isArray(done) ? done.length : 0;
  const take = (event: MouseEvent) => {
    edit({
      says: `note what was done: ${trial.replaceAll('-', ' ')}`,
      recipe: putting(['faded', 'done', place], { did: trial, flow: '' }),
    });
    goTo(event, `faded.done[${place}].flow`);
  };
  return (
    <button type="button" onClick={take}>
      It is done: type the flow
    </button>
  );
}

/** One question that would tell the causes apart, with what its answer is worth and how long it takes. */
export function NextQuestion({ asked, print, settles }: QuestionProps) {
  return (
    <li>
      {questionText(asked, print)}{' '}
      <span className="soft">
        It settles {settles} of what is open, in about {asked.minutes} min.
      </span>
      <span className="buttons noprint">
        <Answers asked={asked} />
      </span>
    </li>
  );
}
