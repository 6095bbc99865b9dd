/** Worauf sich das ganze Becken einstellt, und was auf sein Wasser wirkt. */
export const balanceSentences: Readonly<Record<string, string>> = {
  'balance.no-feed': 'Im Becken wird nicht gefüttert, also gibt es keine Bilanz.',
  'balance.without-end': 'ohne Ende steigend',
  'balance.ranged': '{value} ({low} bis {high})',
  'balance.levels.clean':
    'Mit sauberen Medien stellt sich das Becken auf Ammonium {ammonia} und Nitrit {nitrite} ein, beide als N, und auf Nitrat {nitrate} als NO3.',
  'balance.levels.intervalEnd':
    'Mit dem Schmutz am Ende des Reinigungsabstands: Ammonium {ammonia}, Nitrit {nitrite}, Nitrat {nitrate}.',
  'balance.takers': 'Von {load} Ammoniumstickstoff aus Futter und verrottendem Schmutz: {parts}.',
  'balance.by.filter': 'dieser Filter oxidiert {share}',
  'balance.by.other': '„{name}“ {share}',
  'balance.by.walls': 'Glas und Boden {share}',
  'balance.by.plants': 'Pflanzen nehmen {share} auf',
  'balance.by.changes': 'Wasserwechsel nehmen {share} mit',
  'balance.by.nothing': '{share} bleiben im Wasser und steigen an',
  'balance.margin':
    'Glas und Boden, deren Anteil {walls} ist, Pflanzen und Wasserwechsel sind Reserve: In dem, was der Filter bewältigt, ist nichts davon gezählt.',
  'balance.ends': 'Am Ende: {parts}.',
  'balance.end.changes': '{share} des Stickstoffs gehen mit Wasserwechseln ab',
  'balance.end.plants': '{share} gehen in Pflanzen',
  'balance.end.stays': '{share} bleiben im Wasser und steigen an',
  'balance.change':
    'Nitrat bleibt bei {target} als NO3, wenn je Woche {change} des Wassers gewechselt werden; jetzt sind es {now}. Gerechnet ist mit Wasser ohne Nitrat.',
  'balance.change.often':
    'Um Nitrat bei {target} als NO3 zu halten, wären je Woche {change} des Wassers zu wechseln, in mehreren Malen; jetzt sind es {now}. Weniger Futter oder mehr Pflanzen helfen eher.',
  'balance.change.none':
    'Pflanzen allein halten Nitrat unter {target} als NO3; Wasserwechsel (jetzt {now} je Woche) sind dafür nicht nötig.',
  'balance.lime.none':
    'Es wird keine Alkalinität verbraucht: Pflanzen geben so viel zurück, wie die Bakterien nehmen.',
  'balance.lime':
    'Bakterien verbrauchen je Woche {used} Alkalinität (als CaCO3), im Becken {falls}; mit den Wasserwechseln stellt sie sich von {from} auf {settles} ein. Ohne Wechsel ist sie nach {lasts} aufgebraucht.',
  'balance.lime.runs-out':
    'Bakterien verbrauchen je Woche {used} Alkalinität (als CaCO3), im Becken {falls}, und die Wasserwechsel bringen nicht so viel: Sie geht aus, ganz ohne Wechsel nach {lasts}; dann fällt der pH, und die Bakterien hören auf.',
  'balance.oxygen':
    'Sauerstoff verbraucht: {used} (Fische {fish}, Bakterien {bacteria}, verrottender Schmutz {dirt}). Nach ihren Gesetzen bringen Oberfläche, fallendes Wasser und Blasen {brought} bei den angegebenen {stated} der Sättigung; bei {settles} brächten sie, was verbraucht wird. Das Gesetz der Oberfläche gilt auf einen Faktor zwei.',
  'balance.stop.own':
    'Steht dieser Filter still ({share} des Ammoniums), geht das Becken mit den Bakterien der anderen auf Ammonium {ammonia} und Nitrit {nitrite}, und auf {laterAmmonia} und {laterNitrite}, sobald sie nachgewachsen sind.',
  'balance.stop.other':
    'Steht „{name}“ still ({share} des Ammoniums), geht das Becken mit den Bakterien der anderen auf Ammonium {ammonia} und Nitrit {nitrite}, und auf {laterAmmonia} und {laterNitrite}, sobald sie nachgewachsen sind.',
  'balance.stop.time':
    'Wie lange das dauert, sagt der Lauf in der Zeit. Ein Filter, der länger als eine halbe Stunde stand, wird ausgespült, bevor er wieder läuft: Sein Wasser darf nicht zu den Tieren.',
  'balance.side-by-side':
    'Bevor dieser Filter gegen einen anderen getauscht wird, beide nebeneinander laufen lassen, {time} lang: bis der neue neun Zehntel seiner Bakterien hat (Erholungszeit aus dem Gedächtnis).',
};
