import { useEffect, useState } from 'react';
import type { OutgoingPicture } from './outgoing.ts';
import type { Sending } from './useOutgoing.ts';

/** The picture itself, out of the page's own memory. */
function Preview({ picture }: { readonly picture: Blob }) {
  const [address, setAddress] = useState<string>();
  const [canBeShown, setCanBeShown] = useState(true);
  useEffect(() => {
    const made = URL.createObjectURL(picture);
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [picture]);
  if (address === undefined || !canBeShown) return null;
  // Not every picture that a phone takes can be shown by its browser.
  return <img src={address} alt="" width="96" height="96" onError={() => setCanBeShown(false)} />;
}

const wayWords = ({ way }: OutgoingPicture): string => {
  if (way.is === 'waiting') return 'waits for its turn';
  if (way.is === 'sending') return 'is being sent…';
  if (way.is === 'there') return 'is among the photographs already: it was not added a second time';
  return `was not sent: ${way.says}`;
};

/** Pictures on their way into the records; one that failed is kept and can be tried again. */
export function OutgoingList({ sending }: { readonly sending: Sending }) {
  const { pictures, again, drop } = sending;
  return (
    <ul className="outgoing" aria-label="On their way" aria-live="polite">
      {pictures.map((picture) => (
        <li key={picture.id} className={picture.way.is}>
          <Preview picture={picture.picture} />
          <p className={picture.way.is === 'failed' ? 'fault' : ''}>
            <strong>{picture.name}</strong> {wayWords(picture)}
          </p>
          {picture.way.is === 'there' ? (
            <p className="buttons">
              <button type="button" className="quiet" onClick={() => drop(picture.id)}>
                Good<span className="unseen">: {picture.name}</span>
              </button>
            </p>
          ) : null}
          {picture.way.is === 'failed' ? (
            <p className="buttons">
              <button type="button" onClick={() => again(picture.id)}>
                Try again<span className="unseen">: {picture.name}</span>
              </button>
              <button type="button" className="quiet" onClick={() => drop(picture.id)}>
                Give it up<span className="unseen">: {picture.name}</span>
              </button>
            </p>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
