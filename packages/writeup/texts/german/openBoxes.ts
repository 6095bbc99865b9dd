import { notLookedUp } from './sources.ts';

/** Offene Kästen unter dem Becken, ihre Orte, Maße und Änderungen, nach ihren englischen Namen. */
export const openBoxNames: Readonly<Record<string, string>> = {
  sump: 'Filterbecken',
  'Never rely on a check valve alone against water that runs back: it sticks and it leaks.':
    'Nie sich gegen zurücklaufendes Wasser allein auf ein Rückschlagventil verlassen: Es klemmt, und es leckt.',
  "Never narrow the tank's overflow or its pipe, and never close the emergency drain.":
    'Nie den Überlauf des Beckens oder sein Rohr verengen und nie den Notablauf verschließen.',
  'Never fill the box higher than leaves room for all that comes down when the power fails.':
    'Nie den Kasten höher füllen, als Raum für alles lässt, was bei Stromausfall herunterkommt.',
  'Never close the rim that a full sock spills over.':
    'Nie den Rand verschließen, über den eine volle Socke läuft.',

  sock: 'Socke',
  'tray # (top)': 'Einsatz # (oben)',
  'tray #': 'Einsatz #',
  "tank's overflow": 'Überlauf des Beckens',
  'inside of the sock': 'Inneres der Socke',
  'section with the sock': 'Abteil mit der Socke',
  'space above the media': 'Raum über den Medien',
  'between trays # and #': 'zwischen Einsatz # und #',
  'bubble trap': 'Blasenfang',
  'section with the pump': 'Abteil mit der Pumpe',
  "sock's rim": 'Rand der Socke',
  'first baffle': 'erste Trennscheibe',
  'edge of the baffle behind the media': 'Kante der Trennscheibe hinter den Medien',
  'last baffle': 'letzte Trennscheibe',
  'opening under the baffle': 'Öffnung unter der Trennscheibe',

  'inner depth of the box front to back': 'Innentiefe des Kastens von vorn nach hinten',
  'inner height of the box': 'Innenhöhe des Kastens',
  'water in the last section while running': 'Wasserstand im letzten Abteil im Betrieb',
  "from the last section's water up to the tank's":
    'vom Wasser des letzten Abteils bis zum Wasserspiegel des Beckens',
  "width of the tank's overflow": 'Breite des Überlaufs im Becken',
  'length of the section with the socks': 'Länge des Abteils mit den Socken',
  'length of the section with the media': 'Länge des Abteils mit den Medien',
  'length of the bubble trap': 'Länge des Blasenfangs',
  'length of the section with the pump': 'Länge des Abteils mit der Pumpe',
  'height of the first baffle': 'Höhe der ersten Trennscheibe',
  'opening under the baffle behind the media': 'Öffnung unter der Trennscheibe hinter den Medien',
  'height of the baffle behind the media': 'Höhe der Trennscheibe hinter den Medien',
  'height of the last baffle': 'Höhe der letzten Trennscheibe',
  'number of socks': 'Zahl der Socken',
  'diameter of a sock': 'Durchmesser einer Socke',
  'height of the rim that a full sock spills over': 'Höhe des Randes, über den eine volle Socke läuft',
  'length of a sock below its rim': 'Länge einer Socke unter ihrem Rand',
  'thickness of the cloth of a sock': 'Dicke des Stoffs einer Socke',
  'number of layers in the media section': 'Zahl der Lagen im Abteil mit den Medien',
  'height that media can fill': 'Höhe, die Medien füllen können',
  'gap between media and the walls of their section': 'Spalt zwischen Medien und den Wänden ihres Abteils',
  'box height': 'Kasten\u00adhöhe',
  'media section': 'Medien\u00adabteil',

  'hang one more sock beside the others': 'eine weitere Socke neben die anderen hängen',

  'combs of overflow boxes are usually 15 to 30 cm (6 to 12 in) wide; from memory': `Überlaufkämme sind meist 15 bis 30 cm (6 bis 12 in) breit; ${notLookedUp}`,
  'the slot in which the water rises is 3 to 6 cm (1.2 to 2.4 in) wide; from memory': `der Spalt, in dem das Wasser steigt, ist 3 bis 6 cm (1,2 bis 2,4 in) weit; ${notLookedUp}`,
  'one sock is taken where none were counted': 'eine Socke angenommen, wo keine gezählt wurden',
  'socks of 100 mm (4 in) are usual; from memory': `Socken von 100 mm (4 in) sind üblich; ${notLookedUp}`,
  'felt of socks is 2 to 4 mm (0.1 to 0.15 in) thick; from memory': `der Filz von Socken ist 2 bis 4 mm (0,1 bis 0,15 in) dick; ${notLookedUp}`,
  'two trays or racks are taken where none were counted': 'zwei Einsätze angenommen, wo keine gezählt wurden',
  'trays and cut foam leave about 2 mm (0.1 in) at the panes; from memory': `Einsätze und geschnittener Schaumstoff lassen an den Scheiben etwa 2 mm (0,1 in) frei; ${notLookedUp}`,
  'usual for a sump, from memory': `üblich bei einem Filterbecken; ${notLookedUp}`,
};
