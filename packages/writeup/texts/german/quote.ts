/** Sätze des Angebots: was angeboten wird, zu welchem Preis, was es bewirkt und was es nicht umfasst. */
export const quoteSentences: Readonly<Record<string, string>> = {
  'quote.title': '{filter}: Angebot',
  'quote.subtitle': '{family}',
  'quote.subtitle.of': '{family}; Angebot vom {day}',
  'quote.description': 'Was die Arbeit an {filter} kostet, was sie bewirkt und was sie nicht umfasst.',
  'quote.lead.total': 'Die Arbeit unten kommt auf {total}.',
  'quote.lead.open':
    'Die Arbeit unten ist noch nicht ganz mit Preisen versehen: Das Bepreiste kommt auf {total}.',
  'quote.lead.none.found': 'Noch ist nichts mit Preisen versehen und keine neue Bestückung geplant.',
  'quote.lead.none.planned':
    'Noch ist nichts mit Preisen versehen. Medien und Teile der geplanten Bestückung kosten {cost}; die Arbeit kommt hinzu.',
  'quote.lead.none.left':
    'Ein Angebot wurde nicht gemacht. Medien und Teile der Bestückung kosten {cost}; die Arbeit kommt hinzu.',
  'quote.until': 'Es gilt bis zum {day}.',
  'quote.no-day': 'Ein letzter Tag ist nicht genannt: nachfragen, ob es noch gilt.',

  'heading.quote-lines': 'Was angeboten wird',
  'table.quote-labour': 'Arbeit',
  'table.quote-parts': 'Teile und Medien',
  'column.work': 'Arbeit',
  'column.time': 'Zeit',
  'column.each': 'je',
  'quote.price.open': 'offen',
  'quote.total': 'Insgesamt: {total}.',
  'quote.total.open': 'Bisher, ohne das Offene: {total}.',
  'quote.missing': 'Noch ohne Preis: {lines}.',
  'quote.notes': 'Anmerkung: {notes}',

  'heading.quote-options': 'Zur Wahl',
  'quote.options.how':
    'So verschmutzt, wie er vorgefunden wurde, ist nur der Durchfluss bekannt, wo er gestoppt wurde. Alles andere beginnt sauber: Durchfluss und Wasser an den mechanischen Medien vorbei gelten für den sauberen Filter; das Futter ist das, was er {day} nach Reinigung aller Schichten bewältigt, ohne Reinigung dazwischen.',
  'quote.options.since':
    'Das sind die Werte des Angebots, gerechnet vor der Arbeit; was seither gemessen wurde, steht im Datenblatt.',
  'table.options': 'Was jede Wahl bringt',
  'column.choice': 'Wahl',
  'column.bypass': 'an den mechanischen Medien vorbei',
  'column.once': 'einmalig',
  'choice.nothing': 'Lassen, wie er ist',
  'choice.clean': 'Reinigen, bestückt wie vorher',
  'choice.repack.planned': 'Neu bestücken wie geplant',
  'choice.repack.left': 'Neu bestücken, wie dann geschehen',
  'choice.flow.timed': '{flow}, gestoppt',
  'choice.unknown': 'nicht bekannt',
  'choice.no-charge': '{zero}',
  'choice.on-request': 'auf Anfrage',
  'choice.parts-only': '{cost} und Arbeit',
  'choice.so-far': '{cost} bisher',

  'heading.quote-terms': 'Bedingungen',
  'quote.warranty': 'Gewährleistung auf diese Arbeit: {warranty}',
  'quote.no-warranty': 'Eine Gewährleistung auf diese Arbeit ist nicht genannt.',
  'quote.maker':
    'Einen Filter zu öffnen, zu ändern oder mit anderen Medien als denen des Herstellers zu bestücken, kann dessen Garantie beenden. Wo sie noch läuft, vorher beim Hersteller nachfragen.',
  'heading.quote-excluded': 'Nicht enthalten',
  'excluded.lines':
    'Alles, was oben keine Zeile nennt. Was sich erst beim Öffnen zeigt, wird mitgeteilt, bevor es berechnet wird.',
  'excluded.wiring':
    'Leitungen, Steckdosen und Fehlerstrom-Schutzschalter: Sache einer Elektrofachkraft. Ein vergossener Motor wird nicht geöffnet, ein beschädigtes Kabel nicht geflickt.',
  'excluded.animals': 'Rat zur Gesundheit von Tieren; eine Zahl von Tieren, die das Becken halten kann.',
  'excluded.used-up': 'Medien, die später verbraucht werden: Sie stehen oben in den Kosten eines Jahres.',

  'heading.quote-approval': 'Freigabe',
  'quote.approved': 'Freigegeben am {day}.',
  'quote.approved.by': 'Freigegeben am {day} von {by}.',
  'quote.approved.how': 'Gesagt: {how}.',
  'quote.approved.amount': 'Zugestimmt: {amount}.',
  'quote.approved.other': 'Das ist ein anderer Betrag als der oben.',
  'quote.to-approve': 'Der Arbeit oben wird zugestimmt.',
  'blank.name': 'Name',
  'blank.day': 'Tag',
  'blank.signature': 'Unterschrift',
};
