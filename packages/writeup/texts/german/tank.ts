/** Wie das Wasser im Becken in den kommenden Tagen verläuft. */
export const tankSentences: Readonly<Record<string, string>> = {
  'tank.start.new': 'Das Becken beginnt ohne Bakterien, bis auf die, die von selbst hineinkommen.',
  'tank.start.seeded': 'Das Becken beginnt mit {share} der Bakterien eines eingefahrenen Filters.',
  'tank.start.mature':
    'Der Filter ist zu Beginn eingefahren: Er ist ein Jahr lang so gelaufen, wie der Auftrag es sagt.',
  'tank.peaks':
    'Ammonium und Ammoniak (TAN) erreichen höchstens {ammonia} Stickstoff, am Tag {ammoniaDay}, Nitrit höchstens {nitrite}, am Tag {nitriteDay}.',
  'tank.back': 'Beides ist nach {after} endgültig wieder unter dem Zielwert (auf einen Faktor zwei genau).',
  'tank.under': 'Beides bleibt unter dem Zielwert.',
  'tank.back.neither': 'Am Ende der {days} Tage ist keines von beiden unter dem Zielwert.',
  'tank.back.no-ammonia': 'Ammonium ist am Ende der {days} Tage nicht unter dem Zielwert.',
  'tank.back.no-nitrite': 'Nitrit ist am Ende der {days} Tage nicht unter dem Zielwert.',
  'tank.toxic':
    'Ammoniak liegt zusammen {above} lang über {limit}, höchstens bei {peak}: Das schadet Fischen. Messen, Wasser wechseln und weniger füttern, oder noch keine Fische einsetzen.',
  'tank.not-toxic': 'Ammoniak bleibt bei oder unter {limit}: höchstens {peak}.',
  'tank.oxygen': 'Der Sauerstoff im Becken beträgt mindestens {least}, am Tag {day}.',
  'tank.oxygen.low':
    'Der Sauerstoff im Becken sinkt am Tag {day} auf {least}: Fische schnappen nach Luft. Mehr Luft einbringen.',
  'tank.alkalinity':
    'Die Alkalinität sinkt am Tag {day} auf {least} als CaCO3: Den Bakterien fehlt sie, und der pH-Wert fällt.',
  'tank.walls': 'Glas und Boden oxidieren am Ende {share} des Ammoniums (auf einen Faktor zwei genau).',
  'tank.stopped':
    'Steht die Pumpe, reicht der Sauerstoff in den {water} Wasser im Filter {low} bis {high}; das ist gerechnet und nie gemessen. Stecker ziehen, und nach {within} nicht so wieder anlaufen lassen: Das Wasser darin darf nicht ins Becken zurück. Weggießen, die Medien in Beckenwasser spülen, dann starten.',
  'tank.stopped.clean':
    'Noch verbraucht nichts im Filter Sauerstoff. Trotzdem bei Stillstand den Stecker ziehen und vor dem Start spülen.',
  'tank.doubt':
    'Wie schnell Bakterien wachsen, ist auf einen Faktor 1,6 bekannt, wie viele es zu Beginn sind, auf zehn: Die Tage sind auf einen Faktor zwei genau. Ein Tropfentest im Becken geht allem vor.',
};
