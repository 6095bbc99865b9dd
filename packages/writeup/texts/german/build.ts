/** Sätze des Arbeitsblatts: was besorgt und geschnitten wird, und jeder Schritt vom Öffnen bis zum Wiederanlaufen. */
export const buildSentences: Readonly<Record<string, string>> = {
  'build.title': '{filter}: Arbeitsblatt',
  'build.subtitle.found': '{family}, wie vorgefunden',
  'build.subtitle.planned': '{family}, wie geplant',
  'build.subtitle.left': '{family}, wie übergeben',
  'build.description':
    'Was zu besorgen und zu schneiden ist, und jeder Schritt an {filter} vom Öffnen bis zum Wiederanlaufen, für die Werkbank.',
  'build.lead.found':
    'In diesem Auftrag ist keine neue Bestückung geplant; nichts wird gekauft, geschnitten oder neu eingelegt: Dieses Blatt gilt für Öffnen, Reinigen, Zurücklegen wie vorher und Prüfen.',
  'build.lead.planned':
    'Was zu besorgen und zu schneiden ist, und jeder Schritt vom Öffnen bis zum Wiederanlaufen.',
  'build.lead.left':
    'Wie er gebaut wurde: was besorgt und geschnitten wurde, und die Schritte, mit denen er wieder so gebaut wird.',

  'heading.build-parts': 'Teile und Medien',
  'table.parts-to-get': 'Was gekauft wird',
  'build.parts.none': 'Zu kaufen ist nichts: Was im Filter ist, genügt.',
  'build.parts.sold':
    'Medien sind in Zehntellitern ({step}) gezählt, wie sie verkauft werden (gängige Praxis, ohne Quelle).',
  'build.parts.cut':
    'Mengen gelten nach Volumen der gepackten Schicht; zugeschnitten ergeben die Stücke aus {medium} {cut}.',
  'build.parts.cut-and-there':
    'Mengen gelten nach Volumen der gepackten Schicht und zählen {there} {medium} mit, die im Filter waren, gleich in welcher Form; zugeschnitten ergeben alle Stücke daraus {cut}. Alte Stücke gegen die Zuschnittliste halten und mehr besorgen, wo sie zu klein sind.',
  'build.parts.placeholder': 'Ein Preis mit * ist im Auftrag nicht angegeben und steht als Platzhalter.',
  'build.price.placeholder': '{price} *',
  'part.seal-strip': 'Streifen aus lebensmittelechtem Silikon oder geschlossenzelligem Schaum',
  'part.slot-cover':
    'Abdeckung für die Schlitze an den Medien vorbei, aus lebensmittelechter Kunststoffplatte',
  'part.end-seal': 'Dichtring für eine Endkappe oder einen runden Sitz',
  'part.sock': 'Socke mit Ring',
  'part.lift-tube': 'längeres Steigrohr oder ein Stück darauf, in derselben Weite',
  'part.hose-per-metre': 'Schlauch mit {bore} Innendurchmesser',
  'column.needed': 'nötig',
  'column.to-get': 'zu besorgen',

  'heading.build-left-over': 'Was übrig bleibt',
  'left-over.good':
    '{amount} {medium}: vier Wochen nass in Beckenwasser halten, im Becken oder in einem laufenden Filter, damit die Bakterien die neuen Medien besiedeln; danach spülen, trocknen und aufheben.',
  'left-over.spent': '{amount} {medium}: verbraucht; in den Abfall.',
  'left-over.notes':
    'Mengen gelten nach Volumen der gepackten Schicht. Was bröckelt oder verstopft bleibt, wird nicht aufgehoben.',

  'heading.build-tools': 'Bereitlegen',
  'tool.measuring': 'Gefäß mit Marke, Uhr mit Sekunden, Lineal, Leistungsmesser für die Steckdose.',
  'tool.buckets':
    'Zwei Eimer, die nur für den Filter dieses Besitzers sind; in einem Beckenwasser für die Medien.',
  'tool.brushes.hoses': 'Flaschenbürste, Schlauchbürste, weiche Tücher; keine Seife.',
  'tool.brushes.intake': 'Flaschenbürste, weiche Tücher; keine Seife.',
  'tool.paper': 'Wanne, trockenes Zeitungspapier.',
  'tool.bag':
    'Schale oder Beutel zum Herausheben; ein dünner Beutel ohne Löcher mit Band, um den Durchfluss aufzufangen.',
  'tool.bag.built-in':
    'Ein dünner Beutel ohne Löcher mit Band, um den Durchfluss aufzufangen; ein Schlauch oder eine Mulmglocke zum Absaugen.',
  'tool.grease': 'Silikonfett für die Dichtung.',
  'tool.knife': 'Scharfes Messer, Brett, Winkel, Schnittschutzhandschuh.',

  'heading.build-cuts': 'Schnittliste',
  'table.cuts': 'Was geschnitten wird',
  'column.piece': 'Stück',
  'column.outline': 'Umriss',
  'column.thickness': 'Dicke',
  'column.count': 'Zahl',
  'column.for': 'für',
  'cut.sides': '{across} × {other}',
  'cut.sides.into': '{outline}, für einen Raum von {room}',
  'cut.thick.pressed': '{thickness}, liegt {lies}',
  'cut.strip': 'Streifen',
  'cut.cover': 'Abdeckung',
  'cut.cover.thick': 'die der Platte',
  'cut.strip.fills': 'füllt einen Spalt von {gap}',
  'cut.hose.intake': 'Ansaugschlauch',
  'cut.hose.outlet': 'Auslaufschlauch',
  'cut.hose.bore': 'Weite {bore}',
  'cut.from.bought': '{what}, neu',
  'cut.from.there': '{what}, aus dem Filter',
  'cut.from.both': '{what}, neu oder aus dem Filter',
  'build.cuts.foam':
    'Schaumstoff wird nach jeder Seite {over} größer geschnitten als seine Kammer, damit er sich an den Wänden hält (3 bis 5 mm (0,12 bis 0,20 in): gängige Praxis, ohne Quelle); die gestrichelte Linie ist die Kammer.',
  'build.cuts.pressed':
    'Wo zwei Maße stehen, ist das erste der Schnitt und das zweite der Raum: Schaumstoff wird hineingepresst, und ein kleiner geschnittenes Stück lässt ringsum seinen Spalt. Die gestrichelte Linie ist der Raum.',
  'build.cuts.slot':
    'Für einen Schlitz wird er breiter, nicht höher geschnitten: Über der Auslaufkante liefe das Wasser um ihn herum.',
  'build.cuts.tube':
    'Um ein Rohr wird ein Stück als Streifen geschnitten, so lang wie der Umfang in seiner Mitte; gewickelt stoßen seine Enden ohne Spalt aneinander, vom Zulauf abgewandt.',
  'build.cuts.fibre': 'Matten und Watte werden auf den Umriss der Kammer geschnitten.',
  'build.cuts.strip':
    'Streifen sind so lang wie der Spalt, den sie schließen, {width} breit und etwas dicker als der Spalt (gängige Praxis, ohne Quelle).',
  'build.cuts.cover':
    'Eine Abdeckung greift ringsum {lap} über ihre Schlitze (gängige Praxis, ohne Quelle). Von Schlitzen ist nur die Fläche bekannt: Ihr Umriss ist der kleinste, für Schlitze nebeneinander über die schmalere Innenseite des Kastens, und die gestrichelte Linie ist der der Schlitze. Vor dem Schnitt die Schlitze messen.',
  'build.cuts.measure': 'Vor dem ersten Schnitt die Kammer messen: Jedes Maß folgt aus dem Gemessenen.',
  'cut.title.one': 'Schnitt {number}: {what}',
  'cut.title.many': 'Schnitt {number}: {what}, {count} Stück',
  'cut.says': '{what}, {outline}.',
  'cut.says.thick': '{what}, {outline}, {thickness} dick.',
  'cut.says.pressed': '{what}, {outline}, {thickness} dick, gepresst auf {lies}.',
  'cut.caption': 'Platz: {places}.',
  'cut.caption.hose': 'Enden gerade und sauber.',
  'drawing.scale': 'Maßstab {ratio}',
  'drawing.ruler': 'auf dem Papier oben 5 cm, unten 2 in',

  'heading.build-before': 'Vor dem Öffnen',
  'step.photograph.canister':
    'Fotografieren, wie er steht: Schläuche, Hähne, Kabel, und später jede Lage beim Herausnehmen, ein Lineal daneben; keine Personen, keine Anschrift.',
  'step.photograph.sump':
    'Fotografieren, wie es steht: Rohre, Wasserstände, Kabel, und später jede Lage beim Herausnehmen, ein Lineal daneben; keine Personen, keine Anschrift.',
  'step.photograph.hanging':
    'Fotografieren, wie er hängt: Ansaugung, Auslaufkante, Kabel, und später jede Lage beim Herausnehmen, ein Lineal daneben; keine Personen, keine Anschrift.',
  'step.photograph.submerged':
    'Fotografieren, wie er im Becken steht: Auslauf, Halter, Kabel, und später jede Lage beim Herausnehmen, ein Lineal daneben; keine Personen, keine Anschrift.',
  'step.flow.on-record.vessel':
    'Der Durchfluss wie vorgefunden ist festgehalten: {flow}, gestoppt mit {vessel}. Dieses Gefäß und diese Höhe des Auslaufs für die Prüfungen unten beibehalten.',
  'step.flow.on-record.bag':
    'Der Durchfluss wie vorgefunden ist festgehalten: {flow}, gestoppt mit {vessel}. Für die Prüfungen unten ebenso auffangen.',
  'step.flow.time.vessel':
    'Den Durchfluss wie vorgefunden stoppen, bevor etwas gereinigt ist: ein Gefäß mit Marke in der Höhe des Auslaufs, drei Messungen von mindestens 15 s (gängige Praxis, ohne Quelle).',
  'step.flow.time.bag':
    'Den Durchfluss wie vorgefunden auffangen, bevor etwas gereinigt ist: bei gezogenem Stecker einen dünnen, flach gedrückten Beutel unter Wasser um den Auslauf binden; für 10 s oder länger einstecken, die Hände nicht im Wasser; Stecker ziehen und messen, was im Beutel ist. Drei Messungen (gängige Praxis, ohne Quelle).',
  'step.watts.on-record': 'Die Leistung am Stecker ist festgehalten: {power}.',
  'step.watts.read': 'Nach zehn Minuten Lauf die Leistung am Stecker ablesen.',

  'heading.build-open': 'Öffnen und reinigen',
  'step.open.canister':
    'Stecker ziehen, Hähne schließen, Schläuche trennen und ihre Enden über dem Wasserspiegel halten, den Filter auf eine Wanne tragen.',
  'step.open.sump':
    'Stecker ziehen, das Wasser herunterlaufen lassen und prüfen, ob der Kasten es fasst; die Medien samt dem, was sie hält, über einem Eimer herausheben.',
  'step.open.hanging':
    'Stecker ziehen, den Kasten leerlaufen lassen, mit beiden Händen vom Rand heben und auf eine Wanne stellen.',
  'step.open.submerged':
    'Stecker ziehen und vor dem Herausnehmen einen Beutel oder eine Schale unter den Filter halten, damit der Schmutz darin bleibt.',
  'step.photograph.air':
    'Fotografieren, wie er im Becken steht: Steigrohr, Luftschlauch und wo die Luftpumpe steht, später jede Lage beim Herausnehmen, ein Lineal daneben; keine Personen, keine Anschrift.',
  'step.photograph.built-in':
    'Fotografieren, wie er im Becken steht: Medien, Steigrohr oder Pumpe, Luftschlauch und Kabel, ein Lineal daneben; keine Personen, keine Anschrift.',
  'step.open.air':
    'Alle Stecker ziehen, den Luftschlauch abziehen und vor dem Herausnehmen einen Beutel oder eine Schale unter den Filter halten, damit der Schmutz darin bleibt.',
  'step.open.built-in':
    'Alle Stecker ziehen und Steigrohr oder Pumpe herausziehen. Was im Becken eingebaut ist, bleibt darin: höchstens ein Drittel seiner Medien auf einmal anfassen.',
  'step.close.air': 'Steigrohr und Luftschlauch fest aufstecken.',
  'step.close.built-in':
    'Prüfen, dass kein Wasser um die Medien herumläuft und Steigrohr oder Pumpe dicht sitzt.',
  'step.start.air':
    'Die Luftpumpe hinter einem Fehlerstrom-Schutzschalter einstecken und prüfen, dass die Blasen im Steigrohr gleichmäßig steigen.',
  'step.start.built-in':
    'Hinter einem Fehlerstrom-Schutzschalter einstecken und prüfen, dass das Wasser gleichmäßig austritt.',
  'step.check.surface.air':
    'Nach einem Tag nachsehen: Sitzt er fest, steigen die Blasen wie vorher, steht kein Wasser im Luftschlauch?',
  'step.check.surface.built-in':
    'Nach einem Tag nachsehen: Hat sich nichts gehoben oder verschoben, tritt das Wasser wie vorher aus?',
  'step.clean.lift':
    'Das Steigrohr auswischen und die Öffnung oder den Stein, aus dem die Luft kommt, frei machen; auf Risse achten.',
  'step.unpack':
    'Medien der Reihe nach herausheben und den Platz jeder Lage notieren; alles, worauf Bakterien leben, in Beckenwasser nass halten, nicht in der Sonne.',
  'step.unpack.one': 'Die Medien in Beckenwasser nass halten, nicht in der Sonne: Auf ihnen leben Bakterien.',
  'step.unpack.built-in':
    'Von den Medien nur herausnehmen, woran gearbeitet wird, höchstens ein Drittel, und in Beckenwasser nass halten.',
  'step.clean.housing':
    'Gehäuse, Auflagen der Medien, Rotor, Achse und Rotorkammer auswischen; auf Verschleiß, Risse und Sand achten. Der Motor bleibt zu.',
  'step.clean.hoses': 'Schläuche, Hähne und Ansaugkorb durchbürsten.',
  'step.clean.intake': 'Ansaugung und Ansaugkorb durchbürsten.',
  'step.clean.media.moved':
    'Was das Wasser in Bewegung hält, bleibt sauber: nur in Beckenwasser spülen, wo es zusammenklebt; Abgeriebenes und Zerbrochenes aussortieren.',
  'step.clean.media':
    'Was bleibt, in Beckenwasser spülen: Schaumstoff ausdrücken, biologische Medien nur schwenken.',
  'step.clean.media.built-in':
    'Den Schmutz mit Schlauch oder Mulmglocke von den Medien absaugen; in Beckenwasser nur spülen, was herausgenommen wurde.',

  'heading.build-ready': 'Vorbereiten',
  'step.cut': 'Alles auf der Schnittliste schneiden und jedes Stück an seinem Platz anpassen.',
  'step.deburr':
    'Schnittkanten von Schlauch und Platte entgraten, Ecken der Platte runden; nass arbeiten, damit kein Staub fliegt.',
  'step.cut-sleeve':
    'Die Schaumstoffhülse 2 bis 3 mm (0,08 bis 0,12 in) länger schneiden als der Raum zwischen den Endkappen, Enden gerade, damit beide darauf drücken.',
  'step.rinse-new': 'Neues spülen, geschnitten oder nicht, bis das Wasser klar bleibt.',
  'step.rinse-there': 'Was aus den Medien des Filters geschnitten wurde, nur in Beckenwasser spülen.',
  'heading.build-alter': 'Ändern',

  'heading.build-pack': 'Bestücken',
  'drawing.build-section.found':
    'Wie er bestückt war und wieder bestückt wird: ein Schnitt mit dem Wasser darin.',
  'drawing.build-section.planned': 'Wie er zu bestücken ist: ein Schnitt mit dem Wasser darin.',
  'drawing.build-section.left': 'Wie er bestückt ist: ein Schnitt mit dem Wasser darin.',
  'drawing.build-row':
    'Schritt für Schritt: Was bei einem Schritt eingelegt wird, ist schraffiert; was schon darin liegt, ist schlicht.',
  'drawing.step': 'Schritt {number}',
  'step.pack.upright': '{chamber} von unten bestücken: {layers}.',
  'step.pack.slot': '{chamber} von der Pumpenseite her bestücken: {layers}.',
  'step.pack.tube': '{chamber} von innen nach außen bestücken: {layers}.',
  'step.pack.sock': '{chamber} in den Ring hängen: {layers}.',
  'step.pack.moved': '{chamber} füllen: {layers}.',
  'step.pack.piece': '{chamber} an den alten Platz setzen: {layers}.',
  'step.pack.stays': '{chamber} liegen lassen und zurücklegen, was herausgenommen wurde: {layers}.',
  'step.pack.empty': '{chamber} leer lassen.',
  'layer.cut': '{tag}, {depth} {medium}',
  'layer.poured': '{tag}, {depth} {medium}, das sind {volume}, {mass} trocken',
  'step.keep-third':
    'Mindestens ein Drittel der Medien, auf denen Bakterien leben, vier Wochen lang unverändert behalten, im Filter oder in einem Beutel im Becken (gängige Praxis, ohne Quelle).',

  'heading.build-close': 'Schließen',
  'step.close.canister':
    'Den Kopf aufsetzen, die Verschlüsse gleichmäßig von Hand schließen und den Ring ringsum auf Quetschstellen prüfen.',
  'step.close.sump':
    'Jeder Überlauf und der Notablauf müssen frei sein, und nichts darf in die Pumpe fallen können.',
  'step.close.hanging': 'Kein Medium darf über der Auslaufkante stehen, und der Notüberlauf muss frei sein.',
  'step.close.submerged': 'Den Kasten schließen; kein Medium darf in den Schlitzen des Einlaufs stehen.',

  'heading.build-leak': 'Dichtheitsprüfung',
  'build.leak.none':
    'Er arbeitet unter Wasser: Undicht kann er nicht werden. Stattdessen Kabel und Gehäuse ansehen.',
  'build.leak.none.air':
    'Er arbeitet unter Wasser: Undicht kann er nicht werden. Stattdessen Luftschlauch und Rückschlagventil ansehen: Darin darf kein Wasser stehen.',
  'step.leak.stand':
    'Den Filter trocken wischen, auf der Werkbank auf trockenes Papier stellen und so füllen, dass das Wasser so hoch über ihm steht wie am Einbauort.',
  'step.leak.hang':
    'Waagerecht an einen Eimer oder ein Ersatzbecken hängen, trockenes Papier darunter, und den Kasten füllen.',
  'step.leak.fill':
    'Trockenes Papier unter den Kasten und unter jede Verbindung der Rohre legen und den Kasten so hoch füllen, wie das Wasser bei stehender Pumpe darin steht.',
  'step.leak.run':
    'So 30 Minuten laufen lassen (gängige Praxis, ohne Quelle); jede Fuge abtasten und das Papier ansehen.',
  'step.leak.wait':
    'So 30 Minuten stehen lassen (gängige Praxis, ohne Quelle); jede Fuge abtasten und das Papier ansehen.',
  'step.leak.night':
    'Wo an einer Dichtung gearbeitet wurde, über Nacht gefüllt auf frischem Papier stehen lassen.',
  'step.leak.fails':
    'Jede Feuchte heißt nicht bestanden: öffnen, die Stelle suchen und die Prüfung neu beginnen.',
  'blank.leak-run': '30 Minuten Lauf: von, bis, Papier trocken',
  'blank.leak-wait': '30 Minuten gefüllt: von, bis, Papier trocken',
  'blank.leak-night': 'Über Nacht: von, bis, Papier trocken',

  'heading.build-run': 'Starten und prüfen',
  'step.start.canister':
    'Füllen, kippen, bis die Luft heraus ist, und hinter einem Fehlerstrom-Schutzschalter anlaufen lassen.',
  'step.start.canister.column':
    'Langsam von unten füllen und hinter einem Fehlerstrom-Schutzschalter anlaufen lassen, die ersten Liter in einen Eimer; prüfen, dass sich das ganze Bett gleichmäßig hebt.',
  'step.start.sump':
    'Bis zur Marke füllen, einstecken und dann einmal den Stecker ziehen: Was herunterläuft, muss im Kasten bleiben, und die Löcher, die den Rücklauf unterbrechen, müssen Luft ziehen.',
  'step.start.hanging':
    'Waagerecht einhängen und den Kasten mit Beckenwasser füllen, bevor er hinter einem Fehlerstrom-Schutzschalter anläuft; er darf nie trocken laufen.',
  'step.start.submerged':
    'Die Luft unter Wasser herauslassen, bevor er hinter einem Fehlerstrom-Schutzschalter anläuft; er darf nie trocken laufen.',
  'step.check.flow.again.vessel':
    'Den Durchfluss mit demselben Gefäß in derselben Höhe wie vorher stoppen: drei Messungen.',
  'step.check.flow.again.bag':
    'Den Durchfluss wie vorher in einem Beutel am Auslauf auffangen, ebenso lange eingesteckt: drei Messungen.',
  'step.check.flow.new.vessel':
    'Den Durchfluss mit einem Gefäß mit Marke in der Höhe des Auslaufs stoppen: drei Messungen.',
  'step.check.flow.new.bag':
    'Den Durchfluss auffangen: bei gezogenem Stecker einen dünnen, flach gedrückten Beutel unter Wasser um den Auslauf binden; für 10 s oder länger einstecken, die Hände nicht im Wasser; Stecker ziehen und messen, was im Beutel ist. Drei Messungen (gängige Praxis, ohne Quelle).',
  'step.check.flow.left': 'Bei der Übergabe wurden {flow} gestoppt; nach jeder Arbeit daran wieder stoppen.',
  'step.check.expected.vessel':
    'Sauber sind {flow} zu erwarten, gerechnet: {vessel} sind in etwa {time} voll.',
  'step.check.expected.bag': 'Sauber sind {flow} zu erwarten, gerechnet: {vessel} kommen in etwa {time}.',
  'step.check.measure-next':
    'Wenn Zeit ist, messen, was am meisten über das versorgte Becken sagen würde. {how}',
  'step.check.watts':
    'Nach zehn Minuten die Leistung am Stecker ablesen; {power} nahm er auf oder sollte er aufnehmen.',
  'step.check.noise':
    'Hinhören: Was nach einer halben Stunde noch klappert, ist Luft, Sand oder eine verschlissene Achse.',
  'step.check.noise.air':
    'Hinhören: Brummt die Luftpumpe lauter als vorher, ist ihre Membran müde oder der Luftaustritt verstopft.',
  'step.check.surface.canister':
    'Nach einem Tag ansehen: Hähne, Schlauchenden, Papier unter dem Filter, Wasserstand im Becken.',
  'step.check.surface.sump':
    'Nach einem Tag ansehen: Rohre, Verbindungen, Boden darunter, Wasserstände darin und im Becken.',
  'step.check.surface.hanging': 'Nach einem Tag ansehen: Rand, Papier darunter, Wasserstand im Becken.',
  'step.check.surface.submerged':
    'Nach einem Tag ansehen: ob er fest sitzt, der Auslauf frei ist und kein Medium herausgekommen ist.',
  'blank.run': 'Messung {number}, Zeit für {vessel}',
  'blank.run.plain': 'Messung {number}, Volumen und Zeit',
  'blank.watts': 'Leistung am Stecker',
  'blank.noise': 'Geräusch',
  'blank.tested-by': 'Geprüft von, Tag',

  'heading.build-hygiene': 'Zwischen den Filtern zweier Besitzer',
};
