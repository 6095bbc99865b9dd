/** Sätze des Datenblatts: was vorgefunden, was getan wurde, was er jetzt leistet. */
export const sheetSentences: Readonly<Record<string, string>> = {
  'sheet.title': '{filter}',
  'sheet.subtitle': 'Befund und jetzige Leistung: {family}, für ein Becken mit {volume}.',
  'sheet.description':
    '{filter}, geöffnet, durchgesehen, gemessen und neu bestückt: Werte in metrischen und US-Einheiten.',
  'sheet.foot': '{filter}{number}{by}. Ausgabe der Modelle: {edition}.',
  'sheet.received': 'Angenommen am {received}.',
  'sheet.left': 'So übergeben am {left}.',
  'sheet.by': ', von {by}',
  'sheet.number': ', Auftrag {number}',

  'who.named': '{filter} ({family})',
  'who.unnamed': 'Dieser Filter ({family})',

  'summary.found.timed.none': '{who} lieferte wie vorgefunden {flow} und hatte keinen Mangel.',
  'summary.found.timed.one': '{who} lieferte wie vorgefunden {flow} und hatte einen Mangel: {worst}.',
  'summary.found.timed.many':
    '{who} lieferte wie vorgefunden {flow} und hatte {count} Mängel, der schwerste: {worst}.',
  'summary.found.computed.none': '{who} wurde untersucht; ein Mangel fand sich nicht.',
  'summary.found.computed.one': '{who} wurde untersucht; es fand sich ein Mangel: {worst}.',
  'summary.found.computed.many':
    '{who} wurde untersucht; es fanden sich {count} Mängel, der schwerste: {worst}.',
  'summary.changed.nothing': 'Verändert wurde bisher nichts.',
  'summary.changed.planned.free': 'Mit dem, was darin ist, lässt er sich ohne Materialkosten neu bestücken.',
  'summary.changed.planned.bought': 'Für {cost} an Medien und Teilen lässt er sich neu bestücken.',
  'summary.changed.planned.renewed':
    'Er lässt sich neu bestücken, ohne mehr Material als {renewed} an Medien, die jede Reinigung ersetzt.',
  'summary.changed.planned.bought-and-renewed':
    'Für {cost} an Medien und Teilen lässt er sich neu bestücken, davon {renewed} für Medien, die jede Reinigung ersetzt.',
  'summary.changed.planned.same': 'Er soll bestückt werden, wie er war.',
  'summary.changed.left.free': 'Mit dem, was darin war, wurde er ohne Materialkosten neu bestückt.',
  'summary.changed.left.bought': 'Für {cost} an Medien und Teilen wurde er neu bestückt.',
  'summary.changed.left.renewed':
    'Er wurde neu bestückt, ohne mehr Material als {renewed} an Medien, die jede Reinigung ersetzt.',
  'summary.changed.left.bought-and-renewed':
    'Für {cost} an Medien und Teilen wurde er neu bestückt, davon {renewed} für Medien, die jede Reinigung ersetzt.',
  'summary.changed.left.same': 'Er wurde wieder bestückt, wie er war.',
  'summary.now.found':
    'So wie er ist, sollten sauber {flow} fließen; {day} nach einer Reinigung bewältigt er {feed} Trockenfutter, das entspricht einem Becken von {heavy} bei schwerem bis {light} bei leichtem Besatz.',
  'summary.now.planned':
    'Danach sollten sauber {flow} fließen; {day} nach einer Reinigung würde er {feed} Trockenfutter bewältigen, das entspricht einem Becken von {heavy} bei schwerem bis {light} bei leichtem Besatz.',
  'summary.now.left':
    'Jetzt sollten sauber {flow} fließen; {day} nach einer Reinigung bewältigt er {feed} Trockenfutter, das entspricht einem Becken von {heavy} bei schwerem bis {light} bei leichtem Besatz.',

  'summary.now.left.timed':
    'Jetzt gibt er, gestoppt, {flow}; {day} nach einer Reinigung bewältigt er {feed} Trockenfutter, das entspricht einem Becken von {heavy} bei schwerem bis {light} bei leichtem Besatz.',
  'summary.cleaned': 'Reinigen allein hatte ihn auf {flow} gebracht.',
  'summary.left-over.one': 'Ein Mangel bleibt: {worst}.',
  'summary.left-over.many': '{count} Mängel bleiben, der schwerste: {worst}.',

  'summary.now.found.none': 'Nach den Modellen fließt so kein Wasser; er bewältigt nichts.',
  'summary.now.planned.none':
    'Nach den Modellen würde danach kein Wasser fließen; er würde nichts bewältigen.',
  'summary.now.left.none': 'Nach den Modellen fließt jetzt kein Wasser; er bewältigt nichts.',

  'figure.flow': 'Durchfluss, sauber',
  'figure.flow-timed': 'Durchfluss, gestoppt',
  'figure.before-timed': 'wie vorgefunden, gestoppt: {before}',
  'figure.feed': 'Trockenfutter, das er bewältigt',
  'figure.interval': 'bis zur nächsten Reinigung',
  'figure.bypass': 'begegnet keinem mechanischen Medium',
  'figure.before': 'gereinigt mit der alten Bestückung: {before}',
  'figure.as-before': 'gereinigt mit der alten Bestückung: ebenso',
  'figure.no-mechanical': 'keine solchen Medien',
  'figure.no-water': 'kein Wasser fließt',
  'doubt.computed':
    'Hinter ± steht die Unsicherheit: 95 von 100 solchen Bereichen enthalten den wahren Wert. Gerechnete Durchflüsse gelten als auf 15 % genau (im Fach bekannt, nicht nachgeschlagen); andere gerechnete Werte stehen hier ohne ihren Bereich, daher zwei Ziffern.',
  'doubt.computed.drawn':
    'Hinter ± steht die Unsicherheit: 95 von 100 solchen Bereichen enthalten den wahren Wert. Gerechnete Durchflüsse gelten als auf 15 % genau (im Fach bekannt, nicht nachgeschlagen); die Bereiche anderer gerechneter Werte, die zwei Ziffern haben, stehen am Ende in einer Tabelle.',
  'doubt.interval': 'Diese Zeit ist auf einen Faktor drei nach oben und unten genau.',
  'doubt.carries':
    'Zu diesem Wert wurde kein Bereich bestimmt: Er ist ein Anhaltswert; entscheiden müssen Messungen von Ammoniak und Nitrit.',

  'doubt.carries.drawn': 'Das ist ein Anhaltswert; entscheiden müssen Messungen von Ammoniak und Nitrit.',

  'heading.water-path': 'Der Weg des Wassers',
  'drawing.found':
    'Bestückt wie vorgefunden: ein Schnitt durch den Filter mit dem Wasser, wie es läuft, wenn alles sauber ist.',
  'drawing.state.found': 'Bestückt wie vorgefunden',
  'drawing.state.planned': 'Bestückt wie geplant',
  'drawing.state.left': 'Bestückt wie übergeben',
  'drawing.before-after':
    'Vorher und nachher in einem Maßstab: ein Schnitt durch den Filter mit dem Wasser, wie es läuft, wenn alles sauber ist.',
  'path.found': 'Bestückt wie vorgefunden, sauber: {path}',
  'path.planned': 'Bestückt wie geplant, sauber: {path}',
  'path.left': 'Bestückt wie übergeben, sauber: {path}',
  'path.misses.found': 'Sauber laufen {mechanical} des Wassers an den mechanischen Medien vorbei.',
  'path.misses.planned': 'Wie geplant liefen {mechanical} des Wassers an den mechanischen Medien vorbei.',
  'path.misses.left':
    'Jetzt laufen, wenn er sauber ist, {mechanical} des Wassers an den mechanischen Medien vorbei.',

  'heading.photographs': 'Fotografien',
  'photograph.unnamed': 'Fotografie {number}',

  'heading.findings': 'Befund',
  'heading.strengths': 'Was in Ordnung ist',
  'findings.none': 'Es fand sich kein Mangel, der etwas Nennenswertes kostet.',
  'finding.numbered': '{number}. {severity}, {place}.',
  'finding.cure': 'Abhilfe: {cure}',
  'heading.faults-left': 'Mängel, die bleiben',
  'finding.left': '{severity}, {place}: {says}',
  'finding.left.with-effect':
    '{severity}, {place}: {says} Die Abhilfe für sich: Durchfluss {flow}; bewältigtes Futter {feed}; Reinigungsintervall {interval}.',
  'severity.grave': 'Schwer',
  'severity.marked': 'Deutlich',
  'severity.slight': 'Leicht',
  'table.effects': 'Was die Abhilfe bei jedem Mangel für sich bewirkt, {day} nach Reinigung aller Schichten',
  'effect.from-to': '{before} → {after}',
  'effect.same': 'bleibt {value}',

  'place.test': 'Prüfung: {kind}, {state}',
  'heading.changes.planned': 'Was geändert werden soll',
  'heading.changes.left': 'Was geändert wurde',
  'changes.why.planned':
    'Mängel der alten Bestückung: {found}; wie geplant: {after}. Was im Filter ist, wird wieder verwendet, bevor etwas gekauft wird, außer dem Verbrauchten.',
  'changes.why.left':
    'Mängel der alten Bestückung: {found}; wie übergeben: {after}. Was im Filter war, gilt als wieder verwendet, außer dem Verbrauchten; gekauft wurde, was fehlte.',
  'changes.added.planned': 'Hinein kommen: {media}.',
  'changes.added.left': 'Hinein kamen: {media}.',
  'changes.removed.planned': 'Heraus kommen: {media}.',
  'changes.removed.left': 'Heraus kamen: {media}.',
  'changes.order.planned': 'Das Wasser soll die Medien in anderer Folge treffen: {media}.',
  'changes.order.left': 'Das Wasser trifft die Medien jetzt in anderer Folge: {media}.',
  'alteration.made': '{says}',
  'alteration.to-bore': '{says}, auf {size} Innendurchmesser',
  'alteration.to-length': '{says}, auf je {size}',
  'table.packing': 'Bestückung in der Folge des Wassers',
  'chamber.empty': 'leer',
  'bed.of-depth': '{depth} {medium}',

  'heading.media': 'Medien',
  'media.none': 'Im Filter sind keine Medien.',
  'table.media': 'Medien in der Folge, in der das Wasser sie trifft',
  'medium.with-stage': '{medium}, {stage}',
  'price.there': 'war da',
  'table.parts': 'Teile',
  'media.total-with-parts': 'Medien und Teile zusammen',
  'media.renewed': 'Verbrauchte Medien ({media}) gelten als frisch: Jede Reinigung ersetzt sie.',
  'media.total': 'zusammen',
  'media.dry-mass': 'Volumen sind Schüttvolumen mit den Poren; Massen sind trocken.',

  'heading.site': 'Im Raum und im Becken',
  'table.pressures': 'Druck gegen die Außenluft, sauber, bei laufender Pumpe',
  'table.levels': 'Wasserstände im Kasten über seinem Boden, sauber',
  'column.place': 'Stelle',
  'column.above-surface': 'über dem Wasserspiegel',
  'column.pressure': 'Druck',
  'column.leak': 'ein Leck',
  'column.running': 'im Betrieb',
  'column.stopped': 'abgeschaltet',
  'column.edge': 'nächste Kante bei',
  'column.over': 'Kante',
};
