import { useState } from 'react';
import { Link } from 'wouter';
import { today } from '../../../app/today.ts';
import { Field } from '../../../forms/Field.tsx';
import { builtAsBefore } from '../builtEdits.ts';
import type { JobAtWork } from '../jobAtWork.ts';
import { LaterPacking } from './Repack.tsx';

/** Before anything was written down as built: what stands below instead, and the ways to write it down. */
function NotBuiltYet({ work, isPlanned }: { readonly work: JobAtWork; readonly isPlanned: boolean }) {
  const [isOther, setOther] = useState(false);
  const done = isPlanned ? 'Built as planned' : 'Left as found';
  return (
    <section className="caution notbuilt" aria-labelledby="not-built">
      <h2 id="not-built">{isPlanned ? 'This is the plan' : 'This is the filter as found'}</h2>
      <p>
        Nothing was written down as built yet. The drawing and the figures below are those{' '}
        {isPlanned ? 'of the plan' : 'of the filter as found: no re-pack is planned'}.
      </p>
      <p className="buttons">
        <button
          type="button"
          className="main"
          onClick={() => work.session.edit(builtAsBefore(done.toLowerCase(), today()))}
        >
          {done}
        </button>
        <button type="button" aria-expanded={isOther} onClick={() => setOther(!isOther)}>
          Built differently
        </button>
      </p>
      {isOther ? (
        <p role="status">
          Change the drawing or the list of beds below to what was built. The first change writes it down as
          left; the plan stays as it is.
        </p>
      ) : null}
    </section>
  );
}

/** The way to where the work is proven. */
function TestAsLeft({ number }: { readonly number: number }) {
  return (
    <p className="noprint">
      <Link href={`/jobs/${number}/as-found?state=as-left`}>Time the flow as left</Link>, by the same jug as
      before: it proves the work.
    </p>
  );
}

/** What was built in the end; until that is written down, what stands in its place, called by its name. */
export function AsLeft({ work }: { readonly work: JobAtWork }) {
  const { asLeft, planned } = work.readable;
  if (asLeft !== undefined)
    return (
      <>
        <div className="fields built">
          <Field
            path={['asLeft', 'day']}
            label="Built on"
            how="The day on which it was said to be built; put it right where it was another."
          />
        </div>
        <TestAsLeft number={work.state.number} />
        <LaterPacking work={work} field="asLeft" name="As left" />
      </>
    );
  const isPlanned = planned !== undefined;
  return (
    <>
      <NotBuiltYet work={work} isPlanned={isPlanned} />
      <LaterPacking work={work} field="asLeft" name={isPlanned ? 'Planned' : 'Not changed'} />
    </>
  );
}
