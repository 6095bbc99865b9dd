/** Sätze über die kommenden Monate: was vom Durchfluss bleibt und was jede Art zu reinigen bringt. */
export const outlookSentences: Readonly<Record<string, string>> = {
  'heading.forecast': 'Die kommenden Monate',
  'forecast.interval-end': 'Etwa {interval} nach der Reinigung (auf einen Faktor drei genau): {end}.',
  'forecast.only.unfed':
    'Im Becken wird nicht gefüttert, also entsteht kein Schmutz, und über die kommenden Monate lässt sich nichts sagen.',
  'forecast.only.caught-nothing':
    'Nach den Modellen halten die Medien keinen Schmutz zurück: Nichts darin setzt sich zu, und der Durchfluss bleibt wie sauber. Was Schläuche und Pumpe über die Monate verlieren, ist nicht gerechnet.',
  'forecast.only.untimed-air':
    'Was die Blasen heben, ist gerechnet und nicht gemessen; das ist zu unsicher, um zu sagen, was davon bleibt: sauber auslitern, dann lassen sich die kommenden Monate angeben.',
  'forecast.clean': 'sauber',
  'forecast.on-day': 'Tag {day}',
  'table.forecast-months': 'Was ohne Reinigung bleibt',
  'column.of-clean': 'vom sauberen',
  'column.of-clean-before': 'mit der alten Bestückung',
  'column.least-bed': 'durch die Schicht, die am meisten verliert',
  'plot.days': 'Der Durchfluss Tag für Tag',
  'plot.of-clean': 'vom sauberen Durchfluss',
  'plot.day-axis': 'Tage, seit alle Schichten gereinigt wurden',
  'plot.at-tank': 'am Becken',
  'plot.as-before': 'am Becken, alte Bestückung',
  'plot.course':
    '{name}: an Tag 0 {first} des sauberen Durchflusses, an Tag {days} {last}, am wenigsten {least}.',
  'drawing.forecast': 'Tag für Tag ohne Reinigung, im Verhältnis zu sauber: 100 % sind am Becken {flow}.',
  'table.forecast-patterns': 'Reinigungsweisen, über ein halbes Jahr verglichen',
  'column.pattern': 'Reinigung',
  'column.mean-flow': 'Durchfluss im Mittel',
  'column.least-flow': 'mindestens, vom sauberen',
  'column.work': 'Arbeitstage im Jahr',
  'column.late': 'überfällige Tage im Jahr',
  'column.media-a-year': 'Medien im Jahr',
  'pattern.never': 'nie',
  'pattern.usual': 'sobald das Intervall abgelaufen ist',
  'pattern.flow': 'wenn am Becken noch {share} des sauberen Durchflusses ankommen',
  'pattern.part.all': 'alles alle {days} Tage',
  'pattern.part.mechanical': 'mechanische Medien alle {days} Tage',
  'forecast.key':
    'Überfällig: Das Intervall war abgelaufen, und nichts wurde gereinigt. Arbeit und Medien sind nach ganzen Tagen gezählt und können darum von den Kosten eines Jahres etwas abweichen. Wie lange die Arbeit an einem Tag dauert, ist nicht bekannt. Gerechnet ist so, dass nach dem Spülen ein Zehntel des Schmutzes bleibt.',
  'forecast.uneventful': 'Die Reinigungsweisen unterscheiden sich hier zu wenig für einen Vergleich.',
  'forecast.doubt':
    'Alle diese Tage sind auf einen Faktor drei nach oben und unten genau; welche Reinigungsweise besser ist, steht sicherer fest als die Werte selbst.',

  'heading.care-pattern': 'Wie oft',
  'care.advice.interval':
    'Reinigen, sobald das Intervall abgelaufen ist, etwa {interval} nach der letzten Reinigung: jedes Mal, was die Tabelle der Schichten dafür nennt.',
  'care.advice.work':
    'Das sind etwa {work} Arbeitstage und {media} an Medien im Jahr; am Becken kommen dann mindestens {share} des sauberen Durchflusses an.',
  'care.advice.work.alone':
    'Das sind etwa {work} Arbeitstage im Jahr; am Becken kommen dann mindestens {share} des sauberen Durchflusses an.',
  'care.advice.late':
    'Warum nicht nach festem Kalender: „{pattern}“ wären {work} Arbeitstage im Jahr, doch an {late} Tagen im Jahr wäre die Reinigung überfällig.',
  'care.advice.as-well':
    'Nach festem Kalender wäre auch mit „{pattern}“ nie etwas überfällig; das sind {work} Arbeitstage im Jahr.',
  'care.advice.too-often':
    'Öfter als einmal in der Woche hält kaum jemand durch (eigene Festlegung): Dann gehört die Bestückung geändert und nicht der Kalender. {cure}',
  'care.advice.beyond':
    'Nach den Modellen verlangt innerhalb eines Jahres nichts nach einer Reinigung: Ohne sie bleiben nach {days} Tagen {share} des sauberen Durchflusses. Trotzdem jede Schicht einmal im Jahr reinigen, und früher, wo die Messung des Durchflusses es verlangt: Was sich in Ecken absetzt und in Schläuchen wächst, ist nicht gerechnet (eigene Festlegung).',
  'table.jug-months.vessel': 'Was die Messung mit {given} zeigen soll',
  'table.jug-months.bag': 'Was der Beutel auffangen soll ({given} eingesteckt)',
  'column.shown.vessel': 'gefüllt in',
  'column.shown.bag': 'aufgefangen',
  'care.before-cleaning': 'kurz vor einer fälligen Reinigung',
  'care.uncleaned': 'Tag {day}, ohne Reinigung',
  'care.jug.hidden.pump':
    'Schmutz in den Medien allein ist an der Messung des Durchflusses kaum zu sehen. Fällt der Durchfluss dennoch deutlich unter den sauberen, liegt es an anderem: Ansaugkorb, Rohre oder Schläuche, Rotor.',
  'care.jug.hidden.air':
    'Schmutz in den Medien allein ist an der Messung des Durchflusses kaum zu sehen. Fällt der Durchfluss dennoch deutlich unter den sauberen, liegt es an anderem: Luftschlauch, Ausströmer, Luftpumpe.',
};
