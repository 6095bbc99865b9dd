import type { Block, Column, Document, Photograph } from '../content/document.ts';
import { lettersOnly } from './letters.ts';

/** Text with everything that Markdown would take for a mark made plain. */
const plain = (text: string): string =>
  lettersOnly(text)
    .replace(/[\\`*_{}[\]<>#|&]/g, '\\$&')
    .replace(/\s*\n\s*/g, ' ');

/** A line that must not begin a list or a heading by itself. */
const line = (text: string): string =>
  plain(text)
    .replace(/^(\d+)([.)])/, '$1\\$2')
    .replace(/^([-+=])/, '\\$1');

const row = (cells: readonly string[]): string => `| ${cells.map(plain).join(' | ')} |`;

const rule = (columns: readonly Column[]): string =>
  `| ${columns.map(({ align }) => (align === 'right' ? '--:' : ':--')).join(' | ')} |`;

/** How deep headings begin: the title is the first. */
const depth = (level: number): string => '#'.repeat(level);

/** What the file of a photograph ends with. */
export const ending = (photograph: Photograph | undefined): string =>
  photograph?.mediaType === 'image/png' ? 'png' : 'jpg';

const blockText = (block: Block, { photographs = {} }: Document): string => {
  switch (block.kind) {
    case 'heading':
      return `${depth(block.level)} ${plain(block.text)}`;
    case 'paragraph':
      return block.label === undefined ? line(block.text) : `**${plain(block.label)}** ${plain(block.text)}`;
    case 'list':
      return block.items.map((item) => `- ${plain(item)}`).join('\n');
    case 'steps':
      return block.items.map((item, at) => `${block.first + at}. ${plain(item)}`).join('\n');
    case 'caution':
      return `> **⚠** ${plain(block.text)}`;
    case 'figures':
      return block.figures
        .map(({ label, metric, us, note }) => {
          const also = us === undefined ? '' : ` (${plain(us)})`;
          return `- **${plain(metric)}**${also} ${plain(label)}${note === undefined ? '' : `; ${plain(note)}`}`;
        })
        .join('\n');
    case 'table':
      return [
        `**${plain(block.caption)}**`,
        '',
        row(block.columns.map(({ head }) => head)),
        rule(block.columns),
        ...block.rows.map(row),
        ...(block.foot === undefined ? [] : [row(block.foot)]),
      ].join('\n');
    case 'drawing':
      return `![${plain(block.alternative)}](drawings/${block.drawing}.svg)\n\n*${plain(block.caption)}*`;
    case 'photographs':
      return block.shown
        .map(
          ({ photograph, caption }) =>
            `![${plain(caption)}](photographs/${photograph}.${ending(photographs[photograph])})\n\n*${plain(caption)}*`,
        )
        .join('\n\n');
    case 'blanks':
      return block.labels.map((label) => `${plain(label)}: ____________________`).join('\n\n');
  }
};

/** A document as Markdown, its drawings in files of their own under `drawings/`. */
export const toMarkdown = (document: Document): string =>
  [
    `# ${plain(document.title)}`,
    `*${plain(document.subtitle)}*`,
    ...document.blocks.map((block) => blockText(block, document)),
    `*${plain(document.foot)}*`,
  ]
    .join('\n\n')
    .concat('\n');
