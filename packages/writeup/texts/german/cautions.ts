/** Vorsichtshinweise. */
export const cautionSentences: Readonly<Record<string, string>> = {
  'caution.mains':
    'Bevor eine Hand ins Wasser kommt, die Stecker aller Geräte im Becken ziehen; ein Schalter genügt nicht. Alles gehört hinter einen Fehlerstrom-Schutzschalter, der monatlich geprüft wird. Über die Installation entscheiden örtliche Vorschriften und eine Elektrofachkraft; was den Schutzschalter ausgelöst hat, bleibt ausgesteckt.',
  'caution.cable':
    'Jedes Kabel in einer Schlaufe hängen lassen, die tiefer liegt als seine Steckdose, damit Wasser dort abtropft. Ein vergossener Motor wird nicht geöffnet, ein beschädigtes Kabel nicht geflickt: Dieser Filter ist Schrott.',
  'caution.air-line':
    'Die Luftpumpe steht über dem Wasserspiegel, oder ihr Schlauch hat ein Rückschlagventil: Sonst läuft im Stillstand Wasser durch den Schlauch in sie zurück, an Netzspannung.',
  'caution.siphon':
    'Hähne schließen und die Schlauchenden über den Wasserspiegel heben, bevor ein Schlauch abgenommen wird: Sonst läuft das Becken bis zur Ansaugung leer. Ein Rückschlagventil allein ist kein Schutz.',
  'caution.siphon-break':
    'Ein kleines Loch im Auslauf dicht unter der Wasserlinie muss offen sein: Es unterbricht den Rücklauf, wenn die Pumpe steht.',
  'caution.sump':
    'Steht die Pumpe, läuft Wasser herunter, bis Luft in die Rohre kommt: den Kasten nie höher füllen, als dafür Platz bleibt, und den Überlauf des Beckens und den Notablauf frei halten. Ein Rückschlagventil allein schützt nicht.',
  'caution.overflow':
    'Den Notüberlauf frei halten, gleich was eingelegt wird: Setzen sich die Medien zu, läuft das Wasser dort ab und nicht über den Rand.',
  'caution.weight':
    'Voll Wasser ist er schwer und rutscht: zwei Hände, trockener Boden, eine Wanne darunter.',
  'caution.skin':
    'Wunden abdecken und wasserdichte Handschuhe tragen: Aquarienwasser enthält Keime, die durch verletzte Haut eindringen. Mit einer Stelle, die in Wochen nicht heilt, zum Arzt gehen und das Aquarium erwähnen. Nie mit dem Mund ansaugen.',
  'caution.blade':
    'Von der Hand weg schneiden, auf einem Brett, mit Schnittschutzhandschuh an der anderen Hand.',
  'caution.foam':
    'Neuer Schaumstoff, Watte und Platten müssen frei von Bioziden, Flammschutz und Duftstoffen sein; spülen, bis das Wasser klar bleibt.',
  'caution.seal':
    'Hauptdichtung und Nut sauber wischen; dünn mit Silikonfett einfetten, nie mit Vaseline; die Verschlüsse gleichmäßig von Hand schließen.',
  'caution.disinfect':
    'Zwischen den Filtern zweier Besitzer: eigene Eimer für jeden, alle Teile außer den Medien desinfizieren, gründlich spülen und trocknen. Chlorbleiche nie mit Säure oder Ammoniak mischen; Handschuhe und Schutzbrille. Medien aus einem Becken mit kranken Tieren kommen in den Müll.',
  'caution.all-at-once':
    'Nie alle Medien auf einmal ersetzen oder schrubben: Auf ihnen leben die meisten Bakterien. Jeweils ein Drittel bis die Hälfte, mit Wochen dazwischen, und nie am Tag eines großen Wasserwechsels.',
  'caution.stopped':
    'Steht er geschlossen, verliert sein Wasser in Stunden den Sauerstoff, verschmutzt noch schneller. Bis eine halbe Stunde: weiterlaufen lassen. Bis zwei Stunden: die ersten Liter in einen Eimer. Länger: nicht ins Becken anlaufen lassen; öffnen, die Medien in Beckenwasser spülen und eine Woche lang Ammoniak und Nitrit messen (gängige Praxis, ohne Quelle).',
  'caution.stopped-open':
    'Nach einem Stromausfall von mehr als zwei Stunden die Medien in Beckenwasser spülen, bevor er wieder läuft, und eine Woche lang Ammoniak und Nitrit messen (gängige Praxis, ohne Quelle).',
};
