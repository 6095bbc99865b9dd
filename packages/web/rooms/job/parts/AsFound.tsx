import { Fields } from '../../../forms/Fields.tsx';

/** Bench tests. */
export function AsFound() {
  return (
    <div className="part">
      <h2>As found</h2>
      <Fields path={['tests']} />
    </div>
  );
}
