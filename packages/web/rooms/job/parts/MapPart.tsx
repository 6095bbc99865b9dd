import { familyById } from '@fettle/engine/families/families.ts';
import { Field } from '../../../forms/Field.tsx';
import { Fields } from '../../../forms/Fields.tsx';
import { valueAt } from '../../../forms/places.ts';
import type { JobAtWork } from '../jobAtWork.ts';
import { Section } from '../Section.tsx';

/** The filter itself: family, measurements, pump and hoses, beside the drawing that follows from them. */
export function MapPart({ work }: { readonly work: JobAtWork }) {
  const family = familyById(String(valueAt(work.state.document, ['filter', 'family'])));
  return (
    <div className="part beside">
      <Section work={work} />
      <div>
        <h2>Map</h2>
        <Fields path={['filter']} only={['name', 'family']} />
        <p className="soft">{family?.says}</p>
        <h3>Measurements</h3>
        <div className="fields">
          {family?.measurements.map(({ key, label, how }) => (
            <Field key={key} path={['filter', 'measurements', key]} label={label} how={how} />
          ))}
        </div>
        <h3>Pump</h3>
        <Fields path={['filter', 'pump']} />
        <h3>Hoses</h3>
        <Fields path={['filter', 'hoses']} />
      </div>
    </div>
  );
}
