import { notLookedUp } from './sources.ts';

/** Bauarten mit Medien um ein Rohr, ihre Orte, Maße und Änderungen, nach ihren englischen Namen. */
export const aboutTubeNames: Readonly<Record<string, string>> = {
  'canister with a tube in the middle': 'Außenfilter mit Mittelrohr',
  'canister with a cartridge': 'Außenfilter mit Patrone',

  'Never shorten the tube below the height at which dirt gathers.':
    'Nie das Rohr unter die Höhe kürzen, in der sich Schmutz sammelt.',
  'Never drill the tube: every hole in it is a way past the media.':
    'Nie das Rohr anbohren: Jedes Loch darin ist ein Weg an den Medien vorbei.',
  'Never let the water run through the cartridge backwards for good: it washes the dirt into the core.':
    'Nie das Wasser auf Dauer rückwärts durch die Patrone führen: Es spült den Schmutz in den Kern.',
  'Never stretch a sleeve over a core that is cracked or crushed: replace the core first.':
    'Nie eine Hülse über einen gerissenen oder eingedrückten Kern ziehen: erst den Kern ersetzen.',
  'Never press a cartridge home with a tool, and never grease its seals with petroleum jelly: it swells rubber.':
    'Nie eine Patrone mit Werkzeug eindrücken und nie ihre Dichtungen mit Vaseline fetten: Sie lässt Gummi quellen.',

  'media round the tube': 'Medienraum um das Rohr',
  'space round the media': 'Raum um die Medien',
  'tube in the middle': 'Mittelrohr',
  'mouth of the tube': 'Mündung des Rohrs',
  'slot under the foot of the tube': 'Spalt unter dem Fuß des Rohrs',
  cartridge: 'Patrone',
  'space round the cartridge': 'Raum um die Patrone',
  'core of the cartridge': 'Kern der Patrone',
  spigot: 'Stutzen',
  'gap round the spigot': 'Spalt um den Stutzen',

  'inner diameter of the housing': 'Innendurchmesser des Gehäuses',
  'outer diameter of the media': 'Außendurchmesser der Medien',
  'length of the media between the end caps': 'Länge der Medien zwischen den Endkappen',
  'outer diameter of the tube in the middle': 'Außendurchmesser des Mittelrohrs',
  'open share of the tube': 'offener Anteil des Rohrs',
  'gap between media and end caps': 'Spalt zwischen Medien und Endkappen',
  'bore of the tube in the middle': 'Weite des Mittelrohrs',
  'gap under the foot of the tube': 'Spalt unter dem Fuß des Rohrs',
  'bore of the spigot that the cartridge sits on': 'Weite des Stutzens, auf dem die Patrone sitzt',
  'media length': 'Medien\u00adlänge',
  'media diameter': 'Medien\u00addurch\u00admesser',

  'renew the end seals': 'Enddichtungen erneuern',
  'cut a foam sleeve to a length that the end caps squeeze':
    'Schaumstoffhülse so lang schneiden, dass die Endkappen sie drücken',
  'turn the cartridge, so that the side away from the inlet loads next':
    'Patrone drehen, damit als Nächstes die vom Zulauf abgewandte Seite den Schmutz aufnimmt',

  'slots and holes leave about a quarter of such a tube open; from memory': `Schlitze und Löcher lassen etwa ein Viertel eines solchen Rohrs offen; ${notLookedUp}`,
  'end caps that only lie on leave about a third of a millimetre at each end; from memory': `lose aufliegende Endkappen lassen an jedem Ende etwa 0,3 mm (0,01 in) frei; ${notLookedUp}`,
  'such tubes are a little wider inside than a 16 mm (5/8 in) hose; from memory': `solche Rohre sind innen etwas weiter als ein Schlauch von 16 mm (5/8 in); ${notLookedUp}`,
  'a foot seal that has set leaves about a fifth of a millimetre; from memory': `eine gesetzte Fußdichtung lässt etwa 0,2 mm (0,008 in) frei; ${notLookedUp}`,
  'spigots are about as wide inside as the outlet hose; from memory': `Stutzen sind innen etwa so weit wie der Auslaufschlauch; ${notLookedUp}`,
  'a cartridge that slides on by hand leaves about a fifth of a millimetre; from memory': `eine von Hand aufgeschobene Patrone lässt etwa 0,2 mm (0,008 in) frei; ${notLookedUp}`,
  'usual for a canister with a tube in the middle, from memory': `üblich bei einem Außenfilter mit Mittelrohr; ${notLookedUp}`,
  'usual for a canister with a cartridge, from memory': `üblich bei einem Außenfilter mit Patrone; ${notLookedUp}`,
};
