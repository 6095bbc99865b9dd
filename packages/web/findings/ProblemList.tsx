import type { Problem } from '@fettle/job/problems.ts';
import { Link } from 'wouter';
import { problemInWords } from '../forms/problemInWords.ts';
import { fieldInWords } from '../history/fieldInWords.ts';
import { partOfField } from './partOfField.ts';

interface ProblemListProps {
  readonly number: number;
  readonly document: unknown;
  readonly problems: readonly Problem[];
}

function ProblemLine({
  number,
  document,
  problem,
}: Omit<ProblemListProps, 'problems'> & { problem: Problem }) {
  const { path } = problem;
  const part = partOfField(path);
  const words = fieldInWords(document, path);
  return (
    <li>
      {part === undefined ? (
        <strong>{words}</strong>
      ) : (
        <Link href={`/jobs/${number}/${part}#${encodeURIComponent(path)}`}>{words}</Link>
      )}
      <p>{problemInWords(problem, words)}</p>
    </li>
  );
}

/** What must be mended before figures can follow, each leading to its field. */
export function ProblemList({ number, document, problems }: ProblemListProps) {
  return (
    <section className="caution" aria-labelledby="to-mend">
      <h3 id="to-mend">
        {problems.length === 1
          ? 'One field is to be mended first'
          : `${problems.length} fields are to be mended first`}
      </h3>
      <ul className="problems">
        {problems.map((problem) => (
          <ProblemLine
            key={`${problem.path} ${problem.code}`}
            number={number}
            document={document}
            problem={problem}
          />
        ))}
      </ul>
    </section>
  );
}
