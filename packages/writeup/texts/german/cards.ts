/** Sätze der Faktenkarten: je ein Gedanke. */
export const cardSentences: Readonly<Record<string, string>> = {
  'cards.title': '{filter}: Faktenkarten',
  'cards.subtitle': 'Auf jeder ein Gedanke, zum Auslegen neben dem Filter oder zum Vorlesen.',
  'cards.description': 'Die Zahlen zu {filter}, ein Gedanke je Karte.',
  'card.flow': 'Durchfluss am Becken',
  'card.timed': '{state}, gestoppt',
  'card.computed.found': 'sauber, gerechnet',
  'card.computed.planned': 'wie geplant, sauber, gerechnet',
  'card.computed.left': 'wie übergeben, sauber, gerechnet',
  'card.flow.timed':
    'Ein Gefäß mit Marke, am Auslauf gefüllt und gestoppt. Werte hinter ± sind Unsicherheiten: 95 von 100 solchen Bereichen enthalten den wahren Wert.',
  'card.flow.both':
    'Gestoppt mit einem Gefäß mit Marke am Auslauf; Gerechnetes gilt als auf 15 % genau (im Fach bekannt, nicht nachgeschlagen).',
  'card.flow.computed':
    'Gerechnet, gilt als auf 15 % genau (im Fach bekannt, nicht nachgeschlagen): Ein Durchfluss wurde nicht gestoppt.',
  'card.state.alone': 'Sauber, bestückt wie er ist',
  'card.state.before': 'Gereinigt, alte Bestückung',
  'card.bypass': 'Wasser an den mechanischen Medien vorbei',
  'card.bypass.note':
    'Anteil am Durchfluss, für den sauberen Filter aus den gemessenen oder angenommenen Spalten gerechnet.',
  'card.carries': 'Trockenfutter, das er bewältigt',
  'card.carries.note':
    '{day} nach Reinigung aller Schichten, gerechnet: ein Becken von {heavy} bei schwerem bis {light} bei leichtem Besatz. Ein Anhaltswert; entscheiden müssen Messungen von Ammoniak und Nitrit.',
  'card.change': 'Was die Änderung einmalig kostet',
  'card.change.parts': 'Medien und Teile',
  'card.change.quoted': 'alles Angebotene',
  'card.change.note': 'Arbeit ist nicht enthalten.',
  'card.change.note.quoted': 'Im Angebotenen ist Arbeit enthalten.',
  'card.year': 'Was ein Jahr Betrieb kostet',
  'card.year.note':
    'Strom, Medien, die verbraucht werden, und der Preis des Filters, verteilt auf seine Lebensdauer.',
  'card.cleaning': 'Zeit bis zur nächsten Reinigung',
  'card.read': '{label}: {figure}.',
};
