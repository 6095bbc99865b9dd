import { commandLine, exampleOf } from '@fettle/engine/reckonings/reckon.ts';
import type { Reckoning } from '@fettle/engine/reckonings/reckoning.ts';
import { useEffect } from 'react';
import { Link } from 'wouter';
import { useSystem } from '../../app/preferences.ts';
import { Answers } from './Answers.tsx';
import { Examples } from './Examples.tsx';
import { InputField } from './InputField.tsx';
import { lookInto } from './lookInto.ts';
import { pairsOf, type Texts } from './texts.ts';
import { titleOf } from './titles.ts';
import { useTexts } from './useTexts.ts';

function Working({ reckoning, source, texts }: { reckoning: Reckoning; source: string; texts: Texts }) {
  const given = pairsOf(texts);
  return (
    <section aria-labelledby="working">
      <h2 id="working">Working</h2>
      <p className="formula">{reckoning.formula}</p>
      <p>Source: {source}.</p>
      <p>
        The same in the command line:{' '}
        <code>{commandLine(reckoning.name, given.length === 0 ? exampleOf(reckoning) : given)}</code>
      </p>
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
        <section aria-labelledby="inputs">
          <h2 id="inputs">Inputs</h2>
          <div className="fields">
            {Object.entries(inputs).map(([key, input]) => (
              <InputField
                key={key}
                input={input}
                texts={texts[key] ?? []}
                fault={looked.faults[key]}
                put={(given) => put(key, given)}
              />
            ))}
          </div>
          {Object.keys(texts).length === 0 ? null : (
            <p className="buttons">
              <button type="button" className="quiet" onClick={() => replace({})}>
                Empty all
              </button>
            </p>
          )}
        </section>
        <Answers looked={looked} system={system} />
        <Working reckoning={reckoning} source={looked.reckoned?.source ?? source} texts={texts} />
        <Examples reckoning={reckoning} fill={fill} />
      </div>
    </main>
  );
}
