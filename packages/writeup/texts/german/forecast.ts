/** Wie Durchfluss und Schmutz in den kommenden Tagen verlaufen. */
export const forecastSentences: Readonly<Record<string, string>> = {
  'forecast.no-water': 'Es fließt kein Wasser.',
  'forecast.no-media': 'Es sind noch keine Medien darin, also wird nichts zurückgehalten.',
  'loss.quarter': 'ein Viertel',
  'loss.third': 'ein Drittel',
  'loss.half': 'die Hälfte',
  'forecast.loss.at': 'um {loss} etwa {after} nach der Reinigung',
  'forecast.loss.in': 'um {loss} etwa {after} nach der Reinigung, das meiste davon in „{place}“',
  'forecast.loss.none':
    'In {days} Tagen sinkt der Durchfluss am Becken um weniger als ein Viertel; mindestens {share} des sauberen bleiben.',
  'forecast.loss.all': 'Der Durchfluss am Becken sinkt {losing}.',
  'forecast.loss.some': 'Der Durchfluss am Becken sinkt {losing}; nicht um {never} in {days} Tagen.',
  'forecast.end.none':
    'In {days} Tagen lässt keine Schicht ein Drittel weniger Wasser durch, und kein Überlauf springt an.',
  'forecast.end.overflow':
    'Etwa {after} nach der Reinigung (auf einen Faktor drei genau) springt ein Überlauf an: {place}.',
  'forecast.end.bed-flow':
    'Etwa {after} nach der Reinigung (auf einen Faktor drei genau) lässt erstmals eine Schicht ein Drittel weniger Wasser durch: „{place}“ entscheidet.',
  'forecast.overflow':
    'Etwa {after} nach der Reinigung springt ein Überlauf an: Dann geht schmutziges Wasser an den Medien vorbei.',
  'forecast.mat': 'Ab Tag {day} liegt eine Schmutzschicht auf „{place}“.',
  'forecast.solids': 'Von {made} trockenen Feststoffen, die entstehen: {parts}.',
  'forecast.solids.none': 'Von {made} trockenen Feststoffen, die entstehen, wird nichts zurückgehalten.',
  'forecast.solids.held': '{mass} liegen am Ende in den Schichten',
  'forecast.solids.rot': '{mass} verrotten dort',
  'forecast.solids.cleaned': '{mass} werden ausgespült',
  'forecast.solids.changed': '{mass} gehen mit den Wasserwechseln ab',
  'forecast.solids.elsewhere': '{mass} bleiben in anderen Filtern',
  'forecast.solids.floating': '{mass} schweben noch im Becken',
  'forecast.feed': 'Gerechnet ist mit {fed} Trockenfutter.',
  'forecast.litter':
    'Was Pflanzen abwerfen, ist nicht mitgezählt: Im bepflanzten Becken kann es so viel sein wie das, was aus dem Futter entsteht, und die Zeiten sind dann halb so lang.',
};
