/** Wie lange das Wasser im Filter bleibt und was ein Farbstoff davon zeigte. */
export const residenceSentences: Readonly<Record<string, string>> = {
  'residence.times':
    'Vom Becken und zurück ist das Wasser im Mittel {mean} unterwegs; die Durchgangszeiten: ein Zehntel {tenth}, die Hälfte {half}, neun Zehntel {nine} (Morrill-Index {index}; 1 ist Pfropfenströmung, 22 ein durchmischtes Gefäß).',
  'residence.times.beyond-mixed':
    'Vom Becken und zurück ist das Wasser im Mittel {mean} unterwegs; die Durchgangszeiten: ein Zehntel {tenth}, die Hälfte {half}, neun Zehntel {nine} (Morrill-Index {index}; 1 ist Pfropfenströmung, 22 ein durchmischtes Gefäß; mehr heißt, dass ein Teil des Wassers einen viel kürzeren Weg nimmt als der Rest).',
  'residence.volume':
    'Er fasst {volume} Wasser; {dead}. Ecken, in denen es steht, zeigt nur ein Versuch mit Farbstoff.',
  'residence.volume.hoses':
    'Er fasst {volume} Wasser, davon {hoses} in den Schläuchen; {dead}. Ecken, in denen es steht, zeigt nur ein Versuch mit Farbstoff.',
  'residence.dead': 'durch {share} davon geht kein Wasser',
  'residence.dead.none': 'dem Plan nach geht das Wasser durch alles',
  'residence.basis':
    'Für saubere Medien. Räume zwischen den Kammern gelten als durchmischt, Schichten als Rührkessel in Reihe nach ihrer Dispersion (auf einen Faktor 2 genau), Schläuche und Schlitze als durchlaufen, wie das Wasser kam; Wasser in den Poren der Stücke und in der Pumpe ist nicht mitgezählt.',
  'dye.found':
    'Farbstoff, {state}: ein Zehntel {tenth}; die Hälfte {half}; neun Zehntel {nine}; Mittel {mean}; Morrill-Index {index} ± {doubt}.',
  'dye.state.as-found': 'wie vorgefunden',
  'dye.state.clean-empty': 'sauber, ohne Medien',
  'dye.state.cleaned-original': 'gereinigt mit der alten Bestückung',
  'dye.state.as-left': 'wie übergeben',
  'dye.time': '{measured} ± {doubt}',
  'dye.time.and-map': '{measured} ± {doubt}, nach dem Plan {computed}',
  'dye.standing': 'Mittel gegen Volumen durch Durchfluss: {share} des Wassers stehen.',
  'dye.cut-off':
    'Die Messung endet, bevor die Farbe verschwunden ist; Mittel und neun Zehntel sind also zu klein: länger messen.',
  'dye.caution':
    'Farbstoff nie ohne Not in ein besetztes Becken geben. Kohle bindet ihn, Zeolith tauscht Salz, Watte hält Farbe fest: Damit im Filter kommt die Kurve spät und flach.',
};
