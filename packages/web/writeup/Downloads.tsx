import type { DocumentName } from '@fettle/writeup/writeUp.ts';

/** Forms of a document that the server makes. */
const forms = [
  { ends: '-a4.pdf', says: 'PDF, A4' },
  { ends: '-letter.pdf', says: 'PDF, US Letter' },
  { ends: '.html', says: 'Page' },
  { ends: '.md', says: 'Markdown' },
] as const;

/** Where the document is had as a file, as it was saved last. */
export function Downloads({
  number,
  name,
  isSaved,
}: {
  readonly number: number;
  readonly name: DocumentName;
  readonly isSaved: boolean;
}) {
  const at = `/api/jobs/${number}/write-up`;
  return (
    <nav className="downloads" aria-label="As files">
      <ul className="plain">
        {forms.map(({ ends, says }) => (
          <li key={ends}>
            <a href={`${at}/${name}${ends}`} target="_blank" rel="noreferrer">
              {says}
            </a>
          </li>
        ))}
        <li>
          <a href={at} download>
            Everything in one archive
          </a>
        </li>
      </ul>
      {isSaved ? null : <p className="soft">Files are made of what was saved last.</p>}
    </nav>
  );
}
