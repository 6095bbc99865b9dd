import type { ReportTable } from '@fettle/workflows/report/reportTable.ts';

/** A table of the report in a box of its own, which scrolls sideways where it is wider than the page. */
export function Tabled({ table, caption }: { readonly table: ReportTable; readonly caption: string }) {
  const { columns, rows } = table;
  const align = (place: number): string | undefined => columns[place]?.align;
  return (
    // The box can be scrolled, so the keys have to get there.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: see above
    <section className="scrolls" aria-label={caption} tabIndex={0}>
      <table className="report">
        <caption>{caption}</caption>
        <thead>
          <tr>
            {columns.map(({ head }, place) => (
              <th key={head} scope="col" className={align(place)}>
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((cells) => (
            <tr key={cells[0]}>
              {cells.map((cell, place) =>
                place === 0 ? (
                  <th key={columns[place]?.head} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={columns[place]?.head} className={align(place)}>
                    {cell}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
