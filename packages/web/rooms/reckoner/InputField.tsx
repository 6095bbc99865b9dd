import type { Input } from '@fettle/engine/reckonings/reckoning.ts';
import { Framed } from '../../forms/Framed.tsx';
import { understoodOf } from './lookInto.ts';
import { labelOf } from './titles.ts';

interface FieldOfInput {
  readonly input: Input<unknown>;
  readonly texts: readonly string[];
  readonly fault: string | undefined;
  readonly put: (texts: readonly string[]) => void;
}

/** What may be written, and what holds where nothing is. */
const howOf = ({ takes, required, otherwise }: Input<unknown>): string => {
  const leftOut = otherwise === undefined ? 'may be left out' : `${otherwise} where left empty`;
  return `Takes ${takes}${required ? '' : `; ${leftOut}`}`;
};

function Choice({ input, texts, fault, put }: FieldOfInput) {
  const choices =
    input.entries ?? input.words?.map((word) => ({ id: word, name: word.replaceAll('-', ' ') })) ?? [];
  const usual = choices.find(({ id }) => id === input.otherwise)?.name;
  return (
    <Framed name={labelOf(input.label)} {...(fault === undefined ? {} : { problem: fault })}>
      {(described) => (
        <select
          {...described}
          value={texts[0] ?? ''}
          onChange={({ target: { value } }) => put(value === '' ? [] : [value])}
        >
          <option value="">{usual === undefined ? 'choose one' : `as usual: ${usual}`}</option>
          {choices.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      )}
    </Framed>
  );
}

interface LineOfInput {
  readonly input: Input<unknown>;
  readonly place: number;
  readonly text: string;
  readonly fault: string | undefined;
  readonly put: (text: string) => void;
}

function Line({ input, place, text, fault, put }: LineOfInput) {
  const understood = understoodOf(input, text);
  const name = input.repeats ? `${labelOf(input.label)}, ${place + 1}` : labelOf(input.label);
  const example = input.example[place] ?? input.example[0];
  return (
    <Framed
      name={name}
      {...(place === 0 ? { how: howOf(input) } : {})}
      {...(fault === undefined ? {} : { problem: fault })}
      {...(understood === undefined ? {} : { understood })}
    >
      {(described) => (
        <input
          {...described}
          type="text"
          className="quantity"
          autoComplete="off"
          spellCheck={false}
          value={text}
          placeholder={example === undefined ? undefined : `such as ${example}`}
          onChange={({ target }) => put(target.value)}
        />
      )}
    </Framed>
  );
}

function Repeated({ input, texts, fault, put }: FieldOfInput) {
  const lines = texts.length === 0 ? [''] : texts;
  const isWrong = (text: string): boolean => text.trim() !== '' && !input.read([text]).ok;
  const wrongAt = lines.findIndex(isWrong);
  return (
    <fieldset>
      <legend>{labelOf(input.label)}</legend>
      {lines.map((text, place) => (
        <Line
          // Texts have no name of their own: their place is all there is.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          key={place}
          input={input}
          place={place}
          text={text}
          fault={place === Math.max(0, wrongAt) ? fault : undefined}
          put={(next) => put(lines.with(place, next))}
        />
      ))}
      <p className="buttons">
        <button type="button" onClick={() => put([...lines, ''])}>
          Add one
        </button>
        <button
          type="button"
          className="quiet"
          disabled={lines.length < 2}
          onClick={() => put(lines.slice(0, -1))}
        >
          Take the last away
        </button>
      </p>
    </fieldset>
  );
}

/** One input of a reckoning, of the kind that it is read by. */
export function InputField(field: FieldOfInput) {
  const { input, texts, fault, put } = field;
  if (input.words !== undefined || input.entries !== undefined) return <Choice {...field} />;
  if (input.repeats) return <Repeated {...field} />;
  return <Line input={input} place={0} text={texts[0] ?? ''} fault={fault} put={(text) => put([text])} />;
}
