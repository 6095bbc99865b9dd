import { commandLine, exampleOf } from '@fettle/engine/reckonings/reckon.ts';
import type { Inputs, Reckoning } from '@fettle/engine/reckonings/reckoning.ts';
import { inTradeWords } from '@fettle/engine/reckonings/seenWords.ts';
import { useEffect, useState } from 'react';
import { Link } from 'wouter';
import { useSystem } from '../../app/preferences.ts';
import { Answers } from './Answers.tsx';
import { Examples } from './Examples.tsx';
import { InputField } from './InputField.tsx';
import { type LookedInto, lookInto } from './lookInto.ts';
import { pairsOf, type Texts } from './texts.ts';
import { titleOf } from './titles.ts';
import { useTexts } from './useTexts.ts';

function Working({ reckoning, source, texts }: { reckoning: Reckoning; source: string; texts: Texts }) {
  const given = pairsOf(texts);
  return (
    <section aria-labelledby="working">
      <h2 id="working">Working</h2>
      <p className="formula">{reckoning.formula}</p>
      <p>Source: {inTradeWords(source)}.</p>
      <p>
        The same in the command line:{' '}
        <code>{commandLine(reckoning.name, given.length === 0 ? exampleOf(reckoning) : given)}</code>
      </p>
    </section>
  );
}

interface Filled {
  readonly inputs: Inputs;
  readonly texts: Texts;
  readonly faults: LookedInto['faults'];
  readonly put: (key: string, given: readonly string[]) => void;
}

function FieldsOf({ inputs, texts, faults, put }: Filled) {
  return (
    <div className="fields">
      {Object.entries(inputs).map(([key, input]) => (
        <InputField
          key={key}
          input={input}
          texts={texts[key] ?? []}
          fault={faults[key]}
          put={(given) => put(key, given)}
        />
      ))}
    </div>
  );
}

/** What must be given; what may be left out is folded away until something of it is said. */
function InputsOf({ empty, ...filled }: Filled & { readonly empty: () => void }) {
  const { inputs, texts } = filled;
  const [isOpen, setOpen] = useState(false);
  const must = Object.entries(inputs).filter(([, { required }]) => required);
  const may = Object.entries(inputs).filter(([, { required }]) => !required);
  const isSaid = may.some(([key]) => (texts[key] ?? []).length > 0);
  const first = must.length > 0 ? must : may;
  return (
    <section aria-labelledby="inputs">
      <h2 id="inputs">Inputs</h2>
      <FieldsOf {...filled} inputs={Object.fromEntries(first)} />
      {first === may || may.length === 0 ? null : (
        <details open={isOpen || isSaid} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
          <summary>{may.length} more that may be left out</summary>
          <FieldsOf {...filled} inputs={Object.fromEntries(may)} />
        </details>
      )}
      {pairsOf(texts).length === 0 ? null : (
        <p className="buttons">
          <button type="button" className="quiet" onClick={empty}>
            Empty all
          </button>
        </p>
      )}
    </section>
  );
}

/** One reckoning: what goes in, what comes out while it is typed, and why that is so. */
export function ReckoningRoom({ reckoning }: { readonly reckoning: Reckoning }) {
  const { name, says, inputs, source } = reckoning;
  const { texts, put, replace } = useTexts(inputs);
  const system = useSystem();
  const looked = lookInto(reckoning, texts);
  useEffect(() => {
    document.title = `${titleOf(name)} · Reckoner · Fettle`;
  }, [name]);
  const fill = (next: Texts): void => {
    replace(next);
    window.scrollTo({ top: 0 });
  };
  return (
    <main>
      <p className="back">
        <Link href="/reckoner">All formulas</Link>
      </p>
      <h1>{titleOf(name)}</h1>
      <p>{says}</p>
      <div className="reckoning">
        <InputsOf inputs={inputs} texts={texts} faults={looked.faults} put={put} empty={() => replace({})} />
        <Answers looked={looked} system={system} />
        <Working reckoning={reckoning} source={looked.reckoned?.source ?? source} texts={texts} />
        <Examples reckoning={reckoning} fill={fill} />
      </div>
    </main>
  );
}
