import { type Stage, stages } from '@fettle/engine/model/medium.ts';
import { shelfBookSchema } from '@fettle/job/books/shelf.ts';
import { isFields } from '@fettle/job/schema/walk.ts';
import { useState } from 'react';
import { useSearchParams } from 'wouter';
import { BookRoom } from '../../books/BookRoom.tsx';
import { useForm } from '../../forms/JobForm.tsx';
import { AddOwnMedium } from './AddOwnMedium.tsx';
import { Hoses } from './Hoses.tsx';
import { MediaOnShelf, OtherMedia } from './MediaRows.tsx';
import { Parts } from './Parts.tsx';
import { entriesOf, shownMedia } from './shelfMedia.ts';

function StageFilter({
  stage,
  choose,
}: {
  stage: Stage | undefined;
  choose: (stage: Stage | undefined) => void;
}) {
  return (
    <fieldset className="stages">
      <legend>Media of which stage</legend>
      {[undefined, ...stages].map((each) => (
        <button
          key={each ?? 'all'}
          type="button"
          className="quiet"
          aria-pressed={stage === each}
          onClick={() => choose(each)}
        >
          {each ?? 'all'}
        </button>
      ))}
    </fieldset>
  );
}

const emptyText = (stage: Stage | undefined, isEmpty: boolean): string =>
  isEmpty
    ? 'Nothing is on the shelf yet. Put on it what you have, from the catalogue below or of your own: amounts and prices go into every new job, and plans can be held to what is in hand.'
    : `Nothing on the shelf is ${stage}.`;

/** The media of the stage that the address names. */
function useShownMedia() {
  const { document: book, problems } = useForm();
  const [asked, setAsked] = useSearchParams();
  const stage = stages.find((each) => each === asked.get('stage'));
  const shown = shownMedia(isFields(book) ? book : {}, { problems, stage });
  return { stage, setAsked, shown, isEmpty: entriesOf(book, 'media').length === 0 };
}

function Media() {
  const { stage, setAsked, shown, isEmpty } = useShownMedia();
  const { onShelf } = shown;
  return (
    <>
      <StageFilter
        stage={stage}
        choose={(next) => setAsked(next === undefined ? {} : { stage: next }, { replace: true })}
      />
      <section aria-labelledby="media">
        <h2 id="media" tabIndex={-1}>
          Media in hand
        </h2>
        {onShelf.length === 0 ? (
          <p className="soft">{emptyText(stage, isEmpty)}</p>
        ) : (
          <MediaOnShelf media={onShelf} />
        )}
      </section>
    </>
  );
}

/** What could be put on the shelf; open where nothing is on it yet. */
function Catalogue() {
  const { shown, isEmpty } = useShownMedia();
  const [open, setOpen] = useState(isEmpty);
  return (
    <section aria-labelledby="catalogue" className="catalogue">
      <details open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
        <summary id="catalogue">
          <h2>Not on the shelf: {shown.others.length} media</h2>
        </summary>
        <p className="soft">
          Media of the catalogue, without makers, and your own: each figure with its doubt (95 %) and where it
          comes from.
        </p>
        <OtherMedia media={shown.others} />
      </details>
    </section>
  );
}

/** What the technician has in hand and what it costs: media, hoses and parts. */
export default function Shelf() {
  return (
    <BookRoom name="shelf" title="Shelf" schema={shelfBookSchema}>
      <p>
        What you have in hand and what it cost you. It is saved as you type, and new jobs are filled from it.
        Amounts and prices take any usual unit.
      </p>
      <Media />
      <Catalogue />
      <section aria-labelledby="own">
        <h2 id="own">A medium of your own</h2>
        <AddOwnMedium />
      </section>
      <Hoses />
      <Parts />
    </BookRoom>
  );
}
