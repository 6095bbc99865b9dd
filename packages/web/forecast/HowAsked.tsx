import { useSearchParams } from 'wouter';
import { askedOf, offeredDays, offeredPatterns } from './asked.ts';

/** How far ahead is looked, and when what is cleaned: kept in the address, so that it can be sent to somebody. */
export function HowAsked({ problem }: { readonly problem: string | undefined }) {
  const [search, setSearch] = useSearchParams();
  const { days, clean } = askedOf(search);
  const put = (name: string, value: string): void =>
    setSearch(
      (before) => {
        before.set(name, value);
        return before;
      },
      { replace: true },
    );
  const isOffered = offeredPatterns.some(([pattern]) => pattern === clean);
  return (
    <div className="fields roomy noprint">
      <div className="field">
        <label htmlFor="forecast-days">How far ahead</label>
        <select id="forecast-days" value={days} onChange={({ target }) => put('days', target.value)}>
          {offeredDays.map((each) => (
            <option key={each} value={each}>
              {each} days
            </option>
          ))}
        </select>
      </div>
      <div className="field">
        <label htmlFor="forecast-clean">What is cleaned, and when</label>
        <select
          id="forecast-clean"
          value={isOffered ? clean : 'own'}
          onChange={({ target }) =>
            put('clean', target.value === 'own' ? 'mechanical/14, all/60' : target.value)
          }
        >
          {offeredPatterns.map(([pattern, says]) => (
            <option key={pattern} value={pattern}>
              {says}
            </option>
          ))}
          <option value="own">another pattern …</option>
        </select>
      </div>
      {isOffered ? null : (
        <div className="field">
          <label htmlFor="forecast-own">The pattern</label>
          <input
            id="forecast-own"
            value={clean}
            aria-invalid={problem !== undefined}
            aria-describedby="forecast-own-says"
            onChange={({ target }) => put('clean', target.value)}
          />
          <p id="forecast-own-says" className={problem === undefined ? 'soft' : 'fault'}>
            {problem ?? 'What, a stroke and every how many days: basket-1/14, mechanical/30, all/90.'}
          </p>
        </div>
      )}
    </div>
  );
}
