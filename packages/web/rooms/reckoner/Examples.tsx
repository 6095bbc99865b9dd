import type { Example, Reckoning } from '@fettle/engine/reckonings/reckoning.ts';
import { inTradeWords, seenWords } from '@fettle/engine/reckonings/seenWords.ts';
import { pairsOf, type Texts, textsOfExample } from './texts.ts';

/** By how much and why an example is allowed to differ by more than its last digit. */
const widerText = ({ wider }: Example): string =>
  wider === undefined ? '' : ` Allowed ± ${Number((100 * wider.share).toPrecision(3))} %: ${wider.because}`;

function OneExample({
  example,
  reckoning,
  fill,
}: {
  readonly example: Example;
  readonly reckoning: Reckoning;
  readonly fill: (texts: Texts) => void;
}) {
  const texts = textsOfExample(example);
  const labelOf = (key: string): string => reckoning.results[key]?.label ?? key;
  return (
    <li>
      <p>
        {pairsOf(texts)
          .map(({ key, text }) => `${reckoning.inputs[key]?.label ?? key} ${text}`)
          .join(', ')}
      </p>
      <p>
        gives{' '}
        <strong>
          {Object.entries(example.expected)
            .map(([key, printed]) => `${labelOf(key)} ${printed}`)
            .join(', ')}
        </strong>
      </p>
      <p className="soft">
        {inTradeWords(example.source)} ({seenWords[example.seen]}).{widerText(example)}
      </p>
      <button type="button" onClick={() => fill(texts)}>
        Fill this in
      </button>
    </li>
  );
}

/** Examples that are shown before more are asked for. */
const atFirst = 3;

/** Published examples, each to be filled in and held against what comes out. */
export function Examples({
  reckoning,
  fill,
}: {
  readonly reckoning: Reckoning;
  readonly fill: (texts: Texts) => void;
}) {
  const { examples } = reckoning;
  const [first, more] = [examples.slice(0, atFirst), examples.slice(atFirst)];
  const shown = (example: Example) => (
    <OneExample
      key={JSON.stringify([example.inputs, example.source])}
      example={example}
      reckoning={reckoning}
      fill={fill}
    />
  );
  return (
    <section aria-labelledby="examples">
      <h2 id="examples">Published examples</h2>
      <ol className="examples">{first.map(shown)}</ol>
      {more.length === 0 ? null : (
        <details>
          <summary>{more.length} more</summary>
          <ol className="examples" start={first.length + 1}>
            {more.map(shown)}
          </ol>
        </details>
      )}
    </section>
  );
}
