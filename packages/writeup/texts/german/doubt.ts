/** Wie sicher die Zahlen sind. */
export const doubtSentences: Readonly<Record<string, string>> = {
  'doubt.serves':
    'Am Ende der Standzeit versorgt er {median} bei normalem Besatz: {low} bis {high} bei acht von zehn Filtern, von denen nicht mehr bekannt ist als von diesem.',
  'doubt.serves.nothing': 'Am Ende der Standzeit versorgt er kein Becken.',
  'doubt.tested': 'Mit dem gestoppten Durchfluss sind es {median}: {low} bis {high}.',
  'doubt.tested.contradicts':
    'Kein Filter, der zu den Angaben passt, hat den gestoppten Durchfluss; die Bereiche richten sich darum nicht nach ihm: Angaben und Befunde prüfen.',
  'doubt.makes': 'Woher der Bereich kommt: {inputs}.',
  'doubt.input': '{what} {share}',
  'doubt.next': 'Als Nächstes messen: {how} Danach bleiben etwa {left} der Breite des Bereichs.',
  'doubt.next.none': 'Keine Messung am Werktisch würde diesen Bereich um ein Fünfzigstel verengen.',
  'doubt.unsolved':
    'Bei {count} von {draws} Ziehungen bleibt kein Filter, der zusammenpasst; sie zählen nicht.',
  'doubt.how.time-flow':
    'Den gereinigten Filter ein Gefäß von bekanntem Inhalt füllen lassen und die Zeit stoppen, dreimal oder öfter.',
  'doubt.how.measure-shutoff-head':
    'Den Auslaufschlauch heben, bis kein Wasser mehr kommt, und die Höhe über dem Wasserspiegel messen; den Stecker vom Wasser fernhalten.',
  'doubt.how.challenge-with-ammonia':
    'Den Filter an einer Wanne mit Beckenwasser ohne Tiere betreiben, Ammoniumchlorid bis 2 mg/L Ammoniumstickstoff zugeben und Ammonium und Nitrit alle zwei Stunden messen, bis sie weg sind; das Wasser wegschütten.',
  'doubt.how.watch-the-flow-fall':
    'Nach einer Reinigung jede Woche den Durchfluss stoppen und den Tag notieren, an dem er um ein Drittel gefallen ist.',
  'doubt.how.weigh-the-feed': 'Das Futter einer Woche auf einer Küchenwaage wiegen, die Zehntelgramm zeigt.',
  'doubt.how.measure-volume':
    'Beim nächsten großen Wasserwechsel die Liter mit dem Eimer oder der Wasseruhr zählen.',
  'doubt.how.test-the-water': '{of} an drei Tagen zur gleichen Stunde messen oder nachschlagen.',
  'doubt.how.measure-the-part': '{of} mit Messschieber oder Bandmaß nehmen.',
  'doubt.how.find-pore-space':
    'Ein Gefäß von bekanntem Inhalt mit {of} füllen und Wasser zugießen, bis es mit ihnen gleich steht: Das Wasser ist der Porenraum.',
  'doubt.medium': '{figure}, {medium}',
  'doubt.figure.areaPerM': 'Fläche für Bakterien',
  'doubt.figure.depositFactor': 'Tempo, in dem Schmutz die Poren schließt',
  'doubt.figure.bacteriaKept': 'Bakterien, die das Ausspülen übrig lässt',
  'doubt.figure.voidage': 'Porenraum',
  'doubt.figure.cellM': 'Größe der Zellen',
  'doubt.figure.fibreM': 'Dicke der Fasern',
  'doubt.figure.solidFraction': 'Anteil der Fasern',
  'doubt.figure.sizeM': 'Größe der Stücke',
  'doubt.figure.surfacePerM': 'äußere Oberfläche',
  'doubt.constant.tanPerProteinRatio': 'Ammonium, das Fische aus Eiweiß machen',
  'doubt.constant.oxygenPerNitrogenRatio': 'Sauerstoff, den Bakterien je Stickstoff brauchen',
  'doubt.constant.alkalinityPerNitrogenRatio': 'Karbonathärte, die Bakterien je Stickstoff verbrauchen',
  'doubt.constant.ammoniumSlopeMPerS': 'Tempo, in dem Bakterien Ammonium nehmen',
  'doubt.constant.fluxCeilingKgNPerM2PerS': 'was eine Fläche mit Bakterien höchstens nimmt',
  'doubt.constant.ammoniaTemperatureTheta': 'wie Wärme den ersten Schritt beschleunigt',
  'doubt.constant.nitriteTemperatureTheta': 'wie Wärme den zweiten Schritt beschleunigt',
  'doubt.constant.oxygenHalfSaturationKgPerM3': 'Sauerstoff, bei dem Bakterien langsamer werden',
  'doubt.constant.solidsPerFeedRatio': 'Schwebstoffe aus dem Futter',
  'doubt.constant.sizeExponent': 'wie fein die Schwebstoffe sind',
  'doubt.constant.depositDryDensityKgPerM3': 'wie dicht gefangener Schmutz liegt',
  'doubt.constant.excessDensityKgPerM3': 'Gewicht der Schwebstoffe im Wasser',
  'doubt.constant.stickingFraction': 'wie gut Schmutz haftet',
  'doubt.constant.cakeResistanceMPerKg': 'Widerstand einer Schmutzschicht',
  'doubt.constant.solidsNitrogenRatio': 'Stickstoff in den Schwebstoffen',
  'doubt.constant.solidsDecayPerS': 'wie schnell gefangener Schmutz fault',
  'doubt.constant.decayingFraction': 'Anteil des Schmutzes, der fault',
  'doubt.constant.carbonPerSolidsRatio': 'Kohlenstoff in den Schwebstoffen',
  'doubt.constant.carbonAvailableFraction':
    'Anteil des Kohlenstoffs der Schwebstoffe, der Konkurrenten der Bakterien nährt',
  'doubt.constant.oxygenPerSolidsRatio': 'Sauerstoff, den faulender Schmutz braucht',
  'doubt.constant.nitriteSlopeRatio': 'Tempo, in dem Bakterien Nitrit nehmen',
  'doubt.constant.leastAlkalinityKgPerM3': 'Karbonathärte, bei der Bakterien knapp werden',
  'doubt.constant.recoveryS': 'wie schnell Bakterien nach einer Reinigung wiederkommen',
  'doubt.constant.carbonSteepness': 'wie stark Kohlenstoff die Bakterien bremst',
  'doubt.constant.bedLawRatio': 'Gesetze der Durchströmung',
  'doubt.constant.airLiftFlowRatio': 'Gesetz des Lufthebers',
  'doubt.constant.fittingLawRatio': 'Verluste an Armaturen und Tüllen',
};
