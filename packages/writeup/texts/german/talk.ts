/** Sätze des Sprechzettels und des Texts unter einer Aufnahme. */
export const talkSentences: Readonly<Record<string, string>> = {
  'talk.title': '{filter}: Sprechzettel',
  'talk.subtitle': 'Fakten für einen aufgenommenen Rundgang, in der Folge der Arbeit',
  'talk.description':
    'Was sich über {filter} sagen lässt, in der Folge der Arbeit, mit Werten in metrischen und US-Einheiten.',
  'talk.lead':
    'Mit eigenen Worten sprechen; die Werte sind diese. Zeiten gelten für {rate} Wörter in der Minute (gängige Praxis, ohne Quelle). Ohne Einwilligung keine Personen, Anschriften und Zeichen eines Herstellers im Bild.',
  'talk.heading': '{heading}, {time}',
  'table.talk': 'Ablauf, in Minuten und Sekunden',
  'column.from': 'ab',
  'column.lasts': 'Dauer',

  'heading.talk-facts': 'Die Fakten',
  'heading.talk-filter': 'Der Filter',
  'heading.talk-as-found': 'Wie er ankam',
  'heading.talk-opened': 'Geöffnet: der Weg des Wassers',
  'heading.talk-wrong': 'Was nicht stimmt',
  'heading.talk-cleaned': 'Gereinigt, bevor etwas geändert ist',
  'heading.talk-changed': 'Was geändert wird',
  'heading.talk-packed': 'Bestückt, in der Folge des Wassers',
  'heading.talk-leak': 'Dichtheitsprüfung',
  'heading.talk-as-left': 'Wie er übergeben wird',
  'heading.talk-does': 'Was er leistet',
  'heading.talk-costs': 'Was er kostet',
  'heading.talk-limits': 'Was das nicht zeigt',

  'talk.filter': '{filter} ({family}) an einem Becken mit {volume}.',
  'talk.rated.air': 'Blasen heben sein Wasser: Das Rohr allein höbe {flow}, das ist gerechnet.',
  'talk.rated': 'Die Nennleistung seiner Pumpe ist {flow}.',
  'talk.safe': 'Alles im Becken ist ausgesteckt, bevor eine Hand ins Wasser kommt.',
  'talk.timed': 'Zustand {state}: {flow}; {runs} Messungen mit {vessel}.',
  'talk.chamber': '{chamber}: {media}.',
  'talk.altered': '{item}.',
  'talk.cuts': 'Zeilen der Schnittliste: {count}; das Arbeitsblatt zeichnet jede im Maßstab.',
  'talk.leak':
    'Er steht 30 Minuten lang voll und laufend auf trockenem Papier (gängige Praxis, ohne Quelle); jede Feuchte heißt nicht bestanden.',
  'talk.clean.found': 'Sauber und bestückt, wie er ist, sollten {flow} fließen; das ist gerechnet.',
  'talk.clean.planned': 'Sauber und bestückt wie geplant, sollten {flow} fließen; das ist gerechnet.',
  'talk.clean.left': 'Sauber und bestückt, wie er jetzt ist, sollten {flow} fließen; das ist gerechnet.',
  'talk.misses': '{share} des Wassers laufen an den mechanischen Medien vorbei.',
  'talk.carries':
    '{day} nach einer Reinigung bewältigt er {feed} Trockenfutter: ein Becken von {heavy} bei schwerem bis {light} bei leichtem Besatz.',
  'talk.interval': 'Reinigungsintervall: etwa {interval}, auf einen Faktor drei nach oben und unten genau.',
  'talk.before':
    'Gereinigt mit der alten Bestückung bewältigte er {day} nach einer Reinigung {feed}; Zeit bis zur Reinigung: {interval}.',
  'talk.year':
    'Ein Jahr Betrieb kostet {cost}: Strom, Medien, die verbraucht werden, sein Preis verteilt auf die Lebensdauer.',

  'description.medium': '{amount} {medium}, {price}',
  'description.part': '{count} × {part}, {price}',
  'description.parts': 'Teile und Medien:',
  'description.chapters': 'Kapitel:',
  'description.safety':
    'Bevor eine Hand ins Wasser kommt, ist alles im Becken ausgesteckt; über die Installation entscheiden örtliche Vorschriften und eine Elektrofachkraft.',
};
