import type { Medium } from '@fettle/engine/model/medium.ts';
import { inTradeWords } from '@fettle/engine/reckonings/seenWords.ts';
import { useSystem } from '../../app/preferences.ts';
import { figureText, mediumFigures } from './mediumFigures.ts';

/** Every figure of a medium with its doubt and its source, and what to mind with it. */
export function FiguresOf({ medium }: { readonly medium: Medium }) {
  const system = useSystem();
  return (
    <>
      <dl className="ofmedium">
        {mediumFigures(medium).map((shown) => (
          <div key={shown.label}>
            <dt>{shown.label}</dt>
            <dd>
              <strong>{figureText(shown, system)}</strong>{' '}
              <span className="soft">{inTradeWords(shown.figure.source.text)}</span>
            </dd>
          </div>
        ))}
      </dl>
      {medium.cautions.length === 0 ? null : (
        <ul className="cautions">
          {medium.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      )}
    </>
  );
}
