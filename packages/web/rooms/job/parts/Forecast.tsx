import { lazy, Suspense } from 'react';
import { useSearchParams } from 'wouter';
import { Drawn } from '../../../drawing/Drawn.tsx';
import { ProblemList } from '../../../findings/ProblemList.tsx';
import { StateChoice } from '../../../findings/StateChoice.tsx';
import { Tabled } from '../../../findings/Tabled.tsx';
import { askedOf } from '../../../forecast/asked.ts';
import type { ForecastShown } from '../../../forecast/forecastShown.ts';
import { HowAsked } from '../../../forecast/HowAsked.tsx';
import { useForecast } from '../../../forecast/useForecast.ts';
import type { JobAtWork } from '../jobAtWork.ts';
import { lookedState, stateInWords, statesOf } from '../lookedState.ts';

const ForecastPlots = lazy(() => import('../../../forecast/ForecastPlots.tsx'));

function Told({ shown }: { readonly shown: ForecastShown }) {
  const { sentences, tables, drawing, drawingSays, days } = shown;
  const last = days.day.length - 1;
  return (
    <>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {days.beds.length === 0 || (days.flowM3PerS[0] ?? 0) <= 0 ? null : (
        <>
          <section aria-label="Dated drawings" className="dirt">
            <figure className="section">
              <Drawn svg={drawing} />
            </figure>
            <p>{drawingSays}</p>
          </section>
          <Suspense fallback={null}>
            <ForecastPlots shown={shown} />
          </Suspense>
          <h3>Patterns of cleaning, this one first</h3>
          <Tabled table={tables.patterns} caption={`What each comes to over ${last} days`} />
          <p className="soft">{tables.patternsKey}</p>
          <h3>By day</h3>
          <Tabled table={tables.byDay} caption="The filter on some of the days" />
          <p className="soft">{tables.byDayKey}</p>
          <Tabled table={tables.beds} caption={`Beds on day ${last}, in water order`} />
        </>
      )}
    </>
  );
}

/** How flow and dirt go over the coming days, and what cleaning makes of it. */
export function Forecast({ work }: { readonly work: JobAtWork }) {
  const { state, system, readable, figures } = work;
  const [search] = useSearchParams();
  const looked = lookedState(readable, search.get('state'));
  const asked = { ...askedOf(search), state: looked, system };
  const { figures: shown, problems, isBehind } = useForecast(readable, asked);
  const ofPattern = problems.find(({ path }) => path === 'clean');
  return (
    <div className="part">
      <h2>Forecast, {stateInWords(looked)}</h2>
      {figures.problems.length === 0 ? null : (
        <ProblemList number={state.number} document={state.document} problems={figures.problems} />
      )}
      <StateChoice number={state.number} part="forecast" states={statesOf(readable)} looked={looked} />
      <HowAsked problem={ofPattern?.says} />
      <p role="status" className="soft noprint">
        {shown === undefined
          ? 'The days are being computed.'
          : isBehind
            ? 'Something was changed: the days are being computed anew.'
            : ''}
      </p>
      {shown === undefined ? null : <Told shown={shown} />}
    </div>
  );
}
