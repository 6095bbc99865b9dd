import type { BedPlace, SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import { useId } from 'react';
import { useSystem } from '../app/preferences.ts';
import { useTyped } from '../forms/useTyped.ts';
import type { Repacking } from './useRepacking.ts';

interface BedProps {
  readonly bed: BedPlace;
  readonly places: SectionPlaces;
  readonly repacking: Repacking;
}

/** A depth in whole millimetres, or in hundredths of an inch. */
const depthText = (depthM: number, system: System): string =>
  system === 'us' ? `${Number((depthM / 0.0254).toFixed(2))} in` : `${Math.round(depthM * 1000)} mm`;

/** The depth of a bed, typed in any unit of length; more than there is room for becomes what there is. */
function Depth({ bed, repacking }: Pick<BedProps, 'bed' | 'repacking'>) {
  const id = useId();
  const commit = (typed: string): void => {
    const reading = readQuantity(typed, 'length', { above: 0, most: 2, usualUnit: 'mm' });
    if (reading.ok) repacking.setDepth(bed, reading.value);
  };
  const { typed, type, commitNow } = useTyped(depthText(bed.depthM, useSystem()), commit);
  const reading = readQuantity(typed, 'length', { above: 0, most: 2, usualUnit: 'mm' });
  return (
    <>
      <label htmlFor={id} className="hidden">
        Depth of {bed.tag}
      </label>
      <input
        id={id}
        className="depth"
        value={typed}
        aria-invalid={!reading.ok}
        aria-describedby={reading.ok ? undefined : `${id}-problem`}
        onChange={(event) => type(event.target.value)}
        onBlur={commitNow}
      />
      {reading.ok ? null : (
        <p id={`${id}-problem`} className="fault" role="status">
          {reading.says}
        </p>
      )}
    </>
  );
}

function Moves({ bed, places, repacking }: BedProps) {
  const to = (chamber: string): void => {
    if (chamber !== '') repacking.move(bed, { chamber, place: 0 });
  };
  return (
    <span className="moves noprint">
      <button type="button" aria-label={`Move ${bed.tag} up`} onClick={() => repacking.step(bed, -1)}>
        ↑
      </button>
      <button type="button" aria-label={`Move ${bed.tag} down`} onClick={() => repacking.step(bed, 1)}>
        ↓
      </button>
      <select
        aria-label={`Move ${bed.tag} to a chamber`}
        value=""
        onChange={({ target }) => to(target.value)}
      >
        <option value="">to…</option>
        {places.chambers
          .filter(({ chamber }) => chamber.id !== bed.chamber.id)
          .map(({ chamber }) => (
            <option key={chamber.id} value={chamber.id}>
              {chamber.label}
              {repacking.isOdd(bed.medium, chamber) ? ' (made for other media)' : ''}
            </option>
          ))}
      </select>
      <button type="button" aria-label={`Split ${bed.tag}`} onClick={() => repacking.split(bed)}>
        Split
      </button>
      <button type="button" aria-label={`Take ${bed.tag} out`} onClick={() => repacking.remove(bed)}>
        Out
      </button>
    </span>
  );
}

/** The beds chamber by chamber, as a hand meets them: all that can be done on the drawing can be done here. */
export function BedList({ places, repacking }: Omit<BedProps, 'bed'>) {
  return (
    <section aria-labelledby="bed-list" className="bedlist">
      <h3 id="bed-list">Beds, from the top down or from the pump’s side</h3>
      {places.chambers.map(({ chamber }) => {
        const beds = places.beds
          .filter((bed) => bed.chamber.id === chamber.id)
          .toSorted((one, other) => one.place - other.place);
        const { hand } = repacking;
        return (
          <fieldset key={chamber.id}>
            <legend>{chamber.label}</legend>
            {beds.length === 0 ? <p className="soft">empty</p> : null}
            <ol>
              {beds.map((bed) => (
                <li key={bed.place}>
                  <span className="tag">{bed.tag}</span> {bed.name}
                  <Depth bed={bed} repacking={repacking} />
                  <Moves bed={bed} places={places} repacking={repacking} />
                </li>
              ))}
            </ol>
            {hand === undefined ? null : (
              <button type="button" onClick={() => repacking.put(hand, { chamber: chamber.id, place: 0 })}>
                Put what is in hand here
                {repacking.isOdd(hand, chamber) ? ' (made for other media)' : ''}
              </button>
            )}
          </fieldset>
        );
      })}
    </section>
  );
}
