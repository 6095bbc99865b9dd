/** Sätze des Pflegeplans für den Besitzer des Filters. */
export const careSentences: Readonly<Record<string, string>> = {
  'care.title': '{filter}: Pflegeplan',
  'care.description': 'Was zu stoppen, zu spülen und zu messen ist und wann Hilfe nötig ist, für {filter}.',
  'care.lead.found': 'Für alle, die ihn in Betrieb halten, bestückt wie vorgefunden.',
  'care.lead.planned': 'Für alle, die ihn in Betrieb halten, sobald er wie geplant bestückt ist.',
  'care.lead.left': 'Für alle, die ihn in Betrieb halten, bestückt wie übergeben.',

  'heading.care-jug': 'Ist es Zeit zu reinigen?',
  'jug.how.vessel':
    'Den Auslauf in ein Gefäß mit Marke laufen lassen, jedes Mal an derselben Stelle gehalten, und die Zeit bis zum Füllen stoppen, dreimal; die mittlere gilt. Eingesteckt ist dabei nur der Filter, und keine Hand ist im Wasser.',
  'jug.sump':
    'Was in das Gefäß läuft, fehlt im Abteil mit der Pumpe: nur so viel entnehmen, dass die Pumpe keine Luft zieht, und es vor der nächsten Messung zurückgießen.',
  'jug.how.bag':
    'Der Auslauf liegt unter Wasser, darum fängt ein Beutel den Durchfluss auf: wenn alle Stecker gezogen sind, einen dünnen, flach gedrückten Beutel ohne Löcher um den Auslauf binden. Nur den Filter einstecken, die Hände nicht im Wasser; nach der Zeit seinen Stecker ziehen, den Beutel abnehmen und messen, was darin ist. Dreimal; der mittlere Wert gilt (gängige Praxis, ohne Quelle).',
  'jug.when.vessel':
    'Bei {share} des sauberen Durchflusses ist die Reinigung fällig (gängige Praxis, ohne Quelle): Das Gefäß braucht dann ein Drittel länger.',
  'jug.when.bag':
    'Bei {share} des sauberen Durchflusses ist die Reinigung fällig (gängige Praxis, ohne Quelle): Im Beutel ist dann ein Viertel weniger.',
  'jug.timed': 'Der saubere Durchfluss wurde bei der Übergabe gestoppt: {flow}.',
  'jug.computed.vessel':
    'Der saubere Durchfluss ist gerechnet, {flow}: in der ersten Woche stoppen, die Zeit aufschreiben und statt der Tabelle ein Drittel mehr als diese Zeit nehmen.',
  'jug.computed.bag':
    'Der saubere Durchfluss ist gerechnet, {flow}: in der ersten Woche auffangen, das Volumen aufschreiben und statt der Tabelle drei Viertel davon nehmen.',
  'table.jug.vessel': 'Zeit bis zum Füllen',
  'table.jug.bag': 'Was der Beutel auffängt',
  'column.given.vessel': 'Gefäß',
  'column.given.bag': 'eingesteckt für',
  'column.when-clean': 'sauber',
  'column.clean-at.vessel': 'reinigen ab',
  'column.clean-at.bag': 'reinigen unter',
  'blank.own.vessel': 'Eigenes Gefäß',
  'blank.own.bag': 'Eigene Zeit',
  'blank.own-clean.vessel': 'Seine Zeit, wenn sauber',
  'blank.own-clean.bag': 'Volumen dazu, wenn sauber',

  'heading.care-cleaning': 'Reinigung',
  'table.care-beds': 'Schichten in der Folge des Wassers',
  'column.care': 'was zu tun ist',
  'column.when': 'wann',
  'care.press': 'in Beckenwasser ausdrücken, bis es fast klar abläuft',
  'care.rinse': 'in Beckenwasser spülen, bis es fast klar abläuft',
  'care.sock': 'gegen eine saubere wechseln; ohne Seife und Weichspüler waschen',
  'care.swish': 'in Beckenwasser schwenken, mehr nicht',
  'care.draw-off': 'Schmutz mit Schlauch oder Mulmglocke absaugen, jeweils von höchstens einem Drittel',
  'care.moved': 'nichts, solange es sich bewegt: Das Wasser hält es sauber',
  'care.when-moved': 'jede Woche ansehen, ob sich alles bewegt',
  'care.replace': 'ersetzen',
  'care.each-time': 'bei jeder Reinigung, Intervall etwa {interval}',
  'care.clean-then-replace': '{clean}; am Ende ersetzen',
  'care.ends.clogs':
    'bei jeder Reinigung, Intervall etwa {time}: Es setzt sich bis dahin zu und wird nicht gewaschen, sondern ersetzt',
  'care.ends.full': 'etwa {time} nach dem Einsetzen: Mehr kann es nicht aufnehmen',
  'care.ends.calendar': '{time} nach dem Einsetzen, gleich wie es aussieht',
  'care.each-time-then': 'reinigen {each}; ersetzen {ends}',
  'care.when-dirty': 'nur wenn Schmutz zu sehen ist, und dann an einem anderen Tag als die anderen',
  'care.when-dirty.alone': 'nur wenn Schmutz zu sehen ist',
  'care.flow-decides': 'Der Durchfluss entscheidet, nicht der Kalender.',
  'care.calendar-decides':
    'Sobald die erste Schicht verstopft ist, geht das Wasser an ihr vorbei; {flow} des sauberen Durchflusses kommen noch an, und die Messung des Durchflusses zeigt es nicht: nach diesen Zeiten reinigen, und früher, wo die Messung es verlangt.',
  'care.stagger':
    'Die Tabelle nennt jede Schicht: bei einer Reinigung die Hälfte davon nehmen, die anderen zwei Wochen später (gängige Praxis, ohne Quelle).',
  'heading.care-media': 'Was bei den Medien zu beachten ist',
  'heading.care-steps': 'Wie',
  'care.steps.moved': 'Nur wo Medien zusammenkleben oder ein Sieb verstopft ist:',
  'care.step.open.canister':
    'Einen Eimer aus dem Becken füllen. Stecker ziehen, Hähne schließen, Schläuche mit den Enden über dem Wasserspiegel trennen und den Filter über einer Wanne öffnen.',
  'care.step.open.sump':
    'Einen Eimer aus dem Becken füllen. Stecker ziehen, das Wasser herunterlaufen lassen und die Medien samt dem, was sie hält, über einem Eimer herausheben.',
  'care.step.open.hanging':
    'Einen Eimer aus dem Becken füllen. Stecker ziehen, den Kasten leerlaufen lassen und die Medien über einer Wanne herausheben.',
  'care.step.open.submerged':
    'Einen Eimer aus dem Becken füllen. Stecker ziehen, einen Beutel oder eine Schale unter den Filter halten und ihn herausheben.',
  'care.step.open.air':
    'Einen Eimer aus dem Becken füllen. Alle Stecker ziehen, einen Beutel oder eine Schale unter den Filter halten und ihn herausheben.',
  'care.step.open.built-in':
    'Einen Eimer aus dem Becken füllen. Alle Stecker ziehen und höchstens ein Drittel der Medien anfassen: Der Rest bleibt, wie er liegt.',
  'care.step.start.air':
    'Unter Wasser zurückstellen, Steigrohr und Luftschlauch fest aufgesteckt, dann die Luftpumpe einstecken.',
  'care.step.start.built-in': 'Prüfen, dass kein Wasser um die Medien herumlaufen kann, dann einstecken.',
  'care.step.look.air': 'Prüfen, dass die Blasen wie vorher steigen und kein Wasser im Luftschlauch steht.',
  'care.step.look.built-in': 'Prüfen, dass das Wasser so kräftig austritt wie vorher.',
  'calendar.air': 'Luftschlauch, Rückschlagventil und Stein: frei, und kein Wasser im Schlauch',
  'care.step.rinse.built-in':
    'Dieses Drittel im Eimer spülen oder seinen Schmutz mit einem Schlauch abziehen; nie mit Leitungswasser, nie mit Seife.',
  'care.step.rinse.moved':
    'Die Siebe frei machen und im Eimer nur spülen, was zusammenklebt; nie mit Leitungswasser, nie mit Seife.',
  'care.step.back.built-in':
    'Was herausgenommen wurde, wieder so hinlegen, wie es lag, wie in der Zeichnung.',
  'care.step.rinse':
    'Im Eimer spülen, was die Tabelle nennt, nie unter dem Hahn, nie mit Seife; was wartet, bleibt nass.',
  'care.step.back': 'Alles an seinen Platz und in dieselbe Lage zurück, wie in der Zeichnung.',
  'care.step.start.canister':
    'Schließen, füllen, Hähne öffnen, einstecken und kippen, bis die Luft heraus ist.',
  'care.step.start.canister.column':
    'Schließen, langsam von unten füllen, Hähne öffnen und einstecken, die ersten Liter in einen Eimer.',
  'care.step.start.sump':
    'Bis zur Marke füllen, einstecken und prüfen, dass das Wasser durch die Medien geht und nicht über eine Kante.',
  'care.step.start.hanging':
    'Den Kasten mit Beckenwasser füllen, dann einstecken; er darf nie trocken laufen.',
  'care.step.start.submerged':
    'Unter Wasser zurückstellen, die Luft herauslassen, dann einstecken; er darf nie trocken laufen.',
  'care.step.look.canister':
    'Trockenes Papier darunterlegen und nach einer Stunde und am nächsten Tag ansehen.',
  'care.step.look.sump':
    'Den Stecker der Pumpe noch einmal ziehen: Was herunterläuft, muss im Kasten bleiben.',
  'care.step.look.hanging': 'Er muss waagerecht hängen, und über seinen Rand darf nichts laufen.',
  'care.step.look.submerged': 'Das Wasser muss so kräftig austreten wie vorher.',
  'drawing.care': 'Was wo liegt, im Schnitt.',

  'heading.care-tests': 'Wassermessungen nach der Arbeit',
  'care.tests.why':
    'Medien, die bewegt, gespült oder ersetzt wurden, haben einige Wochen weniger Bakterien: in der ersten Woche nur halb so viel füttern und das Wasser messen (gängige Praxis, ohne Quelle).',
  'care.tests.rise':
    'Zeigt sich überhaupt Ammoniak oder Nitrit, nicht mehr füttern, ein Viertel des Wassers wechseln und täglich messen, bis keines von beiden mehr zu sehen ist (gängige Praxis, ohne Quelle).',
  'care.tests.count': 'Die Tage zählen ab dem Tag, an dem er wieder im Becken läuft.',
  'care.tests.dated':
    'Die Tage zählen ab dem {day}; läuft er an einem anderen Tag wieder im Becken, ab diesem zählen.',
  'table.water-tests': 'Ammoniak und Nitrit, wie das Testbesteck sie zählt',
  'column.day': 'Tag',
  'column.date': 'Datum',
  'column.ammonia': 'Ammoniak',
  'column.nitrite': 'Nitrit',
  'column.done': 'beobachtet, getan',

  'heading.care-calendar': 'Nach dem Kalender',
  'table.care-calendar': 'Anzusehen, gleich wie der Durchfluss ist (gängige Praxis, ohne Quelle)',
  'column.every': 'wie oft',
  'every.week': 'jede Woche',
  'every.month': 'jeden Monat',
  'every.year': 'jedes Jahr',
  'calendar.strainer': 'Ansaugkorb, frei gemacht, wo etwas daran hängt',
  'calendar.leaks.canister':
    'Papier unter dem Filter, Hähne, Schlauchenden und tiefste Stelle des Kabels: trocken',
  'calendar.leaks.sump': 'Rohre, Verbindungen und Boden darunter: trocken',
  'calendar.leaks.hanging': 'Rand, Papier darunter und tiefste Stelle des Kabels: trocken',
  'calendar.drip-loop': 'Kabel: heil, und in einer Schlaufe, die tiefer hängt als seine Steckdose',
  'care.spill.intake-hose-off':
    'Geht der Ansaugschlauch ab, laufen bis zu {volume} aus dem Becken: Sein Spiegel fällt um {fall}. Das Schlauchende über den Spiegel heben oder den Hahn schließen.',
  'care.spill.intake-hose-off.room':
    'Geht der Ansaugschlauch ab, laufen bis zu {volume} aus dem Becken: Sein Spiegel fällt um {fall}, und Platz ist für {room}. Das Schlauchende über den Spiegel heben oder den Hahn schließen.',
  'care.spill.outlet-hose-off-running':
    'Geht der Auslaufschlauch bei laufender Pumpe ab, pumpt sie bis zu {volume} auf den Boden: Der Spiegel fällt um {fall}. Den Stecker ziehen.',
  'care.spill.outlet-hose-off-running.room':
    'Geht der Auslaufschlauch bei laufender Pumpe ab, pumpt sie bis zu {volume} heraus: Der Spiegel fällt um {fall}, und Platz ist für {room}. Den Stecker ziehen.',
  'care.spill.outlet-hose-off-stopped':
    'Geht der Auslaufschlauch bei stehender Pumpe ab, laufen bis zu {volume} zurück: Der Spiegel fällt um {fall}.',
  'care.spill.outlet-hose-off-stopped.room':
    'Geht der Auslaufschlauch bei stehender Pumpe ab, laufen bis zu {volume} zurück: Der Spiegel fällt um {fall}, und Platz ist für {room}.',
  'care.spill.power-fails':
    'Fällt der Strom aus, laufen {volume} aus dem Becken herab: Sein Spiegel fällt um {fall}. Einmal im Monat abschalten und zusehen.',
  'care.spill.power-fails.room':
    'Fällt der Strom aus, laufen {volume} aus dem Becken herab: Sein Spiegel fällt um {fall}, und unten ist Platz für {room}. Einmal im Monat abschalten und zusehen.',
  'calendar.siphon-hole': 'Belüftungslöcher in den Rohren dicht unter dem Wasserspiegel: offen',
  'calendar.flow': 'Durchfluss gemessen und aufgeschrieben',
  'calendar.rcd': 'Prüftaste des Fehlerstrom-Schutzschalters',
  'calendar.rotor': 'Rotor, Achse und Rotorkammer, sauber gewischt',
  'calendar.hoses': 'Schläuche und Hähne, durchgebürstet',
  'calendar.seal': 'Hauptdichtung, gewischt, angesehen, dünn mit Silikonfett eingefettet',

  'heading.care-spills': 'Wie viel Wasser auslaufen kann',
  'heading.care-power-cut': 'Nach einem Stromausfall',
  'heading.care-call': 'Wann nachfragen',
  'care.call': 'Trifft eines davon zu, in der Werkstatt nachfragen, die daran gearbeitet hat.',
  'care.call.by': 'Trifft eines davon zu, nachfragen bei: {by}.',
  'call.flow': 'Der Durchfluss ist auch nach der Reinigung so klein, dass schon wieder eine fällig wäre.',
  'call.damp.canister':
    'Das Papier darunter ist feucht, oder ein Schlauchende tropft: zuerst den Stecker ziehen.',
  'call.damp.sump':
    'Ein Rohr tropft, oder der Boden darunter ist feucht: zuerst den Stecker der Pumpe ziehen.',
  'call.damp.hanging':
    'Wasser läuft über seinen Rand, oder das Papier darunter ist feucht: zuerst den Stecker ziehen.',
  'call.noise': 'Eine halbe Stunde nach dem Anlaufen klappert oder brummt er.',
  'call.noise.air': 'Die Luftpumpe brummt lauter als vorher, oder es steigen weniger Blasen auf.',
  'call.device':
    'Er löst den Fehlerstrom-Schutzschalter aus: ausgesteckt lassen. Leitungen sind Sache einer Elektrofachkraft.',
  'call.smell': 'Er riecht nach faulen Eiern: den Raum lüften, nicht ins Becken anlaufen lassen.',
  'call.animals':
    'Tiere schnappen nach Luft oder sehen krank aus: Wasser wechseln, eine Tierarztpraxis fragen.',
};
