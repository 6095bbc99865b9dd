import type { Family } from '@fettle/engine/families/layout.ts';
import type { Filter } from '@fettle/engine/model/model.ts';
import type { Placing } from '@fettle/engine/model/placing.ts';
import { type Default, defaults } from '../defaults.ts';
import type { JobDocument } from '../schema/job.ts';
import { placingSchema } from '../schema/placing.ts';
import { readGiven, type Taker } from './givens.ts';

type DocumentPlacing = NonNullable<JobDocument['filter']['placing']>;

/**
 * How the filter stands about the tank; nothing where the document does not speak of it at all. What only an intake
 * hose asks for is not listed as assumed where the family has none.
 */
export function placingOf(
  placing: DocumentPlacing | undefined,
  { family, taker }: { readonly family: Family; readonly taker: Taker },
): Pick<Filter, 'placing'> {
  if (placing === undefined) return {};
  const place = (name: keyof DocumentPlacing, modelName: keyof Placing) => ({
    path: ['filter', 'placing', name],
    modelPath: `filter.placing.${modelName}`,
    unit: modelName === 'spareM3' ? 'm3' : 'm',
  });
  const take = (name: keyof DocumentPlacing, modelName: keyof Placing, otherwise: Default): number =>
    taker.take(
      { ...place(name, modelName), schema: placingSchema.shape[name], written: placing[name] },
      otherwise,
    );
  const ofIntake: typeof take = (name, modelName, otherwise) =>
    family.hoses.intake || placing[name] !== undefined ? take(name, modelName, otherwise) : otherwise.value;
  const stated = (name: keyof DocumentPlacing, modelName: keyof Placing): Partial<Placing> => {
    const given = readGiven(placingSchema.shape[name], placing[name]);
    return given === undefined ? {} : { [modelName]: taker.note(place(name, modelName), given) };
  };
  return {
    placing: {
      humpM: take('hump', 'humpM', defaults.hump),
      lidDepthM: ofIntake('lidDepth', 'lidDepthM', defaults.lidDepth),
      intakeDepthM: ofIntake('intakeDepth', 'intakeDepthM', defaults.intakeDepth),
      ...stated('intakeHole', 'intakeHoleM'),
      returnDepthM: take('returnDepth', 'returnDepthM', defaults.returnDepth),
      ...stated('returnHole', 'returnHoleM'),
      ...stated('surfaceRise', 'surfaceRiseM'),
      ...stated('spareVolume', 'spareM3'),
    },
  };
}
