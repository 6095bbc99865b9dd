import { media as catalogue } from '@fettle/engine/catalogue/media.ts';
import type { Doubt, Figure } from '@fettle/engine/model/figure.ts';
import type { Medium, Resistance } from '@fettle/engine/model/medium.ts';
import type { Draft } from './draft.ts';
import type { FieldPath } from './fieldPath.ts';
import { adviceOn } from './names.ts';
import { type Problem, problem } from './problems.ts';
import { readField } from './schema/fields.ts';
import { shown } from './schema/issues.ts';
import { ownMediumSchema } from './schema/media.ts';

type OwnMedium = NonNullable<NonNullable<Draft['media']>[string]>;
type FigureField = 'cell' | 'fibre' | 'solid' | 'size' | 'voidage' | 'surface';

const lawFields: Readonly<Record<Resistance['law'], readonly FigureField[]>> = {
  foam: ['cell', 'voidage'],
  fibre: ['fibre', 'solid'],
  grains: ['size', 'voidage'],
  hollow: ['size', 'voidage', 'surface'],
};

/**
 * The catalogue's media together with the technician's own, and what is wrong with those.
 *
 * @param section field of the document under which they stand
 */
export function ownMedia(
  own: NonNullable<Draft['media']>,
  section = 'media',
): {
  readonly media: Readonly<Record<string, Medium>>;
  readonly problems: readonly Problem[];
} {
  const media: Record<string, Medium> = { ...catalogue };
  const problems: Problem[] = [];
  for (const [id, medium] of Object.entries(own).toSorted(([one], [other]) => (one < other ? -1 : 1))) {
    const path = [section, id];
    if (medium?.like === undefined) continue;
    if (Object.hasOwn(catalogue, id))
      problems.push(problem('listed-twice', path, { facts: { found: shown(id) } }));
    const like = Object.hasOwn(catalogue, medium.like) ? catalogue[medium.like] : undefined;
    if (like === undefined) {
      const { nearest, allowed } = adviceOn(medium.like, Object.keys(catalogue));
      const facts = { found: shown(medium.like), nearest };
      problems.push(problem('unknown-medium', [...path, 'like'], { facts, allowed }));
      continue;
    }
    problems.push(...misplacedFigures(medium, like, path));
    media[id] = mediumLike(id, medium, like);
  }
  return { media, problems };
}

function misplacedFigures(own: OwnMedium, like: Medium, path: FieldPath): readonly Problem[] {
  const known = lawFields[like.resistance.law];
  const all: readonly FigureField[] = ['cell', 'fibre', 'solid', 'size', 'voidage', 'surface'];
  return all
    .filter((field) => own[field] !== undefined && !known.includes(field))
    .map((field) =>
      problem('not-for-this-medium', [...path, field], {
        facts: { medium: `a medium like ${like.id}` },
        allowed: known.join(', '),
      }),
    );
}

function mediumLike(id: string, own: OwnMedium, like: Medium): Medium {
  const figure = (field: keyof typeof ownMediumSchema.shape, of: Figure) => overridden(field, own[field], of);
  // What it is to the hand goes with its form: a medium of another form is what that form usually is.
  const { madeAs, ...rest } = like;
  const sameForm = own.form === undefined || own.form === like.form;
  const life = own.life === undefined ? undefined : figure('life', like.lifeS ?? ownFigure);
  return {
    ...rest,
    ...(madeAs !== undefined && sameForm ? { madeAs } : {}),
    id,
    name: own.name ?? id,
    stage: own.stage ?? like.stage,
    form: own.form ?? like.form,
    resistance: resistanceLike(own, like.resistance),
    areaPerM: figure('area', like.areaPerM),
    bulkDensityKgPerM3: figure('density', like.bulkDensityKgPerM3),
    depositFactor: figure('depositFactor', like.depositFactor),
    care: own.care ?? like.care,
    bacteriaKept: figure('bacteriaKept', like.bacteriaKept),
    ...(life === undefined ? {} : { lifeS: life }),
    cautions: own.cautions?.filter((caution) => caution !== undefined) ?? like.cautions,
  };
}

function resistanceLike(own: OwnMedium, like: Resistance): Resistance {
  const figure = (field: FigureField, of: Figure) => overridden(field, own[field], of);
  switch (like.law) {
    case 'foam':
      return { ...like, cellM: figure('cell', like.cellM), voidage: figure('voidage', like.voidage) };
    case 'fibre':
      return {
        ...like,
        fibreM: figure('fibre', like.fibreM),
        solidFraction: figure('solid', like.solidFraction),
      };
    case 'grains':
      return { ...like, sizeM: figure('size', like.sizeM), voidage: figure('voidage', like.voidage) };
    case 'hollow':
      return {
        ...like,
        sizeM: figure('size', like.sizeM),
        voidage: figure('voidage', like.voidage),
        surfacePerM: figure('surface', like.surfacePerM),
      };
  }
}

const ownFigure: Figure = { value: 0, source: { kind: 'stated', text: 'stated in the job' } };

/** A stated figure without a doubt of its own keeps the doubt of the figure that it replaces, in proportion. */
function overridden(field: keyof typeof ownMediumSchema.shape, written: unknown, like: Figure): Figure {
  if (written === undefined) return like;
  const reading = readField(ownMediumSchema.shape[field], written);
  if (!reading.ok) return like;
  const doubt = reading.doubt ?? scaled(like, reading.value);
  return { ...ownFigure, value: reading.value, ...(doubt === undefined ? {} : { doubt }) };
}

function scaled({ value, doubt }: Figure, to: number): Doubt | undefined {
  if (doubt === undefined || doubt.kind === 'factor') return doubt;
  return value > 0 && to > 0 ? { kind: 'plus-minus', size: (doubt.size * to) / value } : undefined;
}
