/** Sentences of the fact cards: one idea each. */
export const cardSentences: Readonly<Record<string, string>> = {
  'cards.title': '{filter}: fact cards',
  'cards.subtitle': 'One idea on each, to be laid out beside the filter or read out.',
  'cards.description': 'The figures of {filter}, one idea on a card.',
  'card.flow': 'Flow at the tank',
  'card.timed': '{state}, timed',
  'card.computed.found': 'clean, computed',
  'card.computed.planned': 'as planned, clean, computed',
  'card.computed.left': 'as left, clean, computed',
  'card.flow.timed':
    'A marked vessel, filled at the outlet and timed. Figures after ± are doubts: 95 of 100 such ranges hold the true value.',
  'card.flow.both':
    'Timed with a marked vessel at the outlet; what is computed is taken to be good to 15 % (from memory).',
  'card.flow.computed': 'Computed, and taken to be good to 15 % (from memory): no flow was timed.',
  'card.state.alone': 'Clean, packed as it is',
  'card.state.before': 'Cleaned, packed as before',
  'card.bypass': 'Water that misses the mechanical media',
  'card.bypass.note':
    'Share of the flow, computed for the clean filter from the gaps that were measured or assumed.',
  'card.carries': 'Dry feed that it carries',
  'card.carries.note':
    '{day} after every bed was cleaned, computed: a tank of {heavy} with a heavy stock to {light} with a light one. A guide; tests of ammonia and nitrite decide.',
  'card.change': 'What the change costs once',
  'card.change.parts': 'media and parts',
  'card.change.quoted': 'all that was quoted',
  'card.change.note': 'Labour is not in it.',
  'card.change.note.quoted': 'All that was quoted has labour in it.',
  'card.year': 'What it costs to run for a year',
  'card.year.note': 'Electricity, media that are used up, and the price of the filter spread over its life.',
  'card.cleaning': 'Time until it wants cleaning',
  'card.read': '{label}: {figure}.',
};
