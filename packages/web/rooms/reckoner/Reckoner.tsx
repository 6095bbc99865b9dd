import type { Reckoning } from '@fettle/engine/reckonings/reckoning.ts';
import { reckonings } from '@fettle/engine/reckonings/reckonings.ts';
import { useEffect } from 'react';
import { Link, useSearchParams } from 'wouter';
import { Missing } from '../../app/Missing.tsx';
import { ReckoningRoom } from './ReckoningRoom.tsx';
import { titleOf } from './titles.ts';

const all: readonly Reckoning[] = Object.values(reckonings);

/** Everything by which a reckoning may be looked for. */
const wordsOf = ({ name, says, inputs, results }: Reckoning): string =>
  [name, says, ...[...Object.values(inputs), ...Object.values(results)].map(({ label }) => label)]
    .join(' ')
    .toLowerCase();

const matches = (reckoning: Reckoning, words: string): boolean =>
  words
    .toLowerCase()
    .split(/\s+/)
    .every((word) => wordsOf(reckoning).includes(word));

function Card({ reckoning: { name, says, formula } }: { readonly reckoning: Reckoning }) {
  return (
    <li className="card">
      <Link href={`/reckoner/${name}`}>
        <strong>{titleOf(name)}</strong>
      </Link>
      <p>{says}</p>
      <p className="formula soft">{formula}</p>
    </li>
  );
}

function List() {
  const [asked, setAsked] = useSearchParams();
  const words = asked.get('words') ?? '';
  const found = all.filter((reckoning) => matches(reckoning, words));
  useEffect(() => {
    document.title = 'Reckoner · Fettle';
  }, []);
  return (
    <main>
      <h1>Reckoner</h1>
      <p>Single formulas, each with its source, its limits and published examples to hold it against.</p>
      <search className="find">
        <label htmlFor="words">Find a formula by what goes in or comes out</label>
        <input
          id="words"
          type="search"
          value={words}
          placeholder="such as ammonia, or head"
          onChange={({ target: { value } }) =>
            setAsked(value === '' ? {} : { words: value }, { replace: true })
          }
        />
      </search>
      <p className="soft" role="status">
        {found.length === 0
          ? 'No formula has these words: try fewer of them.'
          : `${found.length} of ${all.length} formulas`}
      </p>
      <ul className="cards formulas">
        {found.map((reckoning) => (
          <Card key={reckoning.name} reckoning={reckoning} />
        ))}
      </ul>
    </main>
  );
}

/** All reckonings, or the one that is named. */
export default function Reckoner({ id }: { readonly id: string | undefined }) {
  if (id === undefined) return <List />;
  const reckoning = Object.hasOwn(reckonings, id) ? reckonings[id] : undefined;
  return reckoning === undefined ? <Missing /> : <ReckoningRoom key={id} reckoning={reckoning} />;
}
