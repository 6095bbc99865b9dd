/** Warnungen, Herstellerangaben, Zeichnung und Schritte eines Plans. */
export const warningSentences: Readonly<Record<string, string>> = {
  'warning.temperature-outside-kinetics':
    'Die Bakterien wurden zwischen {least} und {most} gemessen; darunter ist der Verlauf extrapoliert, darüber fällt ihre Leistung, während die Modelle sie steigen lassen.',
  'warning.pH-outside-kinetics':
    'Was der pH den Bakterien lässt, wurde von {least} bis {most} gemessen; darunter ist die Linie bis auf null bei {nothing} extrapoliert, darüber gilt volle Leistung.',
  'warning.no-feed-no-dirt':
    'Im Becken wird nicht gefüttert, also entsteht kein Schmutz: Die Leistung gilt für saubere Medien.',
  'warning.kinetics-are-fresh-water':
    'Die Leistung der Bakterien wurde in Süßwasser gemessen; gesalzene Becken reifen langsamer und bewältigen womöglich weniger.',
  'warning.soft-acid-water':
    'Unter pH {acid} oder fast ohne Alkalinität reifen Becken mit anderen Mikroben als den gemessenen (aus dem Gedächtnis): Der Filter leistet womöglich mehr als gesagt, und auf einmal weniger, wenn ein Wasserwechsel den pH hebt. Fast alles ist dort harmloses Ammonium, bis der pH steigt.',
  'warning.cold-water':
    'Unter {cold} wurden kaum Schichten gemessen, und Bakterien wachsen kaum: Nach jeder Reinigung und jedem Verlust brauchen sie Monate. In der Kälte weniger füttern.',
  'warning.sea-water-not-counted':
    'Lebendgestein, tiefer Sand und Abschäumer eines Meerwasserbeckens sind nicht gezählt, auch nicht, was dort Nitrat abbaut: Das Becken steht womöglich besser da als gesagt.',
  'warning.few-pieces-across':
    'Die Kammer ist nur {pieces} Stücke „{medium}“ breit: An ihren Wänden läuft mehr Wasser als gerechnet.',
  'warning.bed-outside-law':
    'Die Schicht „{medium}“ liegt mit Porenanteil oder Geschwindigkeit außerhalb des Bereichs, für den ihr Widerstandsgesetz gemessen wurde.',
  'warning.dirt-outside-law':
    'Die Schicht „{medium}“ enthält mehr Schmutz, als die Messungen zum Zusetzen abdecken; verstopft ist sie, ihr Widerstand aber nur geschätzt.',
  'warning.interval-below-practice':
    'Eine Reinigung nach {time} ist früher, als Filter in der Regel geöffnet werden ({soonest}; gängige Praxis, ohne Quelle). Die Formel für das Zusetzen stammt aus Messungen an Sand und ist auf dieses Medium übertragen, auf einen Faktor 3,5 genau: nach einigen Tagen nachsehen, bevor man sich danach richtet, und mit dem Wert vor allem Bestückungen vergleichen.',
  'warning.interval-beyond-practice':
    'Mehr als ein Jahr, bis etwas verstopft, gilt für den Schmutz des Futters allein. Was Pflanzen abwerfen, Festes über einem halben Millimeter und Bewuchs der Medien sind nicht gezählt: die Medien mindestens alle {look} ansehen (gängige Praxis, ohne Quelle).',
  'warning.pump-speed-outside-affinity':
    'Unter einem Drittel ihrer Drehzahl weicht eine Pumpe von den Ähnlichkeitsgesetzen ab, die hier verwendet werden.',
  'warning.pump-flow-outside-affinity':
    'Die gedrosselte Pumpe fördert {share} dessen, wofür sie bei dieser Drehzahl ausgelegt ist; unter einem Drittel taugen die Ähnlichkeitsgesetze, die hier verwendet werden, wenig.',
  'warning.air-stays-in-hose':
    'Das Wasser läuft mit {speed} durch den {hose}; Luft an seinem höchsten Punkt nimmt es erst ab etwa {need} mit nach unten. Sie kann dort bleiben und den Durchfluss drosseln.',
  'warning.water-near-boiling':
    'Am Ort „{place}“ herrschen {pressure} absolut, weniger als ein Meter Wassersäule über den {boiling}, bei denen Wasser siedet: Die Pumpe kann kavitieren und die Wassersäule abreißen.',
  'warning.air-comes-out':
    'Am Ort „{place}“ liegt der Druck um {below} unter dem der Luft: Gelöste Luft perlt aus, und jedes Leck zieht mehr davon an.',
  'warning.pump-above-water':
    'Die Pumpe steht {above} über dem Wasser: Sie kann ihren Schlauch nicht selbst füllen und muss vor jedem Start mit Wasser gefüllt werden.',
  'warning.water-runs-back':
    'Durch die zweite Pumpe läuft Wasser zurück, und zwar {flow}: Ein Rückschlagventil dahinter hielte es auf.',
  'warning.coil-outside-law':
    'Der {hose} ist enger gewickelt, als es die Messungen an Schlauchwickeln abdecken.',
  'warning.tap-outside-law':
    'Der Hahn am {hose} ist weiter geschlossen, als es die Messungen an Hähnen abdecken; sein Druckverlust ist extrapoliert.',
  'warning.jet-outside-law':
    'Der Strahl (Reynolds-Zahl {Re}) ist langsamer als die gemessenen Strahlen; er kann sich früher oder später ausbreiten als angegeben.',
  'part.intake-hump': 'höchster Punkt des Ansaugschlauchs',
  'part.housing': 'Gehäuse und Deckel',
  'part.pump-inlet': 'Eingang der Pumpe',
  'part.pump-outlet': 'Ausgang der Pumpe',
  'part.outlet-hump': 'höchster Punkt des Auslaufschlauchs',
  'warning.air-lift-outside-law':
    'Das Steigrohr liegt außerhalb des Bereichs, in dem Luftheber gemessen wurden: Weiten von 6 bis 30 mm (0,24 bis 1,2 in), Luft bis etwa 4 m/s (13 ft/s) im Rohr, Reynolds-Zahlen ab 500.',
  'warning.air-lift-is-short':
    'Die Formel für Luftheber wurde an Rohren von mehreren Metern geprüft; bei einem von 0,8 m (2,6 ft) ergab sie bis zum 1,7-Fachen des gemessenen Durchflusses: diesen also auslitern.',
  'warning.flow-beyond-pump-curve':
    'Der Durchfluss liegt jenseits des letzten Punkts der Pumpenkennlinie, die dort geradlinig fortgesetzt ist.',
};

export const claimSentences: Readonly<Record<string, string>> = {
  'claim.no-quantity': 'Darin steht keine Größe.',
  'claim.nothing-to-hold': 'Es gibt nichts Gemessenes oder Gerechnetes zum Vergleich.',
  'claim.unit-unclear': '„{text}“ kann in mehr als einer Einheit gemeint sein.',
  'claim.number-unclear': '„{text}“ kann ein Dezimalzeichen oder ein Tausenderzeichen enthalten.',
  'claim.unclear': '„{text}“ lässt sich nicht als eine Größe lesen.',

  'claim.verbatim': '„{text}“',
  'claim.quoted': '„{text}“',
  'claim.quoted-before': '„{text}“ (vorher angegeben)',
  'claim.pair.same': '{first} und {second} sind bis auf das Runden gleich.',
  'claim.pair.fits': '{first} und {second} passen, wenn {meant} gemeint ist; die Angabe sagt es nicht.',
  'claim.pair.differs':
    '{first} und {second} sind nicht gleich: Das erste ist das {ratio}-Fache des zweiten.',
  'claim.pair.differs-by':
    '{first} und {second} sind nicht gleich: Das erste ist das {ratio}-Fache des zweiten. {slip}',
  'claim.pair.unclear': '{first} und {second} lassen sich nicht vergleichen.',
  'slip.imperial-gallon': 'Die Zahl passt zur britischen Gallone.',
  'slip.us-gallon': 'Die Zahl passt zur US-Gallone.',
  'slip.swapped-digits': 'Zwei Ziffern scheinen vertauscht.',
  'slip.factor-ten': 'Eine Ziffer oder eine Null scheint verloren oder hinzugekommen.',
  'slip.factor-sixty': 'Minuten und Stunden scheinen vertauscht.',
  'slip.not-converted': 'Die Zahl wurde gar nicht umgerechnet.',
  'slip.rounded-factor': 'Sie liegen höchstens ein halbes Prozent auseinander, wie bei gerundetem Umrechnen.',
  'slip.digit-slip': 'Eine Ziffer scheint falsch.',
  'slip.unrelated': 'Kein einzelner Fehler erklärt es.',

  'claim.zero': 'Mit einer Angabe von 0 lässt sich nichts vergleichen.',
  'claim.share': 'das {ratio}-Fache der Angabe',
  'claim.within-doubt':
    '{detail} Das liegt in dem Bereich, in dem unsere eigene Zahl ungewiss ist, {doubt} nach beiden Seiten.',
  'claim.flow': 'Am Becken sind es {ours}, {share}.',
  'claim.flow-and-rated':
    'Am Becken sind es {ours}, {share}. Die Pumpe allein, ohne Förderhöhe, liefert {rated}.',
  'claim.pump-flow': 'Die Pumpe allein, ohne Förderhöhe, liefert {ours}, {share}.',
  'claim.pump-not-measured': 'Die Pumpe allein wurde nicht gemessen.',
  'claim.is-the-rating':
    'Diese Angabe gilt hier als Nennleistung der Pumpe; mit ihr selbst lässt sie sich nicht vergleichen.',
  'claim.not-independent':
    'Der Auftrag nimmt eben diese Angabe als seinen Wert, und gemessen wurde nichts: Es gibt nichts Unabhängiges, mit dem sie sich vergleichen ließe.',
  'claim.at-the-tank':
    '{detail} Am Becken, hinter Schläuchen, Höhenunterschied und Medien, sind es {flow}, das {ratio}-Fache davon.',
  'claim.tank':
    'Bei normalem Besatz reicht er für {normal}, {share}; bei leichtem für {light}, bei schwerem für {heavy}.',
  'claim.above-range': 'über dem Bereich, das {ratio}-Fache seines oberen Endes',
  'claim.inside-range': 'im Bereich, nach {percent} % des Wegs nach oben',
  'claim.below-range': 'unter dem Bereich, das {ratio}-Fache seines unteren Endes',
  'claim.power-measured': 'Am Stecker gemessen sind es {ours}, {share}.',
  'claim.power': 'Gerechnet wird mit {ours}, {share}.',
  'claim.head': 'Der Durchfluss endet bei {ours}, {share}.',
  'claim.media': 'Hinein passen {ours} Medien, {share}.',
  'claim.area-per-mass':
    'Eine Fläche je Masse ist keine Fläche im Filter. Solche Flächen werden mit Gas gemessen und liegen in Poren, in die keine Bakterien passen; diese leben auf der Außenfläche.',
  'claim.area-usable': 'Das liegt in dem, was die Außenfläche eines Mediums bieten kann (3 m2/L).',
  'claim.area-by-gas':
    'Das ist das {times}-Fache der 3 m2/L, die Bakterien höchstens nutzen können. Solche Flächen werden mit Gas gemessen und liegen in Poren, in die keine Bakterien passen; diese leben auf der Außenfläche.',
  'claim.either': '„{text}“ sagt nicht, welche Einheit gemeint ist. {meanings}',
  'claim.meaning': 'In {unit} heißt es {claimed}: {detail}',
};

export const drawingSentences: Readonly<Record<string, string>> = {
  'section.title': 'Schnitt durch den Filter',
  'section.state': '{caption}: {path}',
  'section.in': 'ein',
  'section.out': 'aus',
  'section.tank': 'Becken',
  'section.empty': 'leer',
  'section.bed': '{medium}, {depth}, {chamber}',
  'section.bed-laid': '{bed}',
  'section.stage': '{letter} {stage}',
  'section.stages': '{stages}; gezählt nach dem Wasser',
  'section.length': '{measurement} {length}',
  'section.water': 'Wasser; Breite nach dem Anteil am Durchfluss',
  'section.water-not-reckoned': 'Wasser; Anteile nicht gerechnet',
  'section.water-in-medium': 'Wasser durch ein Medium, über die ganze Breite',
  'section.water-past': 'Wasser an Medien vorbei, in % des Durchflusses',
  'section.way-past': 'Weg an Medien vorbei',
  'section.water-past-much': 'ebenso, {percent} % des Durchflusses oder mehr',

  'bed.cut': '{bed}, ringsum {gap} zu klein geschnitten',
  'bed.cut.share': '{bed}, ringsum {gap} zu klein geschnitten, {share} des Wassers außen herum',
  'bed.bag': '{bed}, im Netzbeutel',
  'bed.bag.share': '{bed}, im Netzbeutel, {share} des Wassers in den Ecken daran vorbei',

  'way.path': 'Das Wasser läuft vom Becken {stations} und {end}.',
  'way.path-missed': 'Das Wasser läuft vom Becken {stations} und {end}; vom Durchfluss: {missed}.',
  'way.then': '{first}, dann {next}',
  'way.pump': 'durch die Pumpe',
  'way.end': 'zurück ins Becken',
  'way.end.pump': 'über die Pumpe zurück ins Becken',
  'way.up': 'aufwärts durch {chamber} ({beds})',
  'way.down': 'abwärts durch {chamber} ({beds})',
  'way.across': 'quer durch {chamber} ({beds})',
  'way.up.empty': 'aufwärts durch {chamber} (leer)',
  'way.down.empty': 'abwärts durch {chamber} (leer)',
  'way.across.empty': 'quer durch {chamber} (leer)',
  'way.bed': '{depth} {medium}, {stage}',
  'way.bed.unknown': '{depth} {medium}',
  'way.past': '{share} an {chamber} vorbei',
  'way.through': '{share} auf dem Weg „{way}“',
  'way.over': '{share} über „{way}“',
};

export const planStepSentences: Readonly<Record<string, string>> = {
  'plan-step.get': '{volume} {medium} besorgen und ausspülen.',
  'plan-step.renew':
    '{volume} {medium} frisch bereitlegen, was die Reinigung ohnehin braucht: Was davon im Filter ist, ist verbraucht.',
  'plan-step.unplug':
    'Vor jedem Griff ins Wasser alle Geräte im Becken ausstecken; nie nur am Schalter abschalten.',
  'plan-step.plug-in':
    'Mit Tropfschlaufe und hinter einem Fehlerstrom-Schutzschalter einstecken; über die Installation entscheiden örtliche Vorschriften und Elektrofachkräfte.',
  'plan-step.open.canister':
    'Hähne schließen, Schlauchenden über den Wasserspiegel heben und den Filter über einer Wanne öffnen.',
  'plan-step.open.sump':
    'Das Wasser herunterlaufen lassen und prüfen, ob der Kasten es fasst; die Medien samt dem, was sie hält, über einem Eimer herausheben.',
  'plan-step.open.hanging':
    'Den Kasten leerlaufen lassen, mit beiden Händen vom Rand heben und über einer Wanne arbeiten.',
  'plan-step.open.submerged':
    'Vor dem Herausnehmen einen Beutel oder eine Schale unter den Filter halten, damit der Schmutz darin bleibt.',
  'plan-step.close.canister.seal':
    'Hauptdichtung reinigen und dünn mit Silikonfett einfetten; alle Verschlüsse gleichmäßig von Hand schließen.',
  'plan-step.close.canister.leaks':
    'Auf trockenem Papier in Einbauhöhe auf Dichtheit prüfen, bevor er wieder unter ein Becken kommt.',
  'plan-step.close.sump':
    'Alles zurücksetzen, bis zur Marke füllen, die Pumpe starten und dann einmal ihren Stecker ziehen: Was herunterläuft, muss im Kasten bleiben, und die Löcher, die den Rücklauf unterbrechen, müssen Luft ziehen.',
  'plan-step.close.hanging':
    'Waagerecht einhängen, vor dem Anlaufen mit Beckenwasser füllen und den Notüberlauf frei halten.',
  'plan-step.close.submerged':
    'Vor dem Anlaufen die Luft unter Wasser herauslassen; er darf nie trocken laufen.',
  'plan-step.open.air':
    'Den Luftschlauch abziehen und vor dem Herausnehmen einen Beutel oder eine Schale unter den Filter halten, damit der Schmutz darin bleibt.',
  'plan-step.open.built-in':
    'Steigrohr oder Pumpe herausziehen; was im Becken eingebaut ist, bleibt darin, und höchstens ein Drittel seiner Medien wird auf einmal angefasst.',
  'plan-step.close.air':
    'Steigrohr und Luftschlauch fest aufstecken; die Luftpumpe steht über dem Wasserspiegel, oder ihr Schlauch hat ein Rückschlagventil.',
  'plan-step.close.built-in':
    'Prüfen, dass kein Wasser um die Medien herumläuft und Steigrohr oder Pumpe dicht sitzt.',
  'plan-step.take-out':
    'Medien der Reihe nach herausnehmen, ihre Plätze notieren und in einem Eimer Beckenwasser nass halten.',
  'plan-step.cut-foam':
    'Schaumstoff mit {least} bis {most} Übermaß schneiden, von der Hand weg, mit Schnittschutzhandschuh an der anderen.',
  'plan-step.leave-empty': '{chamber} leer lassen.',
  'plan-step.pack': '{chamber} bestücken: {layers}.',
  'plan-step.pack-upright': '{chamber} von unten bestücken: {layers}.',
  'plan-step.pack-tube': '{chamber} von innen nach außen bestücken: {layers}.',
  'plan-step.layer': '{depth} {medium}',
  'plan-step.then': '{first}, dann {next}',
  'plan-step.keep-bacteria':
    'Mindestens ein Drittel der Medien, auf denen Bakterien leben, vier Wochen lang unverändert behalten, im Filter oder in einem Beutel im Becken; nie alles auf einmal ersetzen.',
  'plan-step.measure':
    'Den Durchfluss wie vorher messen; Ammoniak und Nitrit an den Tagen 1, 3, 5, 7 und 14 messen; in der ersten Woche sparsam füttern.',
  'plan-step.turn-head':
    'Den Kopf um eine halbe Drehung umsetzen; nur wo Ring, Verschlüsse, Anschlüsse und Füllrohr in beiden Lagen passen. Ansaugung und Auslauf neu beschriften.',
  'plan-step.seal-gaps':
    'Einen herausnehmbaren Streifen aus lebensmittelechtem Silikon oder geschlossenzelligem Schaum neben die Medien jeder Kammer legen; vorgesehene Entlastungen frei lassen.',
  'plan-step.renew-end-seals':
    'Neue Dichtringe in der gemessenen Größe an Endkappen und Sitze setzen; Nuten säubern, dünn mit Silikonfett fetten, von Hand andrücken.',
  'plan-step.trim-sleeve':
    'Die Schaumstoffhülse 2 bis 3 mm (0,08 bis 0,12 in) länger schneiden als der Raum zwischen den Endkappen, Enden gerade, damit beide darauf drücken.',
  'plan-step.turn-cartridge':
    'Die Patrone spülen und um eine halbe Drehung umsetzen, damit als Nächstes die Seite den Schmutz aufnimmt, die vom Zulauf abgewandt lag.',
  'plan-step.more-socks':
    'Eine weitere Socke mit eigenem Ring neben die anderen hängen; den Rand, über den eine volle Socke läuft, frei lassen.',
  'plan-step.clear-holes':
    'Die Tropfplatte herausheben und jedes Loch mit Bürste oder Holzspieß freimachen, nie weiter, als es ist.',
  'plan-step.close-upper-slots':
    'Die oberen Schlitze abdecken; unten mindestens das Dreifache der Ansaugfläche der Pumpe offen lassen.',
  'plan-step.hose-bore':
    'Schlauch mit {bore} Innendurchmesser samt passenden Tüllen und Schellen einsetzen; nur wo die Anschlüsse von Kopf und Armaturen Tüllen dieser Weite aufnehmen.',
  'plan-step.level-gravel':
    'Den Kies über der blanken Platte von vorn nach hinten ebnen und ein Netz oder einen flachen Stein legen, wo Tiere graben.',
  'plan-step.lengthen-lift-tube':
    'Ein längeres Rohr oder ein Stück auf das Steigrohr setzen, sodass es am Wasserspiegel endet; die Weite beibehalten.',
  'plan-step.siphon-hole':
    'In jedes Rohr, das ins Becken hängt, {depth} unter dem Wasserspiegel ein Belüftungsloch von 4 bis 6 mm (0,16 bis 0,24 in) bohren (gängige Praxis, ohne Quelle); trocknen, Späne entfernen und bei jeder Reinigung nachsehen, ob es offen ist.',
  'plan-step.shorten-hose': 'Die Schläuche auf je {length} kürzen, Enden gerade und sauber.',
  'plan-step.lower-outlet':
    'Den Auslauf unter den Wasserspiegel legen; dicht unter der Wasserlinie ein kleines Belüftungsloch bohren oder offen lassen.',
};
