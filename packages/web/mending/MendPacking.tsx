import { amountFields } from '@fettle/job/beds.ts';
import type { Context } from '@fettle/job/context.ts';
import { contextOf } from '@fettle/job/context.ts';
import { draftOf } from '@fettle/job/draft.ts';
import { readPath, writtenPath } from '@fettle/job/fieldPath.ts';
import type { Problem } from '@fettle/job/problems.ts';
import { isFields } from '@fettle/job/schema/walk.ts';
import { useMemo } from 'react';
import { inWords } from '../app/words.ts';
import { ProblemList } from '../findings/ProblemList.tsx';
import { Field } from '../forms/Field.tsx';
import { useForm } from '../forms/JobForm.tsx';
import { problemInWords } from '../forms/problemInWords.ts';
import { type PackingField, repacking, type WrittenBed, type WrittenPacking } from '../repack/bedEdits.ts';
import { packingIn } from '../repack/useRepacking.ts';
import { bedsOf, withBedIn, withoutBedAt } from './mendedPacking.ts';

/** Where the packing of each state stands in a job. */
const pathOf = (field: PackingField): readonly string[] =>
  field === 'found' ? ['packing'] : [field, 'packing'];

interface MendProps {
  readonly field: PackingField;
  /** Number of the job. */
  readonly number: number;
  readonly problems: readonly Problem[];
}

interface ChamberProps {
  readonly field: PackingField;
  readonly chamber: string;
  readonly problems: readonly Problem[];
  readonly context: Context;
}

const amountLabels = {
  depth: 'Depth',
  volume: 'Volume',
  mass: 'Mass',
  fill: 'Share of the chamber',
} as const;

/** What is wrong with a chamber, in words that say what can be done. */
const chamberWords = (problem: Problem, called: string, { layout }: Context): string =>
  problem.code === 'unknown-chamber' && layout !== undefined
    ? `By the map the filter has no ${called}, and something lies in it. Take it out, move it, or mend the map. Allowed: ${layout.chambers.map(({ label }) => label).join(', ')}.`
    : problemInWords(problem, called);

interface BedProps extends Pick<ChamberProps, 'field' | 'chamber' | 'context'> {
  readonly place: number;
  readonly bed: WrittenBed;
  /** What its chamber is called. */
  readonly called: string;
}

/** One bed with its amount, the way out and the way elsewhere. */
function WrongBed({ field, chamber, context, place, bed, called }: BedProps) {
  const { document, edit } = useForm();
  const packing = packingIn(document, field);
  const name = context.media[String(bed.medium)]?.name ?? String(bed.medium);
  const given = amountFields.filter((amount) => Object.hasOwn(bed, amount));
  const others = (context.layout?.chambers ?? []).filter(({ id }) => id !== chamber);
  const change = (next: WrittenPacking, says: string): void => edit(repacking(field, next, { says }));
  return (
    <li>
      <strong>{name}</strong>
      {(given.length === 0 ? (['depth'] as const) : given).map((amount) => (
        <Field
          key={amount}
          path={[...pathOf(field), chamber, place, amount]}
          label={amountLabels[amount]}
          of={`of ${name}`}
        />
      ))}
      <p className="buttons">
        <button
          type="button"
          onClick={() => change(withoutBedAt(packing, { chamber, place }), `take ${name} out of ${called}`)}
        >
          Take {name} out
        </button>
        {others.map(({ id, label }) => (
          <button
            key={id}
            type="button"
            className="quiet"
            onClick={() => change(withBedIn(packing, { chamber, place }, id), `move ${name} to ${label}`)}
          >
            Move it to {label}
            <span className="unseen">: {name}</span>
          </button>
        ))}
      </p>
    </li>
  );
}

/** A chamber in which something is wrong, and its beds. */
function WrongChamber({ field, chamber, problems, context }: ChamberProps) {
  const { document } = useForm();
  const known = context.layout?.chambers.find(({ id }) => id === chamber);
  const called = known?.label ?? inWords(chamber);
  return (
    <fieldset className="mend" data-path={writtenPath([...pathOf(field), chamber])}>
      <legend>{called}</legend>
      {problems.map((problem) => (
        <p key={`${problem.path} ${problem.code}`} className="fault">
          {chamberWords(problem, called, context)}
        </p>
      ))}
      <ol>
        {bedsOf(packingIn(document, field), chamber).map((bed, place) => (
          // Beds have no name of their own: their place is all there is.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <WrongBed key={place} {...{ field, chamber, context, place, bed, called }} />
        ))}
      </ol>
    </fieldset>
  );
}

/** The chamber in which a problem of a packing lies; undefined where it lies in none. */
const chamberOf = (field: PackingField, { path }: Problem): string | undefined => {
  const steps = readPath(path);
  const at = pathOf(field);
  const isIn = at.every((step, depth) => steps[depth] === step);
  return isIn && typeof steps[at.length] === 'string' ? String(steps[at.length]) : undefined;
};

/** What is wrong with a packing, to be mended without the drawing, which cannot follow yet: chamber by chamber. */
export function MendPacking({ field, number, problems }: MendProps) {
  const { document } = useForm();
  const context = useMemo(
    () => contextOf(draftOf(isFields(document) ? document : {}, problems)),
    [document, problems],
  );
  const chambers = [...new Set(problems.flatMap((problem) => chamberOf(field, problem) ?? []))];
  const others = problems.filter((problem) => chamberOf(field, problem) === undefined);
  return (
    <>
      {others.length === 0 ? null : <ProblemList number={number} document={document} problems={others} />}
      {chambers.length === 0 ? null : (
        <section className="caution" aria-labelledby="chambers-to-mend">
          <h3 id="chambers-to-mend">
            {chambers.length === 1
              ? 'A chamber is to be mended'
              : `${chambers.length} chambers are to be mended`}
          </h3>
          {chambers.map((chamber) => (
            <WrongChamber
              key={chamber}
              field={field}
              chamber={chamber}
              context={context}
              problems={problems.filter((problem) => chamberOf(field, problem) === chamber)}
            />
          ))}
        </section>
      )}
    </>
  );
}
