/** Was Schläuche, Höhen und Ausläufe für Raum und Becken bedeuten. */
export const siteSentences: Readonly<Record<string, string>> = {
  'site.leaks.water-out': 'lässt Wasser aus',
  'site.leaks.air-in': 'zieht Luft',
  'site.leaks.neither': 'tropft nicht und zieht keine Luft',
  'site.cause.intake-hose-off': 'Ansaugschlauch am Filter ab',
  'site.cause.outlet-hose-off-running': 'Auslaufschlauch ab, Pumpe läuft',
  'site.cause.outlet-hose-off-stopped': 'Auslaufschlauch ab, Pumpe steht',
  'site.cause.power-fails': 'Stromausfall',
  'site.ends.hole': 'bis zum Belüftungsloch',
  'site.ends.mouth': 'bis zur Mündung des Schlauchs',
  'site.ends.edge': 'bis zur Überlaufkante des Beckens',
  'site.spill': '{cause}: {volume} laufen aus dem Becken; der Wasserspiegel fällt um {fall}, {end}.',
  'site.spill.room':
    '{cause}: {volume} laufen aus dem Becken; der Wasserspiegel fällt um {fall}, {end}. Filterbecken oder Wanne fassen noch {room}.',
  'site.spill.timed':
    '{cause}: {volume} laufen aus dem Becken, anfangs {flow}, also in etwa {time}; der Wasserspiegel fällt um {fall}, {end}.',
  'site.spill.timed.room':
    '{cause}: {volume} laufen aus dem Becken, anfangs {flow}, also in etwa {time}; der Wasserspiegel fällt um {fall}, {end}. Filterbecken oder Wanne fassen noch {room}.',
  'site.outlet': 'Der Auslauf',
  'site.outlet.of-several': 'Auslauf {number}',
  'site.stands.assumed': '{stands} (im Fach bekannt, nicht nachgeschlagen)',
  'site.jet.slow':
    '{outlet} gibt einen Strahl von {bore} Weite mit {speed} ins Becken, nicht schneller als die {stands}, die schwache Schwimmer auf Dauer aushalten.',
  'site.jet':
    '{outlet} gibt einen Strahl von {bore} Weite mit {speed} ins Becken; in seiner Mitte ist er auf {reach} schneller als die {stands}, die schwache Schwimmer auf Dauer aushalten, in freiem Wasser (an Scheibe oder Oberfläche entlang trägt er weiter).',
  'site.edge.walls': 'Wände des Kastens',
  'site.room': 'Im Betrieb fasst der Kasten noch {room}.',
  'site.room.left': 'Im Betrieb fasst der Kasten noch {room}, nach dem Abschalten noch {left}.',
  'site.room.over':
    'Im Betrieb fasst der Kasten noch {room}; nach dem Abschalten kommen {over} mehr herunter und laufen auf den Boden.',
};
