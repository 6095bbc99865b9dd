import { factCard } from '@fettle/drawing/factCard.ts';
import type { Theme } from '@fettle/drawing/tokens.ts';
import { cardLines, type FactCard, factCards } from '../cards/cards.ts';
import type { Block, Document } from '../content/document.ts';
import { filterName } from '../parts/summary.ts';
import type { Writer } from '../parts/writer.ts';
import { documentOf } from './frame.ts';

const nameOf = ({ id }: FactCard): string => `card-${id}`;

const cardBlock = (writer: Writer, card: FactCard): Block => ({
  kind: 'drawing',
  id: nameOf(card),
  drawing: nameOf(card),
  caption: card.headline,
  alternative: cardLines(writer, card).join(' '),
  width: 'full',
});

/** The fact cards for print, as wide as the text: two go on a page, to be read at arm's length or cut apart. */
export const cardsDocument = (writer: Writer, theme: Theme): Document => {
  const cards = factCards(writer);
  const name = filterName(writer);
  return documentOf(writer, {
    id: 'cards',
    title: writer.say('cards.title', { filter: name }),
    subtitle: writer.say('cards.subtitle'),
    description: writer.say('cards.description', { filter: name }),
    blocks: cards.map((card) => cardBlock(writer, card)),
    drawings: Object.fromEntries(
      cards.map((card) => {
        const { headline, figures, note } = card;
        return [nameOf(card), factCard({ name, headline, figures, note, theme })];
      }),
    ),
  });
};
