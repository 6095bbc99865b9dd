/** Befunde: was sie sagen, und was abhilft. */
export const faultSentences: Readonly<Record<string, string>> = {
  'fault.pump-cannot-lift':
    'Es fließt kein Wasser: {head} Förderhöhe der Pumpe reichen nicht bis zum Auslauf.',
  'fault.biological-before-mechanical':
    'Das Wasser trifft auf „{early}“ vor „{late}“; die biologische Schicht nimmt so den Schmutz auf, den eine mechanische halten sollte.',
  'fault.fine-before-coarse': 'Das Wasser trifft auf die feine Schicht „{fine}“ vor der gröberen „{coarse}“.',
  'fault.dirt-in-it': '{fault} Darin liegen {share} des Schmutzes im Filter.',
  'fault.ammonium-before-biological':
    'Das Wasser trifft auf „{early}“ vor „{late}“: Frisch nimmt es {share} des Ammoniums weg, von dem die Bakterien leben, und gibt ihnen die Last zurück, sobald es erschöpft ist.',
  'fault.chemical-before-biological':
    'Das Wasser trifft auf „{early}“ vor „{late}“: Schmutz verschließt es, bevor seine Kapazität genutzt ist.',
  'fault.bypass-past-bed':
    '{share} des Wassers laufen durch den Spalt von {gap} neben {chamber} und an den Medien vorbei.',
  'fault.cut-too-small':
    '{share} des Wassers laufen um „{bed}“ herum: Das Stück lässt auf jeder Seite {gap} zur Wand frei.',
  'fault.packed-tight':
    '„{bed}“ ist aus dem {times}-fachen Raum zusammengepresst: Das Wasser kommt schwerer hindurch, und es verstopft früher.',
  'fault.past-bag': '{share} des Wassers laufen in den Ecken der Kammer am Beutel von „{bed}“ vorbei.',
  'fault.slot-past-media': '{share} des Wassers nehmen den Spalt von {gap} {way} und verfehlen die Medien.',
  'fault.dye-early':
    'Ein Zehntel des Farbstoffs war nach {measured} hindurch, nach der Karte braucht es {computed}: weiter auseinander, als ihre Unsicherheiten erlauben. Wasser nimmt einen Weg an den Medien vorbei, der nicht auf der Karte steht.',
  'fault.dye-dead-room':
    'Der Farbstoff blieb im Mittel {measured}, das Wasser auf der Karte braucht {computed}: {share} davon stehen still oder sind nicht da.',
  'fault.partition-leaks': '{share} des Wassers nehmen den Weg „{way}“ und treffen auf gar kein Medium.',
  'fault.runs-down-walls':
    'Etwa {share} des Wassers laufen an den Wänden von „{chamber}“ herunter und verfehlen die Medien (Schätzung aus der Größe der Stücke, innerhalb eines Faktors zwei).',
  'fault.holes-blocked':
    'Von den Löchern der Tropfplatte sind {blocked} verstopft; von den übrigen dürfen {spare} verstopfen, bevor Wasser über ihren Rand läuft.',
  'fault.drip-plate-tight':
    'Von den Löchern der Tropfplatte dürfen nur {spare} verstopfen, bevor Wasser über ihren Rand läuft.',
  'fault.opening-past-media': '{share} des Wassers treten durch „{way}“ ein und treffen auf kein Medium.',
  'fault.opening-narrower-than-hose':
    'Die Stelle „{way}“ hat {area}, weniger als die {hose} des Schlauchs, und kostet {share} der Förderhöhe der Pumpe.',
  'fault.media-out-of-place':
    'Die Schicht „{medium}“ liegt in „{chamber}“; gebaut ist die Kammer für: {holds}.',
  'fault.bed-too-shallow':
    'Die Schicht „{medium}“ ist {depth} dick, bei bis zu {speed}: ihre Stücke oder Poren messen {piece}, und mindestens {fewest} davon gehören übereinander.',
  'fault.dead-chamber': 'Am Platz „{chamber}“ liegen auf {volume} keine Medien.',
  'fault.no-mechanical': 'Im Filter fehlt ein mechanisches Medium.',
  'fault.no-biological': 'Im Filter fehlt ein biologisches Medium.',
  'fault.replaced-often':
    'Die Schicht „{medium}“ setzt sich zu und muss etwa alle {often} ersetzt werden; das kostet etwa {cost} {currency} im Jahr.',
  'fault.ammonium-in-salt-water':
    'In gesalzenem Wasser hält „{medium}“ kein Ammonium und gibt das aufgenommene wieder ab.',
  'fault.softener-in-hard-water': '„{medium}“ bewirkt bei Wasser mit {alkalinity} kaum etwas.',
  'fault.full-before-replaced':
    'Die Schicht „{medium}“ ist nach kurzer Zeit erschöpft ({lasts}) und dann zu ersetzen, nicht erst nach der üblichen ({due}); der Schmutz lässt {share} davon offen.',
  'fault.dirt-in-biological-bed':
    'In der Schicht „{medium}“ liegen {dirt} des zurückgehaltenen Schmutzes; der organische Kohlenstoff lässt ihren Bakterien {rate} ihrer Leistung.',
  'fault.hose-too-long':
    'Der {hose}, {length} lang bei {bore} Innendurchmesser, kostet {share} der Förderhöhe der Pumpe.',
  'fault.hose-kinked': 'Knicke oder Schlaufen im {hose} kosten beim sauberen Durchfluss {head} Förderhöhe.',
  'fault.barbs-too-narrow':
    'Die {barbs}, {bore} weit in einem Schlauch von {hose}, kosten {share} der Förderhöhe der Pumpe.',
  'fault.outlet-lift':
    'Der Auslauf liegt {lift} über dem Wasserspiegel: Das Wasser wird wirklich gehoben, was {share} der Förderhöhe der Pumpe kostet.',
  'fault.flow-small':
    'Das Beckenwasser läuft {times}-mal in der Stunde durch, weniger als einmal (gängige Praxis, ohne Quelle).',
  'fault.flow-large':
    'Das Beckenwasser läuft {times}-mal in der Stunde durch: starke Strömung für Fische aus stillem Wasser (gängige Praxis, ohne Quelle).',
  'fault.fed-more-than-carried':
    'Das Becken erhält {fed} Futter; der Filter allein bewältigt am Tag {day} nach der Reinigung {carried}. Begrenzt wird er {bound}.',
  'fault.oxygen-starved-outlet':
    'Am Tag {day} nach der Reinigung verlässt das Wasser den Filter mit {oxygen} Sauerstoff.',
  'fault.water-too-acid':
    'Bei pH {pH} arbeiten die Bakterien mit halber Leistung oder weniger, gleich mit welchen Medien.',
  'fault.clogs-soon': 'Schon {interval} nach der Reinigung ist es so weit: {end}.',
  'fault.overflow-open': '{share} des Wassers laufen schon bei sauberen Medien über „{way}“.',
  'fault.spill.intake-hose-off':
    'Löst sich der Ansaugschlauch, laufen {volume} auf den Boden (der Wasserspiegel fällt um {fall}), anfangs {flow}: etwa {time}.',
  'fault.spill.outlet-hose-off-running':
    'Löst sich der Auslaufschlauch bei laufender Pumpe, fördert sie {volume} auf den Boden (der Wasserspiegel fällt um {fall}), etwa {flow}: {time}.',
  'fault.spill.outlet-hose-off-stopped':
    'Löst sich der Auslaufschlauch bei stehender Pumpe, hebert der Rücklauf {volume} auf den Boden (der Wasserspiegel fällt um {fall}), anfangs {flow}: etwa {time}.',
  'fault.spill.power-fails':
    'Fällt der Strom aus, laufen {volume} aus dem Becken herab (der Wasserspiegel fällt um {fall}), und unten ist Platz für {room}.',
  'fault.jet-sweeps-tank':
    'Der Strahl des Auslaufs tritt mit {speed} aus und ist über {reach}, also durch das ganze Becken, schneller als {stands}: Mehr halten seine schwächsten Schwimmer auf Dauer nicht aus.',
  'fault.alkalinity-runs-down':
    'Beim jetzigen Futter verbraucht die Nitrifikation {used} Karbonathärte (als CaCO3) in der Woche; Wasserwechsel bringen höchstens {brought}.',
  'fault.measured-differs':
    'Die Messung „{test}“ ({state}) ergab {measured}, die Modelle sagen {computed}: {share} auseinander, mehr als ihre Unsicherheit.',
  'fault.measured-differs.from-none':
    'Die Messung „{test}“ ({state}) ergab {measured}, die Modelle sagen {computed}: weiter auseinander als ihre Unsicherheit.',
  'fault.measured-below-dirty':
    'Wie vorgefunden gemessen, ergab er {measured}. Sauber wären es nach den Modellen {computed}, und mit Medien, die {uncleaned} nicht gereinigt wurden, immer noch {dirty}: Schmutz in den Medien erklärt das nicht.',
  'fault.plate-lies-bare': '{share} des Wassers treten auf dem Weg „{way}“ ein und treffen keine Medien.',
  'fault.lift-tube-short':
    'Das Steigrohr reicht {air} über den Lufteintritt hinauf und endet {below} unter dem Wasserspiegel: Von dort an heben die Blasen nichts mehr.',
  'fault.space-behind-narrow':
    'Hinter der Matte sind nur {space} frei, weniger als die {least}, mit denen Wasser durch ihre ganze Fläche kommt.',
  'fault.mat-fast':
    'Das Wasser geht mit {speed} durch die Matte, schneller als die {least} bis {most}, mit denen Matten betrieben werden: Schmutz wird hineingezogen.',
  'fault.mat-slow':
    'Das Wasser geht mit {speed} durch die Matte, langsamer als die {least} bis {most}, mit denen Matten betrieben werden.',
  'fault.bed-floats': '{medium}: sinkt nicht, aufsteigendes Wasser kann daraus kein Bett tragen.',
  'fault.bed-not-carried':
    'Das Wasser steigt mit {speed}, zu langsam, um das Bett aus „{medium}“ zu tragen, das {least} braucht: Es liegt still und verstopft.',
  'fault.bed-washed-up':
    'Das Wasser trägt das Bett aus „{medium}“, in Ruhe {rest} tief, bis {high} hoch in einer Säule von {column}: Es staut sich am Sieb.',
  'fault.bed-washed-out':
    'Das Wasser steigt schneller, als „{medium}“ sinkt: Es wird ans Sieb der Säule von {column} gespült.',
  'fault.carriers-overfull':
    'Die Träger füllen {fill} ihrer Kammer; bei mehr als {most} wirbeln sie nicht und sammeln Schlamm.',
  'fault.screen-too-wide':
    'Das Sieb ist {slot} weit, „{medium}“ misst {piece}: Es geht hindurch, in Pumpe und Becken.',
  'fault.order-follows-the-water':
    'Das Wasser trifft die Medien in der richtigen Folge: {order}, grob vor fein.',
  'fault.little-bypass': 'Höchstens {share} des Wassers laufen an einer bestückten Stufe vorbei.',
  'fault.claim-contradicts-itself': 'Die Angabe „{claim}“ des Herstellers widerspricht sich selbst: {detail}',

  'stages.then': '{first}, dann {next}',
  'hose.intake': 'Ansaugschlauch',
  'hose.outlet': 'Auslaufschlauch',
  'barbs.intake': 'Schlauchtüllen der Ansaugung',
  'barbs.outlet': 'Schlauchtüllen des Auslaufs',
  'place.cut': 'Spalt um {bed}',
  'place.corners': 'Ecken des Beutels von {bed}',
  'place.tray-lip': 'am Rand von {chamber}',
  'place.end-cap': 'an der Endkappe von {chamber}',
  'place.partition': 'an der Trennwand neben {chamber}',
  'place.other': 'an {chamber} vorbei',
  'bed-in-chamber': '{medium} in {chamber}',
  'bed-of-its-own': '{medium} ({chamber})',

  'bound.area': 'durch die Fläche, die den Bakterien offen steht',
  'bound.flow': 'durch den Durchfluss',
  'bound.oxygen': 'durch Sauerstoff',
  'bound.alkalinity': 'durch pH und Karbonathärte des Wassers',
  'bound.nitrite': 'durch Nitrit',
  'bound.ammonia-toxicity': 'durch freies Ammoniak',
  'bound.none': 'durch nichts',
  'bound.with-why': '{by}: {why}',
  'bound.area.why': 'Für mehr von ihnen ist auf den Medien kein Platz',
  'bound.flow.why': 'Mehr Wasser kommt an den Bakterien nicht vorbei',
  'bound.oxygen.why': 'Die Bakterien verbrauchen, was das Wasser ihnen bringt',
  'bound.alkalinity.why': 'Den Bakterien fehlt Karbonat',
  'bound.nitrite.why':
    'Die Bakterien, die daraus Nitrat machen, kommen vor denen an ihre Grenze, die es aus Ammoniak machen',
  'bound.ammonia-toxicity.why': 'Was die Bakterien davon übrig lassen, wird bei diesem pH zuerst schädlich',

  'fed.stated': '{feed}',
  'fed.assumed': '{feed} (nach dem Besatz angenommen, auf einen Faktor {factor} genau)',
  'fed.assumed-roughly': '{feed} (nach dem Besatz angenommen)',

  'end.none': 'nichts ist geschehen',
  'end.overflow':
    'Wasser läuft über ({place}); von da an geht es schmutzig an den Medien vorbei, und am Becken kommen noch {share} des sauberen Durchflusses an',
  'end.slows':
    '{place} ist verstopft und lässt ein Drittel weniger Wasser durch, und am Becken bleiben {share} des sauberen Durchflusses',
  'end.past-gap':
    '{place} ist verstopft; von da an läuft ein Drittel des Wassers und mehr durch den Spalt daran vorbei, sodass es beim Auslitern nicht auffällt: {share} des sauberen Durchflusses kommen noch am Becken an',
  'end.past-otherwise':
    '{place} ist verstopft; von da an läuft ein Drittel des Wassers und mehr anders daran vorbei, sodass es beim Auslitern nicht auffällt: {share} des sauberen Durchflusses kommen noch am Becken an',
};

export const cureSentences: Readonly<Record<string, string>> = {
  'cure.pump-cannot-lift': 'Den Auslauf tiefer legen oder eine Pumpe mit mehr Förderhöhe einbauen.',
  'cure.biological-before-mechanical': 'Die mechanischen Medien an den Anfang des Wasserwegs legen.',
  'cure.fine-before-coarse': 'Das Wasser zuerst durch das gröbere Medium führen.',
  'cure.chemical-before-biological': 'Chemische Medien hinter die biologischen legen.',
  'cure.bypass-past-bed':
    'Den Spalt mit einem dünnen, herausnehmbaren Streifen aus Silikon oder geschlossenzelligem Schaum schließen.',
  'cure.bypass-past-bed.end-caps':
    'Die Dichtungen der Endkappen erneuern oder eine Schaumstoffhülse 2 bis 3 mm (0,08 bis 0,12 in) zu lang schneiden, damit sie darauf drücken.',
  'cure.round-seat-leaks': 'Den Dichtring dieses Sitzes erneuern und dünn mit Silikonfett fetten.',
  'cure.cut-too-small':
    'Ein neues Stück schneiden, das in jeder Richtung 2 bis 3 mm (etwa 1/10 Zoll) größer ist als sein Raum, damit es an den Wänden anliegt.',
  'cure.packed-tight': 'Watte herausnehmen, bis der Rest locker liegt.',
  'cure.past-bag':
    'Den Beutel weniger prall füllen und in die Ecken drücken, oder die Medien ohne Beutel einlegen.',
  'cure.slot-past-media': 'Den Spalt mit einem herausnehmbaren Streifen oder einer neuen Dichtung schließen.',
  'cure.dye-early':
    'Den Spalt mit einer Lehre an jedem Sitz, Rand und jeder Kante suchen, in die Karte eintragen und den Versuch wiederholen.',
  'cure.dye-dead-room':
    'Zuerst die Volumen auf der Karte und den Durchfluss des Versuchs prüfen, dann Ecken suchen, die das Wasser nicht erreicht.',
  'cure.partition-leaks': 'Die Kante der Trennwand mit einem herausnehmbaren Streifen abdichten.',
  'cure.runs-down-walls':
    'Kleinere Stücke nehmen oder auf halber Höhe einen Ring oder ein Gitter einlegen, das das Wasser von den Wänden zurückführt.',
  'cure.holes-blocked':
    'Jedes Loch freimachen, und auf einer Matte über der Platte abfangen, was sie verstopft.',
  'cure.drip-plate-tight':
    'Die Löcher frei und die Matte darüber sauber halten; mehr Löcher nur, wo sich die Platte ersetzen lässt.',
  'cure.opening-past-media':
    'Diese Schlitze abdecken, solange das Dreifache der Ansaugfläche der Pumpe offen bleibt (gängige Praxis, ohne Quelle).',
  'cure.opening-narrower-than-hose':
    'Frei machen oder aufweiten, wo weder Druckwand noch Dichtung angeschnitten wird.',
  'cure.bed-too-shallow': 'Auf {depth} Dicke bringen.',
  'cure.bed-too-shallow.no-room':
    'Für mehr Dicke ist kein Platz: eine eigene Kammer dafür nehmen oder die Schicht weglassen.',
  'cure.media-out-of-place':
    'In eine Kammer legen, die dafür gebaut ist, oder mit Absicht so lassen: Pläne legen nicht mehr davon hinein, und gerechnet wird wie mit demselben Medium an anderer Stelle.',
  'cure.dead-chamber': 'Den Platz nutzen oder mit Absicht leer lassen.',
  'cure.no-mechanical': 'Ein mechanisches Medium einlegen.',
  'cure.no-biological': 'Ein biologisches Medium einlegen.',
  'cure.replaced-often.chemical':
    'Mechanische Medien davor legen und sie aus dem Filter nehmen, solange nichts aufzunehmen ist.',
  'cure.replaced-often.ahead': 'Gröbere Medien davor legen.',
  'cure.replaced-often': 'Auswaschbaren Schaumstoff an seine Stelle setzen oder gröbere Medien davor legen.',
  'cure.ammonium-in-salt-water': 'Herausnehmen.',
  'cure.softener-in-hard-water': 'Herausnehmen oder das Wasser vorher enthärten.',
  'cure.full-before-replaced': 'Mehr davon nehmen, hinter den anderen Medien.',
  'cure.dirt-in-biological-bed': 'Davor mehr zurückhalten: eine feinere oder dickere mechanische Schicht.',
  'cure.hose-too-long': 'Kürzen; hier gerechnet für {length}.',
  'cure.hose-kinked': 'Den Schlauch in weiten Bögen ohne Knick verlegen.',
  'cure.barbs-too-narrow':
    'Tüllen einsetzen, die so weit sind wie der Schlauch, wo die Anschlüsse es zulassen.',
  'cure.outlet-lift':
    'Den Auslauf unter den Wasserspiegel legen; das Belüftungsloch gegen Rücklauf offen lassen.',
  'cure.flow-small': 'Eine größere Pumpe oder ein zweiter Filter; mehr Medien helfen hier nicht.',
  'cure.flow-large':
    'Den Auslauf auf ein Düsenrohr verteilen oder gegen die Scheibe drehen; drosseln nur am Auslauf.',
  'cure.fed-more-than-carried':
    'Weniger füttern, für mehr Leistung neu bestücken oder den Rest Wänden, Pflanzen und Wasserwechseln überlassen und Ammoniak und Nitrit messen.',
  'cure.oxygen-starved-outlet':
    'Früher reinigen, den Durchfluss erhöhen oder den Auslauf den Wasserspiegel bewegen lassen.',
  'cure.water-too-acid':
    'Karbonathärte messen; langsam anheben, wenn die Tiere nicht aus weichem, saurem Wasser stammen, das seine eigenen, langsamen Bakterien hat.',
  'cure.clogs-soon':
    'Mehr Fläche oder ein gröberes Medium dort, wo der Schmutz hängen bleibt; ein Vorfilter, der leicht zu erreichen ist.',
  'cure.overflow-open':
    'Davor ein gröberes oder dünneres Medium verwenden; den Notüberlauf nie verschließen.',
  'cure.spill.intake-hose-off':
    'Beide Schlauchenden mit Schellen sichern, den Filter in eine Wanne mit Wassermelder stellen und ein kleines Luftloch wenige Zentimeter unter dem Wasserspiegel in das Ansaugrohr bohren oder dessen Mündung höher setzen. Hähne schließen, bevor Schläuche gelöst werden.',
  'cure.spill.outlet-hose-off-running':
    'Beide Schlauchenden mit Schellen sichern, den Filter in eine Wanne mit Wassermelder stellen und die Mündung des Ansaugrohrs höher setzen oder ihm ein Luftloch geben: Dann zieht die Pumpe Luft und fördert nicht weiter.',
  'cure.spill.outlet-hose-off-stopped':
    'Zwei kleine Löcher knapp unter dem Wasserspiegel in den Rücklauf bohren und freihalten oder seine Mündung höher setzen. Ein Rückschlagventil ist nur die zweite Sicherung: Es klemmt.',
  'cure.spill.power-fails':
    'In den Rücklauf dicht unter dem Wasserspiegel ein Belüftungsloch bohren oder seine Mündung höher setzen, das Filterbecken mit weniger Wasser betreiben und es ausprobieren: abschalten und zusehen. Nie allein auf ein Rückschlagventil bauen und nie den Notablauf verschließen.',
  'cure.jet-sweeps-tank':
    'Den Auslauf auf ein Düsenrohr verteilen, gegen Scheibe oder Oberfläche richten oder nur den Auslauf drosseln.',
  'cure.alkalinity-runs-down':
    'Karbonathärte wöchentlich messen; mehr Wasser wechseln oder puffern, bevor der pH fällt.',
  'cure.measured-differs':
    'Die Messung wiederholen; dann suchen, was die Beschreibung auslässt: Belag im Schlauch, ein verschlissener Rotor, ein nicht gemessener Spalt.',
  'cure.measured-below-dirty':
    'Die Schläuche reinigen und noch einmal messen, bevor sonst etwas geändert wird. Dann bei gezogenem Stecker suchen, was bleibt: Belag in den Schläuchen, der Rotor, ein verstopfter Ansaugkorb, Luft im Filter.',
  'cure.measured-below-dirty.air':
    'Zuerst die Luft messen: Ein verstopfter Ausströmer oder Schlauch, eine müde Membran oder ein klemmendes Rückschlagventil nimmt Luft und damit Wasser. Dann nach einem losen oder verlegten Rohr sehen.',
  'cure.plate-lies-bare':
    'Den Kies darüber ebnen; ein Stein oder ein Netz unter der Oberfläche hält Gräber fern.',
  'cure.lift-tube-short': 'Das Rohr um {length} verlängern, bis zum Wasserspiegel.',
  'cure.space-behind-narrow':
    'Die Matte nach vorn rücken oder Leisten dahinter stellen, die sie von der Scheibe abhalten.',
  'cure.mat-fast': 'Weniger Luft oder eine kleinere Pumpe; eine größere Matte.',
  'cure.mat-slow':
    'Mehr Luft, ein längeres Steigrohr oder ein zweites, wenn das Becken mehr Durchfluss braucht.',
  'cure.bed-floats': 'Sand oder andere Körner nehmen, die sinken.',
  'cure.bed-not-carried': 'Mehr Durchfluss: stärkere Pumpe, weitere Schläuche; oder feinere Körner.',
  'cure.bed-washed-up': 'Medium herausnehmen, bis in Ruhe {depth} bleiben, oder den Auslauf drosseln.',
  'cure.bed-washed-out': 'Weniger Durchfluss oder gröbere Körner.',
  'cure.carriers-overfull':
    'Träger herausnehmen, bis {good} gefüllt sind; nass halten, auf ihnen leben die Bakterien.',
  'cure.screen-too-wide':
    'Ein Sieb einsetzen, das enger als das kleinste Stück und größer in der Fläche ist.',
  'cure.order-follows-the-water': 'Die Reihenfolge beibehalten.',
  'cure.little-bypass': 'Die Abdichtung so lassen.',
  'cure.claim-contradicts-itself':
    'Beim Hersteller nachfragen, was gemeint ist; bis dahin gilt, was hier gemessen oder gerechnet wurde.',

  'weighed.cure': '{cure} {weighed}',
  'weighed.gained': 'Gewonnen: {changes}.',
  'weighed.given-up': 'Aufgegeben: {changes}.',
  'weighed.loses': 'Für sich allein kostet das hier mehr, als es bringt: siehe die Pläne.',
  'weighed.nothing': 'Für sich allein bringt das hier unter dem Strich nichts: siehe die Pläne.',
  'weighed.either': 'Abwägen, was dieses Becken nötiger hat.',
  'weighed.gains': 'Unter dem Strich bringt es mehr, als es kostet.',
  'weighed.feed.more': '{percent} % mehr bewältigtes Futter',
  'weighed.feed.less': '{percent} % weniger bewältigtes Futter',
  'weighed.feed.from-none': 'bewältigtes Futter, wo keines ist',
  'weighed.flow.more': '{percent} % mehr Durchfluss',
  'weighed.flow.less': '{percent} % weniger Durchfluss',
  'weighed.flow.from-none': 'Durchfluss, wo keiner ist',
  'weighed.interval': 'Reinigungsintervall {after} statt {before}',
};
