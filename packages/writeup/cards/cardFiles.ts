import { cardSize, factCard } from '@fettle/drawing/factCard.ts';
import { lettersOnly } from '../forms/letters.ts';
import { toPng } from '../forms/picture/png.ts';
import { filterName } from '../parts/summary.ts';
import type { Writer } from '../parts/writer.ts';
import { cardsText, factCards } from './cards.ts';

/** A file of the cards: each as a drawing and as a picture, and all of them to read out. */
export const cardFiles = (
  writer: Writer,
): readonly { readonly path: string; readonly content: string | Uint8Array }[] => [
  ...factCards(writer).flatMap(({ id, ...card }, at) => {
    const svg = factCard({ ...card, name: filterName(writer), theme: 'light' });
    return [
      { path: `cards/${at + 1}-${id}.svg`, content: svg },
      { path: `cards/${at + 1}-${id}.png`, content: toPng(svg, cardSize.width) },
    ];
  }),
  { path: 'cards/cards.txt', content: lettersOnly(cardsText(writer)) },
];
