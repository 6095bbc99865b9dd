import { mostCaption } from '@fettle/store/contract/attachments.ts';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useId, useState } from 'react';
import {
  captionPhotograph,
  type Photograph,
  pictureAddress,
  takeOffPhotograph,
  thumbnailAddress,
} from '../client/photographs.ts';
import { useTyped } from '../forms/useTyped.ts';

interface CardProps {
  readonly photograph: Photograph;
  /** How people tell it from the others: `photograph 2`. */
  readonly called: string;
}

const dayInWords = (at: string): string =>
  new Date(at).toLocaleDateString(undefined, { dateStyle: 'medium' });

function useChange<Told>(job: number, change: (told: Told) => Promise<void>) {
  const queries = useQueryClient();
  return useMutation({
    mutationFn: change,
    onSuccess: () => queries.invalidateQueries({ queryKey: ['photographs', job] }),
  });
}

function Caption({ photograph, called }: CardProps) {
  const id = useId();
  const saving = useChange(photograph.job, (caption: string) => captionPhotograph(photograph, caption));
  const { typed, type, commitNow } = useTyped(photograph.caption, (caption) => saving.mutate(caption.trim()));
  return (
    <div className="field">
      <label htmlFor={id}>
        What it shows<span className="unseen">: {called}</span>
      </label>
      <input
        id={id}
        value={typed}
        maxLength={mostCaption}
        aria-describedby={`${id}-says`}
        onChange={(event) => type(event.target.value)}
        onBlur={commitNow}
      />
      <p id={`${id}-says`} role="status" className={saving.isError ? 'fault' : 'soft'}>
        {saving.isError ? `Not saved: ${saving.error.message}` : saving.isPending ? 'Saving…' : ''}
      </p>
    </div>
  );
}

function TakeOff({ photograph, called }: CardProps) {
  const [isAsked, ask] = useState(false);
  const taking = useChange(photograph.job, () => takeOffPhotograph(photograph));
  if (!isAsked)
    return (
      <button type="button" className="quiet" onClick={() => ask(true)}>
        Take off<span className="unseen">: {called}</span>
      </button>
    );
  return (
    <>
      <button type="button" disabled={taking.isPending} onClick={() => taking.mutate(undefined)}>
        Take {called} off for good
      </button>
      {/* The hand that asked stays where it is. */}
      {/* biome-ignore lint/a11y/noAutofocus: the button that was pressed is gone */}
      <button type="button" className="quiet" autoFocus onClick={() => ask(false)}>
        Keep it
      </button>
      {taking.isError ? (
        <span className="fault" role="alert">
          It is still there: {taking.error.message}
        </span>
      ) : null}
    </>
  );
}

/** One photograph with what it shows. */
export function PhotographCard({ photograph, called }: CardProps) {
  const { caption, name, takenAt, addedAt, widthPx, heightPx } = photograph;
  return (
    <li className="photograph">
      <figure>
        <a href={pictureAddress(photograph)}>
          <img
            src={thumbnailAddress(photograph)}
            alt={`${called}: ${caption === '' ? name : caption}`}
            width={widthPx}
            height={heightPx}
            loading="lazy"
          />
        </a>
        <figcaption className="soft">
          {takenAt === undefined ? 'added' : 'taken'} {dayInWords(takenAt ?? addedAt)}
        </figcaption>
      </figure>
      <Caption photograph={photograph} called={called} />
      <p className="buttons noprint">
        <TakeOff photograph={photograph} called={called} />
      </p>
    </li>
  );
}
