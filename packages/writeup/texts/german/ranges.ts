/** Die Bereiche der Werte eines Blatts und woher sie kommen. */
export const rangeSentences: Readonly<Record<string, string>> = {
  'heading.ranges': 'Wie sicher die Werte sind',
  'table.ranges':
    'Bereiche aus {draws} Ziehungen alles dessen, was nicht sicher ist: Acht von zehn Filtern, von denen nicht mehr bekannt ist als von diesem, liegen zwischen unten und oben',
  'column.figure': 'Wert',
  'column.low': 'unten',
  'column.middle': 'Mitte',
  'column.high': 'oben',
  'range.flow': 'Durchfluss, sauber',
  'range.flow-end': 'Durchfluss, wenn er zu reinigen ist',
  'range.interval': 'bis zur nächsten Reinigung',
  'range.feed': 'Trockenfutter, das er sauber bewältigt',
  'range.feed-end': 'Trockenfutter, wenn er zu reinigen ist',
  'range.served': 'Becken bei normalem Besatz, sauber',
  'range.served-day': 'Becken bei normalem Besatz, {day} nach der Reinigung aller Schichten',
  'range.served-end': 'Becken bei normalem Besatz, wenn er zu reinigen ist',
  'range.oxygen': 'Sauerstoff hinter dem Filter, dann',
  'table.range-makers': 'Woher der Bereich des versorgten Beckens kommt, wenn der Filter zu reinigen ist',
  'column.unsure': 'nicht sicher',
};
