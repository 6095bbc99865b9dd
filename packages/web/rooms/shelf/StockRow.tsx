import { type ReactNode, useId, useState } from 'react';

interface StockOf {
  /** As it is named in a sentence: `20 ppi foam`. */
  readonly name: string;
  readonly head: ReactNode;
  readonly cells: readonly ReactNode[];
  /** What is told on demand, and what the button for it says. */
  readonly more: ReactNode;
  readonly moreName: string;
  readonly isOpen?: boolean;
  readonly actions: ReactNode;
}

/** One thing of the shelf: a row on a desk, a card on a phone, with what is told on demand below. */
export function StockRow({ name, head, cells, more, moreName, isOpen = false, actions }: StockOf) {
  const id = useId();
  const [open, setOpen] = useState(isOpen);
  return (
    <tbody>
      <tr>
        <th scope="row">{head}</th>
        {cells.map((cell, place) => (
          // Columns have no name of their own here: their place is all there is.
          // biome-ignore lint/suspicious/noArrayIndexKey: see above
          <td key={place}>{cell}</td>
        ))}
        <td className="buttons">
          <button
            type="button"
            className="quiet"
            aria-expanded={open}
            aria-controls={open ? id : undefined}
            onClick={() => setOpen(!open)}
          >
            {moreName}
            <span className="unseen"> of {name}</span>
          </button>
          {actions}
        </td>
      </tr>
      {open ? (
        <tr className="more" id={id}>
          <td colSpan={cells.length + 2}>{more}</td>
        </tr>
      ) : null}
    </tbody>
  );
}

/** Columns of a table of the shelf; the first names the thing, and a last one for buttons is added. */
export function Stock({
  columns,
  says,
  children,
}: {
  columns: readonly string[];
  says: string;
  children: ReactNode;
}) {
  return (
    <table className="stock">
      <caption className="unseen">{says}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column} scope="col">
              {column}
            </th>
          ))}
          <td />
        </tr>
      </thead>
      {children}
    </table>
  );
}
