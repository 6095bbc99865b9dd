import { jobStages } from '@fettle/job/stages.ts';
import { useQuery } from '@tanstack/react-query';
import { inWords } from '../../app/words.ts';
import { tagsInUse } from '../../client/jobs.ts';
import { familyNames } from './kinds.ts';

/** What the list of jobs is narrowed to, as the address keeps it. */
export interface Narrowed {
  readonly words: string;
  readonly family: string;
  readonly stage: string;
  readonly tag: string;
}

interface ChoiceProps {
  readonly name: string;
  readonly value: string;
  readonly choices: readonly string[];
  readonly onChange: (value: string) => void;
}

function Choice({ name, value, choices, onChange }: ChoiceProps) {
  return (
    <label>
      {name}
      <select value={value} onChange={({ target }) => onChange(target.value)}>
        <option value="">any</option>
        {choices.map((choice) => (
          <option key={choice} value={choice}>
            {inWords(choice)}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Narrows the jobs on the bench by family, stage of work and tag. */
export function Narrowing({
  narrowed,
  onChange,
}: {
  readonly narrowed: Narrowed;
  readonly onChange: (change: Partial<Narrowed>) => void;
}) {
  const tags = useQuery({ queryKey: ['tags'], queryFn: tagsInUse });
  const choices = tags.data?.map(({ tag }) => tag) ?? [];
  return (
    <div className="narrowing">
      <Choice
        name="Kind of filter"
        value={narrowed.family}
        choices={familyNames}
        onChange={(family) => onChange({ family })}
      />
      <Choice
        name="Stage of work"
        value={narrowed.stage}
        choices={jobStages}
        onChange={(stage) => onChange({ stage })}
      />
      {choices.length === 0 ? null : (
        <Choice name="Tag" value={narrowed.tag} choices={choices} onChange={(tag) => onChange({ tag })} />
      )}
    </div>
  );
}
