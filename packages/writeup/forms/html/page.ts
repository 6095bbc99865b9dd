import { escapeXml as escaped } from '@fettle/drawing/svg.ts';
import type { Document } from '../../content/document.ts';
import { lettersOnly } from '../letters.ts';
import { blockMarkup } from './blocks.ts';
import { tag, text } from './markup.ts';
import { style } from './style.ts';

/** What a page knows beside its document. */
export interface PageFacts {
  /** Day of its making, `2026-12-01`; absent where it is not told. */
  readonly day?: string;
  /** Address of the picture that is shown where the page is shared, seen from the page. */
  readonly preview?: string;
}

/** The page's own description in the schema.org vocabulary; `<` is written so that nothing in it ends the script. */
const structuredData = (document: Document, { day, preview }: PageFacts): string =>
  lettersOnly(
    JSON.stringify({
      '@context': 'https://schema.org',
      '@type': 'TechArticle',
      headline: document.title,
      alternativeHeadline: document.subtitle,
      description: document.description,
      inLanguage: document.language,
      ...(day === undefined ? {} : { datePublished: day }),
      ...(preview === undefined ? {} : { image: preview }),
    }),
  ).replace(/</g, '\\u003c');

const meta = (document: Document, { preview }: PageFacts): string =>
  [
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escaped(document.title)}</title>`,
    `<meta name="description" content="${escaped(document.description)}">`,
    `<meta property="og:type" content="article">`,
    `<meta property="og:title" content="${escaped(document.title)}">`,
    `<meta property="og:description" content="${escaped(document.description)}">`,
    ...(preview === undefined
      ? []
      : [
          `<meta property="og:image" content="${escaped(preview)}">`,
          `<meta property="og:image:alt" content="${escaped(document.title)}">`,
        ]),
  ].join('\n');

/** What stands in a page: title, blocks and foot. */
export const contentMarkup = (document: Document): string => {
  const { title, subtitle, blocks, foot } = document;
  return [
    tag(
      'header',
      {},
      tag('h1', { class: 'level-1' }, text(title)),
      tag('p', { class: 'subtitle' }, text(subtitle)),
    ),
    ...blocks.map((block) => blockMarkup(block, document)),
    tag('footer', {}, text(foot)),
  ].join('\n');
};

/** A document as one page that stands by itself: no script runs in it, nothing is fetched, drawings are in it. */
export const toPage = (document: Document, facts: PageFacts = {}): string => `<!doctype html>
<html lang="${document.language}" dir="${document.direction}">
<head>
${meta(document, facts)}
<style>
${style}
</style>
<script type="application/ld+json">${structuredData(document, facts)}</script>
</head>
<body>
${tag('main', {}, contentMarkup(document))}
</body>
</html>
`;
