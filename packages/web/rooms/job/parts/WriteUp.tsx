import type { DocumentName } from '@fettle/writeup/writeUp.ts';
import { useCallback, useState } from 'react';
import { useSearchParams } from 'wouter';
import { ProblemList } from '../../../findings/ProblemList.tsx';
import { Field } from '../../../forms/Field.tsx';
import { Downloads } from '../../../writeup/Downloads.tsx';
import { OwnWords } from '../../../writeup/OwnWords.tsx';
import { Preview } from '../../../writeup/Preview.tsx';
import { useWriteUp } from '../../../writeup/useWriteUp.ts';
import type { JobAtWork } from '../jobAtWork.ts';

/** The documents of a job, as people ask for them. */
const documents: readonly { readonly name: DocumentName; readonly says: string }[] = [
  { name: 'sheet', says: 'Sheet' },
  { name: 'build', says: 'Build sheet' },
  { name: 'quote', says: 'Quote' },
  { name: 'care', says: 'Care plan' },
  { name: 'talk', says: 'Talking sheet' },
  { name: 'cards', says: 'Fact cards' },
];

function DocumentChoice({ shown, onShow }: { shown: DocumentName; onShow: (name: DocumentName) => void }) {
  return (
    <fieldset className="choices">
      <legend>What to look at</legend>
      {documents.map(({ name, says }) => (
        <label key={name}>
          <input type="radio" name="document" checked={name === shown} onChange={() => onShow(name)} />
          {says}
        </label>
      ))}
    </fieldset>
  );
}

/** What leaves the workshop, as it will look, with room for own words. */
export function WriteUp({ work }: { readonly work: JobAtWork }) {
  const { number, document, standing } = work.state;
  const [asked, ask] = useSearchParams();
  const shown = documents.find(({ name }) => name === asked.get('document'))?.name ?? 'sheet';
  const [chosen, setChosen] = useState('summary');
  const { figures: written, problems, isBehind } = useWriteUp(document, shown);
  const show = (name: DocumentName): void => ask({ document: name }, { replace: true });
  const choose = useCallback((id: string) => setChosen(id), []);
  return (
    <div className="part writing">
      <h2>Write-up</h2>
      {problems.length === 0 ? null : <ProblemList number={number} document={document} problems={problems} />}
      <DocumentChoice shown={shown} onShow={show} />
      <div className="fields">
        <Field path={['writeUp', 'language']} label="Language" how="English where nothing is chosen." />
        <Field path={['writeUp', 'by']} label="Who signs it" />
      </div>
      <Downloads number={number} name={shown} isSaved={standing.is === 'saved'} />
      {written === undefined ? (
        <p className="wait" role="status">
          {problems.length > 0 ? 'Nothing is written up until that is mended.' : 'It is being written…'}
        </p>
      ) : (
        <div className={isBehind ? 'pages behind' : 'pages'}>
          <Preview document={written} onChoose={choose} />
          <OwnWords written={written} chosen={chosen} onChoose={choose} />
        </div>
      )}
    </div>
  );
}
