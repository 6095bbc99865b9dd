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
  /** Each value with what it is called. */
  readonly choices: Readonly<Record<string, string>>;
  readonly onChange: (value: string) => void;
}

function Choice({ name, value, choices, onChange }: ChoiceProps) {
  return (
    <label>
      {name}
      <select value={value} onChange={({ target }) => onChange(target.value)}>
        <option value="">any</option>
        {Object.entries(choices).map(([choice, called]) => (
          <option key={choice} value={choice}>
            {called}
          </option>
        ))}
      </select>
    </label>
  );
}

const stages = Object.fromEntries(jobStages.map((stage) => [stage, inWords(stage)]));

/** Narrows the jobs on the bench by family, stage of work and tag. */
export function Narrowing({
  narrowed,
  onChange,
}: {
  readonly narrowed: Narrowed;
  readonly onChange: (change: Partial<Narrowed>) => void;
}) {
  const tags = useQuery({ queryKey: ['tags'], queryFn: tagsInUse });
  const choices = Object.fromEntries(tags.data?.map(({ tag }) => [tag, tag]) ?? []);
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
        choices={stages}
        onChange={(stage) => onChange({ stage })}
      />
      {tags.data === undefined || tags.data.length === 0 ? null : (
        <Choice name="Tag" value={narrowed.tag} choices={choices} onChange={(tag) => onChange({ tag })} />
      )}
    </div>
  );
}
