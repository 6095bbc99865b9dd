/** Was hinter einem schwach gewordenen Durchfluss steckt, was es zeigt und was es klärt. */
export const eliminationSentences: Readonly<Record<string, string>> = {
  'cause.intake-blocked': 'die Ansaugung ist verstopft: der Ansaugkorb oder ein Schwamm darauf',
  'cause.air': 'im Kopf steht Luft',
  'cause.air-short': 'im Steigrohr kommt zu wenig Luft an: Ausströmer, Leitung oder Luftpumpe',
  'cause.impeller-fouled': 'der Rotor oder seine Kammer ist verschmutzt',
  'cause.impeller-worn': 'der Rotor, sein Magnet oder seine Achse ist verschlissen',
  'cause.hose-film': 'in den Schläuchen sitzt ein Belag',
  'cause.media-clogged': 'die Medien sind verstopft',
  'cause.outlet-restricted': 'der Auslauf ist gedrosselt: ein Hahn, ein Knick oder verstopfte Löcher',

  'question.rattle': 'Mit der Hand am Gehäuse horchen: Klappert es?',
  'question.growl': 'Horchen: Brummt die Pumpe, als bekäme sie zu wenig Wasser?',
  'question.gurgle': 'Horchen: Gluckert es?',
  'question.bubbles': 'Den Auslauf ansehen: Spuckt er Luftblasen?',
  'question.few-bubbles': 'In das Steigrohr sehen: Steigen weniger Blasen auf als früher?',
  'question.covered-intake':
    'Die Ansaugung im Becken ansehen: Ist sie von Pflanzen, Schnecken oder Schleim bedeckt?',
  'question.brown-hoses': 'Die Schläuche gegen eine Lampe halten: Sind sie innen braun?',
  'question.bent-hose':
    'Den Auslauf verfolgen: Ist ein Hahn halb zu, ein Schlauch geknickt oder ein Loch des Düsenrohrs verstopft?',
  'question.shutoff':
    'Das Ende des Auslaufschlauchs über das Becken heben, bis nichts mehr fließt, höchstens eine Minute lang, und die Höhe über dem Wasser messen.',

  'trial.clear-intake':
    'Stecker ziehen, die Ansaugung von allem befreien, was auf und in ihr sitzt, und den Durchfluss messen.',
  'trial.open-outlet':
    'Hähne öffnen, Schläuche geradelegen, die Löcher des Düsenrohrs freimachen und den Durchfluss messen.',
  'trial.let-air-out':
    'Das Becken auffüllen, Stecker ziehen, das Gehäuse kippen, bis keine Luft mehr kommt, einschalten und den Durchfluss messen.',
  'trial.give-air':
    'Stecker der Luftpumpe ziehen, den Ausströmer reinigen oder wechseln, nachsehen, dass die Leitung frei ist und ein Rückschlagventil hat, und den Durchfluss messen.',
  'trial.clean-impeller':
    'Stecker ziehen, etwaige Hähne schließen, Rotor und Rotorkammer reinigen und den Durchfluss messen.',
  'trial.new-impeller':
    'Stecker ziehen, etwaige Hähne schließen, einen Rotor mit nachweislich guter Achse einsetzen und den Durchfluss messen.',
  'trial.brush-hoses':
    'Stecker ziehen, etwaige Hähne schließen, die Schläuche über einem Eimer durchbürsten und den Durchfluss messen.',
  'trial.rinse-media':
    'Stecker ziehen, etwaige Hähne schließen, die Medien, die Schmutz fangen, in Beckenwasser ausspülen, nie alle Medien auf einmal, und den Durchfluss messen.',

  'faded.not.computed':
    'Ein Nachlassen ist nicht zu erkennen: Es fließen {share} des berechneten Durchflusses, und so weit kann diese Zahl daneben liegen.',
  'faded.not': 'Der Durchfluss ist nicht schwächer geworden: {share} sind noch da.',
  'faded.yes': '{share} des Durchflusses sind noch da: {now} von {before}.',
  'faded.back': 'Der Durchfluss ist wieder da: {share} von früher.',
  'faded.chief': 'Am ehesten: {cause}.',
  'faded.chief-of-two': 'Zwei Ursachen sind etwa gleich wahrscheinlich: {cause}; oder {other}.',
  'faded.was': 'Es war am ehesten dies: {cause}.',
  'faded.computed-before':
    'Der frühere Durchfluss ist für saubere Medien gerechnet, denn gemessen hat ihn niemand.',
  'faded.unexplained':
    'Keine dieser Ursachen, allein oder zusammen, kommt dem Gemessenen nahe: Die Messungen noch einmal ansehen oder etwas suchen, das nicht auf der Liste steht.',
  'faded.few':
    'Nur wenige Kombinationen von Ursachen passen zu allen Messungen: Die Anteile beruhen auf einer Handvoll Fälle.',
  'faded.from-memory':
    'Die Anteile gehen davon aus, wie oft jede Ursache vorkommt (aus dem Gedächtnis), und werden von den Messungen verschoben.',
};
