import { families, familyById } from '@fettle/engine/families/families.ts';
import type { Family } from '@fettle/engine/families/layout.ts';
import { memo, useDeferredValue } from 'react';
import { whyNoDrawing } from '../../../drawing/whyNoDrawing.ts';
import { Fields } from '../../../forms/Fields.tsx';
import { MeasurementField } from '../../../forms/MeasurementField.tsx';
import { valueAt } from '../../../forms/places.ts';
import { useFocusKept } from '../../../forms/useFocusKept.ts';
import { MendPacking } from '../../../mending/MendPacking.tsx';
import { problemsIn } from '../../../mending/readablePart.ts';
import { DimensionsOverlay } from '../../../repack/DimensionsOverlay.tsx';
import { PackingBench } from '../../../repack/PackingBench.tsx';
import type { JobAtWork } from '../jobAtWork.ts';
import { MayBeAltered } from '../MayBeAltered.tsx';

const familyOf = ({ state }: JobAtWork): Family | undefined =>
  familyById(String(valueAt(state.document, ['filter', 'family'])));

/** What the drawing follows from: family, measurements, pump and hoses. */
const MapFields = memo(({ family }: { readonly family: Family | undefined }) => {
  return (
    <>
      <h3>Filter</h3>
      <Fields path={['filter']} only={['name', 'family']} />
      <p className="soft">{family?.says}</p>
      <h3>Measurements</h3>
      <div className="fields">
        {family?.measurements.map((measurement) => (
          <MeasurementField key={measurement.key} measurement={measurement} />
        ))}
      </div>
      <h3>Pump</h3>
      <Fields path={['filter', 'pump']} />
      <h3>Hoses</h3>
      <Fields path={['filter', 'hoses']} />
      <h3>The maker’s words, and the price</h3>
      <Fields path={['filter']} only={['claims', 'price', 'life']} />
    </>
  );
});

const Alterations = memo(MayBeAltered);
const Dimensions = memo(DimensionsOverlay);

/** The filter as it was found: the drawing, what lies in it, and the measurements that it follows from. */
export function MapPart({ work }: { readonly work: JobAtWork }) {
  const { quick, isRead, problems } = work.figures;
  const fields = useFocusKept(quick !== undefined);
  const family = familyOf(work);
  // What may be altered, and the way to the dimensions, follow a hand when there is time for them.
  const late = useDeferredValue(quick);
  const toMend = (
    <MendPacking field="found" number={work.state.number} problems={problemsIn('packing', problems)} />
  );
  if (quick === undefined)
    return (
      <div className="part">
        <h2>Map</h2>
        <p className="wait">
          {family === undefined
            ? `The drawing comes when the kind of filter is chosen: ${families.map(({ name }) => name).join(', ')}.`
            : whyNoDrawing(work.figures, 'the measurements are')}
        </p>
        {toMend}
        <div ref={fields}>
          <MapFields family={family} />
          <MayBeAltered family={family} found={undefined} />
        </div>
      </div>
    );
  return (
    <PackingBench
      session={work.session}
      field="found"
      figures={{ ...quick, isRead }}
      before={toMend}
      over={
        late === undefined ? null : (
          <Dimensions drawing={late.drawing} dimensions={late.places.dimensions} family={family} />
        )
      }
    >
      <div ref={fields}>
        <MapFields family={family} />
        <Alterations family={family} found={late} />
      </div>
    </PackingBench>
  );
}
