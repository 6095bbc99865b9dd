import type { Block, Danger, Document, KeyFigure } from '../../content/document.ts';
import { tag, text } from './markup.ts';

type Of<Kind extends Block['kind']> = Extract<Block, { kind: Kind }>;

/** Marks of dangers as paths in a square of 24, told apart by shape; the words beside them say the same. */
const marks: Readonly<Record<Danger, string>> = {
  mains: 'M13 3 6 13h5l-1 8 8-11h-5z',
  water: 'M12 3c4 6 6 8 6 11a6 6 0 0 1-12 0c0-3 2-5 6-11z',
  blade: 'M4 18 18 4l2 2-9 12H4z',
  seal: 'M12 4a8 8 0 1 0 0 16 8 8 0 0 0 0-16zm0 4a4 4 0 1 1 0 8 4 4 0 0 1 0-8z',
  material: 'M4 6h16v12H4zm3 3v6h2V9zm4 0v6h2V9zm4 0v6h2V9z',
  stopped: 'M5 5h5v14H5zm9 0h5v14h-5z',
  bacteria:
    'M6 8a3 3 0 1 1 0 6 3 3 0 0 1 0-6zm9-4a3 3 0 1 1 0 6 3 3 0 0 1 0-6zm1 10a3 3 0 1 1 0 6 3 3 0 0 1 0-6z',
  chemical: 'M9 3h6v5l5 11H4L9 8z',
  skin: 'M7 21V10L5 6l2-1 3 5V3h2v6h1V4h2v6h1V6h2v15z',
};

const mark = (danger: Danger): string =>
  `<svg class="mark" viewBox="0 0 24 24" aria-hidden="true"><path d="${marks[danger]}"/></svg>`;

const keyFigure = ({ label, metric, us, note }: KeyFigure): string =>
  tag(
    'div',
    { class: 'figure' },
    tag('dt', {}, text(label)),
    tag(
      'dd',
      {},
      tag('strong', {}, text(metric)),
      us === undefined ? '' : tag('span', { class: 'us' }, text(us)),
      note === undefined ? '' : tag('span', { class: 'note' }, text(note)),
    ),
  );

const table = ({ id, caption, columns, rows, foot }: Of<'table'>): string => {
  const align = (at: number): string | undefined => (columns[at]?.align === 'right' ? 'right' : undefined);
  const cells = (row: readonly string[]): string =>
    row
      .map((cell, at) =>
        at === 0 && cell !== ''
          ? tag('th', { scope: 'row', class: align(at) }, text(cell))
          : tag('td', { class: align(at) }, text(cell)),
      )
      .join('');
  const head = columns.map((column, at) => tag('th', { scope: 'col', class: align(at) }, text(column.head)));
  return tag(
    'div',
    { class: 'scrolls', role: 'region', 'aria-labelledby': `${id}-caption`, tabindex: 0 },
    tag(
      'table',
      { id },
      tag('caption', { id: `${id}-caption` }, text(caption)),
      tag('thead', {}, tag('tr', {}, ...head)),
      tag('tbody', {}, ...rows.map((row) => tag('tr', {}, cells(row)))),
      foot === undefined ? '' : tag('tfoot', {}, tag('tr', {}, cells(foot))),
    ),
  );
};

const steps = ({ id, first, items }: Of<'steps'>): string =>
  tag(
    'ol',
    { id, start: first === 1 ? undefined : first },
    ...items.map((item) => tag('li', {}, text(item))),
  );

/** Photographs are in the page itself, so that it stands by itself wherever it is sent. */
const photographs = (
  { id, shown: pictures }: Of<'photographs'>,
  { photographs: all = {} }: Pick<Document, 'photographs'>,
): string =>
  tag(
    'div',
    { id, class: 'photographs' },
    ...pictures.flatMap(({ photograph, caption }) => {
      const shown = all[photograph];
      if (shown === undefined) return [];
      const picture = `<img src="data:${shown.mediaType};base64,${shown.base64}" alt="${text(caption)}">`;
      return [tag('figure', {}, picture, tag('figcaption', {}, text(caption)))];
    }),
  );

/** One block as markup; drawings are put in whole. */
export const blockMarkup = (block: Block, document: Pick<Document, 'drawings' | 'photographs'>): string => {
  switch (block.kind) {
    case 'heading':
      return tag(`h${block.level}`, { id: block.id, class: `level-${block.level}` }, text(block.text));
    case 'paragraph':
      return tag(
        'p',
        { id: block.id, class: block.tone },
        block.label === undefined ? '' : `${tag('strong', {}, text(block.label))} `,
        text(block.text),
      );
    case 'list':
      return tag('ul', { id: block.id }, ...block.items.map((item) => tag('li', {}, text(item))));
    case 'steps':
      return steps(block);
    case 'caution':
      return tag(
        'p',
        { id: block.id, class: 'caution' },
        mark(block.danger),
        tag('span', {}, text(block.text)),
      );
    case 'figures':
      return tag('dl', { id: block.id, class: 'figures' }, ...block.figures.map(keyFigure));
    case 'table':
      return table(block);
    case 'drawing':
      return tag(
        'figure',
        { id: block.id, class: block.width },
        document.drawings[block.drawing] ?? '',
        tag('figcaption', {}, text(block.caption)),
      );
    case 'photographs':
      return photographs(block, document);
    case 'blanks':
      return tag(
        'ul',
        { id: block.id, class: 'blanks' },
        ...block.labels.map((label) => tag('li', {}, text(label))),
      );
  }
};
