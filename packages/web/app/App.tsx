import { lazy, Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { Bench } from '../rooms/bench/Bench.tsx';
import { Frame } from './Frame.tsx';
import { Missing } from './Missing.tsx';

// The engine and its forms come when a job is opened: the bench stands before that.
const JobRoom = lazy(() => import('../rooms/job/JobRoom.tsx'));
const TakeIn = lazy(() => import('../rooms/takein/TakeInRoom.tsx'));
const Shelf = lazy(() => import('../rooms/shelf/Shelf.tsx'));
const Reckoner = lazy(() => import('../rooms/reckoner/Reckoner.tsx'));
const Settings = lazy(() => import('../rooms/settings/Settings.tsx'));

const wholeNumber = /^[1-9]\d{0,8}$/;

/** The workbench: which room is shown at which address. */
export function App() {
  return (
    <Frame>
      <Suspense fallback={<p className="wait">One moment…</p>}>
        <Switch>
          <Route path="/">
            <Bench />
          </Route>
          <Route path="/jobs/:number/:part?">
            {({ number, part }) =>
              wholeNumber.test(number) ? (
                <JobRoom key={number} number={Number(number)} part={part ?? 'findings'} />
              ) : (
                <Missing />
              )
            }
          </Route>
          <Route path="/take-in">
            <TakeIn />
          </Route>
          <Route path="/shelf">
            <Shelf />
          </Route>
          <Route path="/reckoner/:id?">{({ id }) => <Reckoner id={id} />}</Route>
          <Route path="/settings">
            <Settings />
          </Route>
          <Route>
            <Missing />
          </Route>
        </Switch>
      </Suspense>
    </Frame>
  );
}
