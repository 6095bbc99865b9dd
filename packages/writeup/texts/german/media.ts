/** Medien und was bei ihnen zu beachten ist, nach ihren englischen Namen. */
export const mediaNames: Readonly<Record<string, string>> = {
  mechanical: 'mechanisch',
  biological: 'biologisch',
  chemical: 'chemisch',

  foam: 'Schaumstoff',
  'pads and mats': 'Matten und Vliese',
  floss: 'Filterwatte',
  'cloth of a sock': 'Stoff einer Socke',
  grains: 'Körner',
  'rings and other pieces': 'Ringe und andere Stücke',
  'media in a bag': 'Medien im Beutel',
  'carriers that tumble': 'bewegte Aufwuchskörper',

  '# ppi foam': 'Schaumstoff # ppi',
  '# ppi foam block': 'Schaumstoffblock # ppi',
  'loose floss': 'lockere Filterwatte',
  'packed floss': 'gestopfte Filterwatte',
  'coarse bonded pad': 'grobe Filtermatte',
  'polishing pad': 'Feinfiltervlies',
  'Change it every two to four days and wash it without soap or softener; a full sock spills over its rim and catches nothing.':
    'Alle zwei bis vier Tage wechseln und ohne Seife und Weichspüler waschen; eine volle Socke läuft über ihren Rand und fängt nichts.',
  'sock felt': 'Sockenfilz',
  'needled mat': 'Nadelvliesmatte',
  'small ceramic rings': 'kleine Keramikringe',
  'ceramic rings': 'Keramikringe',
  'glazed porcelain rings': 'glasierte Porzellanringe',
  'sintered-glass rings': 'Sinterglasringe',
  'sintered-glass spheres': 'Sinterglaskugeln',
  'sintered-glass cylinders': 'Sinterglaszylinder',
  'expanded clay': 'Blähton',
  'lava rock': 'Lavagestein',
  pumice: 'Bimsstein',
  '3–5 mm gravel': 'Kies von 3 bis 5 mm (0,12 bis 0,20 in)',
  '10 mm gravel': 'Kies von 10 mm (0,39 in)',
  'coarse quartz sand': 'grober Quarzsand',
  'crushed coral or oyster shell': 'Korallenbruch oder Austernschalen',
  'plastic balls': 'Kunststoffbälle',
  'plastic carrier, lying still': 'ruhende Kunststoffträger',
  'plastic carrier, tumbling': 'wirbelnde Kunststoffträger',
  'fluidised sand': 'Wirbelbettsand',
  'plastic pot scrubbers': 'Topfreiniger aus Kunststoff',
  'fine granular carbon': 'feinkörnige Aktivkohle',
  'granular carbon': 'gekörnte Aktivkohle',
  'carbon pellets': 'Aktivkohlepellets',
  zeolite: 'Zeolith',
  'ferric oxide granules': 'Eisenoxidgranulat',
  'activated alumina': 'aktiviertes Aluminiumoxid',
  'peat granules': 'Torfgranulat',

  'Fill at most two thirds of the chamber, and keep it tumbling.':
    'Höchstens zwei Drittel der Kammer füllen und in Bewegung halten.',
  'Only for columns in which water carries it: lying still it clogs within days.':
    'Nur für Säulen, in denen ihn das Wasser trägt: Ruht er, setzt er sich in wenigen Tagen zu.',
  'Take sieved quartz; sand with lime raises hardness and pH.':
    'Gesiebten Quarz nehmen; kalkhaltiger Sand hebt Härte und pH.',
  'Use only foam that is free of biocide, flame retardant and perfume: upholstery foam is none of these.':
    'Nur Schaumstoff ohne Biozide, Flammschutz und Duftstoffe verwenden: Polsterschaum ist das nicht.',
  'Foam whose cells still have their skins passes two to three times less water than the figures say: hold it to the light.':
    'Schaumstoff, dessen Zellen noch Häute haben, lässt nur die Hälfte bis ein Drittel des Wassers durch, das die Werte angeben: gegen das Licht halten.',
  'Squeeze it out in tank water and do not wring it, or it tears and the bacteria go with the dirt.':
    'In Beckenwasser ausdrücken und nicht auswringen, sonst reißt er, und die Bakterien gehen mit dem Schmutz.',
  'It blinds within days when it meets dirt first: put coarser foam ahead of it.':
    'Trifft der Schmutz zuerst auf ihn, setzt er sich in wenigen Tagen zu: gröberen Schaumstoff davor legen.',
  'Dirt hardly washes out of foam this fine: expect to replace it after a few rinses.':
    'Aus so feinem Schaumstoff lässt sich Schmutz kaum auswaschen: nach wenigen Spülungen ersetzen.',
  'Use only fibre that is free of biocide, flame retardant and perfume: wadding sold for furniture or quilts often is not.':
    'Nur Fasern ohne Biozide, Flammschutz und Duftstoffe verwenden: Watte für Möbel oder Decken ist es oft nicht.',
  'Packed tight it chokes a weak pump: lay it loosely and never stuff a corner.':
    'Fest gestopft würgt sie eine schwache Pumpe ab: locker einlegen und nie eine Ecke ausstopfen.',
  'Lay it last among the mechanical media and look at it weekly: it stops the flow before it looks dirty.':
    'Als letztes der mechanischen Medien einlegen und wöchentlich ansehen: Es stoppt den Durchfluss, bevor es schmutzig aussieht.',
  'Stand the sheets along the flow with dirt caught ahead of them, or they fill with mud.':
    'Die Matten längs zum Wasser stellen und den Schmutz davor zurückhalten, sonst füllen sie sich mit Schlamm.',
  'Rinse new rings until the water runs clear, and throw out chipped ones: crumbs lodge in the pump.':
    'Neue Ringe spülen, bis das Wasser klar bleibt, und angeschlagene wegwerfen: Krümel setzen sich in die Pumpe.',
  'The area printed on the pack is measured with gas in pores where no water moves: do not size a filter by it.':
    'Die Fläche auf der Packung ist mit Gas in Poren gemessen, in denen sich kein Wasser bewegt: keinen Filter danach bemessen.',
  'When they crumble or stay clogged, replace a third at a time, weeks apart.':
    'Wenn sie bröckeln oder verstopft bleiben, jeweils ein Drittel ersetzen, mit Wochen dazwischen.',
  'They spread the water and hold leaves back, but catch almost none of the fine dirt.':
    'Sie verteilen das Wasser und halten Blätter zurück, vom feinen Schmutz aber fast nichts.',
  'Put mechanical media ahead: its fine pores, once filled with dirt, cannot be rinsed out.':
    'Mechanische Medien davor legen: Einmal mit Schmutz gefüllt, lassen sich die feinen Poren nicht ausspülen.',
  'New clay floats for days: soak it first, or hold it under a grid.':
    'Neuer Blähton schwimmt tagelang: vorher wässern oder unter einem Gitter halten.',
  'Wash it outdoors until the water runs clear before it goes in.':
    'Vor dem Einlegen im Freien waschen, bis das Wasser klar bleibt.',
  'Test a piece with acid first if the water must stay soft: fizzing stone raises hardness and pH.':
    'Muss das Wasser weich bleiben, vorher ein Stück mit Säure prüfen: Stein, der schäumt, hebt Härte und pH.',
  'Pumice rubs off as grit: keep it in a bag, away from the impeller.':
    'Bims reibt sich zu Sand ab: in einem Beutel halten, weg vom Rotor.',
  'It needs backwashing and a fine grid under it: one grain in the pump scores the shaft.':
    'Er braucht Rückspülung und ein feines Gitter darunter: Ein Korn in der Pumpe zerkratzt die Achse.',
  'It raises hardness, alkalinity and pH as it dissolves: leave it out for fish of soft water.':
    'Beim Auflösen hebt er Härte, Karbonathärte und pH: bei Fischen aus weichem Wasser weglassen.',
  'It dissolves only while the water is acid enough, so it does nothing for water that is hard already.':
    'Er löst sich nur, solange das Wasser sauer genug ist; bei schon hartem Wasser bewirkt er nichts.',
  'Made for trickling water: under water they carry little for the room they take.':
    'Für rieselndes Wasser gemacht: Unter Wasser leisten sie wenig für ihren Platz.',
  'Lying still it gathers mud: to keep itself clean it must tumble, and then fill at most two thirds of its chamber.':
    'Ruhend sammeln sie Schlamm: Um sich selbst zu reinigen, müssen sie sich umwälzen und dürfen dann höchstens zwei Drittel ihrer Kammer füllen.',
  'New carrier floats for weeks until growth makes it heavier.':
    'Neue Träger schwimmen wochenlang obenauf, bis Bewuchs sie schwerer macht.',
  'Take plain plastic without soap or metal, and wash it hot before use.':
    'Reinen Kunststoff ohne Seife und Metall nehmen und vor Gebrauch heiß waschen.',
  'Rinse it outdoors and do not breathe the dust, which irritates gills and wears pumps too.':
    'Im Freien spülen und den Staub nicht einatmen; er reizt auch Kiemen und verschleißt Pumpen.',
  'Take it out while fish are medicated: it takes most medicines out of the water.':
    'Während einer Behandlung der Fische herausnehmen: Sie nimmt die meisten Mittel aus dem Wasser.',
  'It takes out neither ammonia nor nitrite nor nitrate.':
    'Sie nimmt weder Ammoniak noch Nitrit noch Nitrat heraus.',
  'Useless in salted water, where it gives back the ammonium that it holds: take it out before any salt goes in.':
    'In gesalzenem Wasser nutzlos, dort gibt er das gehaltene Ammonium wieder ab: herausnehmen, bevor Salz hineinkommt.',
  'Ahead of the bacteria it takes their food: put it last, and wean the tank off it.':
    'Vor den Bakterien nimmt er ihnen die Nahrung: als Letztes einlegen und das Becken davon entwöhnen.',
  'It can lower phosphate too fast for corals and plants: begin with a quarter of the dose.':
    'Es kann Phosphat zu schnell für Korallen und Pflanzen senken: mit einem Viertel der Menge beginnen.',
  'Rinse it outdoors and do not breathe the dust; it stains, and fines cement together where water stands.':
    'Im Freien spülen und den Staub nicht einatmen; es färbt, und Feines verbackt, wo Wasser steht.',
  'It can take alkalinity with it: test after each change.':
    'Es kann Karbonathärte mitnehmen: nach jedem Wechsel messen.',
  'It gives off dust and, in acid water, some aluminium: rinse it well and keep it out of soft, acid tanks.':
    'Es gibt Staub ab und in saurem Wasser etwas Aluminium: gut spülen und von weichen, sauren Becken fernhalten.',
  'It lowers pH and hardness only where the water is soft already; hard water hardly moves.':
    'Er senkt pH und Härte nur, wo das Wasser schon weich ist; hartes Wasser ändert sich kaum.',
  'Take plain peat without fertiliser, and boil it first.':
    'Reinen Torf ohne Dünger nehmen und vorher abkochen.',
};
