/** Schritte, die einen Filter ändern, nach der Kennung der Änderung. */
export const alterationSentences: Readonly<Record<string, string>> = {
  'step.alter.turn-head':
    'Den Kopf um eine halbe Drehung umsetzen, nur wo Ring, Verschlüsse, Anschlüsse und Füllrohr in beiden Lagen passen; Ansaugung und Auslauf neu beschriften.',
  'step.alter.move-trays': 'Die Einsätze an ihre neuen Plätze setzen, wie unten bestückt.',
  'step.alter.seal-gaps':
    'Die Streifen so in die Spalte neben den Medien legen, dass sie wieder herausgehen; jede vorgesehene Entlastung frei lassen.',
  'step.alter.renew-end-seals':
    'Die neuen Dichtringe an Endkappen und Sitze setzen; Nuten säubern, dünn mit Silikonfett fetten, von Hand andrücken.',
  'step.alter.trim-sleeve':
    'Die Endkappen auf die länger geschnittene Schaumstoffhülse drücken und prüfen, dass beide rundum anliegen.',
  'step.alter.turn-cartridge':
    'Die Patrone um eine halbe Drehung umsetzen, damit als Nächstes die Seite den Schmutz aufnimmt, die vom Zulauf abgewandt lag.',
  'step.alter.more-socks':
    'Eine weitere Socke mit eigenem Ring neben die anderen hängen; den Rand, über den eine volle Socke läuft, frei lassen.',
  'step.alter.clear-holes':
    'Die Tropfplatte herausheben und jedes Loch mit Bürste oder Holzspieß freimachen, nie weiter, als es ist.',
  'step.alter.close-upper-slots':
    'Die Abdeckung so vor den Schlitzen an den Medien vorbei befestigen, dass sie wieder abgeht; unten bleibt mindestens das Dreifache der Ansaugfläche der Pumpe offen (gängige Praxis, ohne Quelle).',
  'step.alter.hose-bore':
    'Schlauch mit {size} Innendurchmesser samt Tüllen und Schellen dieser Weite einsetzen, nur wo die Anschlüsse sie aufnehmen.',
  'step.alter.siphon-hole':
    'In jedes Rohr, das ins Becken hängt, {size} unter dem Wasserspiegel ein Belüftungsloch von 4 bis 6 mm (0,16 bis 0,24 in) bohren (gängige Praxis, ohne Quelle): außerhalb des Wassers, vom Netz getrennt, die Späne entfernen. Schnecken und Bewuchs verschließen es: bei jeder Reinigung nachsehen.',
  'step.alter.shorten-hose':
    'Die Schläuche in ihrer neuen Länge, höchstens {size}, ansetzen: ganz auf die Tüllen geschoben, die Schellen von Hand geschlossen.',
  'step.alter.level-gravel':
    'Den Kies über der blanken Platte von vorn nach hinten ebnen; ein Netz oder einen flachen Stein legen, wo Tiere graben.',
  'step.alter.lengthen-lift-tube':
    'Ein längeres Rohr oder ein Stück auf das Steigrohr setzen, sodass es am Wasserspiegel endet; die Weite beibehalten.',
  'step.alter.lower-outlet':
    'Den Auslauf unter den Wasserspiegel legen; dicht unter der Wasserlinie ein kleines Loch offen lassen, das den Rücklauf unterbricht.',
};
