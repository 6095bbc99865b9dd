import { Fields } from '../../../forms/Fields.tsx';

/** What came in, whose it is, and the tank that it must serve. */
export function TakeIn() {
  return (
    <div className="part">
      <h2>Take in</h2>
      <p className="caution">
        Unplug it before anything else, drip loops or not; let a heater cool under water before it comes out.
        Water and mains kill: what concerns wiring is for those licensed for it where you work.
      </p>
      <h3>The record</h3>
      <Fields path={['job']} only={['title', 'received', 'promised', 'stage', 'tags', 'notes']} />
      <h3>Owner</h3>
      <Fields path={['owner']} />
      <h3>Tank</h3>
      <Fields path={['tank']} />
    </div>
  );
}
