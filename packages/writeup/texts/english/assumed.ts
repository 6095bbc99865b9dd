/** Why a value is assumed, and names with a size in them, with both systems of units. */
export const assumedNames: Readonly<Record<string, string>> = {
  'most tropical tanks are kept near 25 °C, from memory':
    'most tropical tanks are kept near 25 °C (77 °F), from memory',
  'most tap water has 2.5 to 10 dKH, from memory':
    'most tap water has 2.5 to 10 dKH (45 to 179 ppm CaCO3), from memory',
  'drawn plastic tube is about 1.5 µm rough (Moody 1944, from memory); films make it rougher':
    'drawn plastic tube is about 1.5 µm (0.00006 in) rough (Moody 1944, from memory); films make it rougher',
  'a cabinet takes 1 to 2.2 m of hose on each side, from memory':
    'a cabinet takes 1 to 2.2 m (3.3 to 7.2 ft) of hose on each side, from memory',
  'intake tubes of boxes that hang on the tank are about 20 cm long, from memory':
    'intake tubes of boxes that hang on the tank are about 20 cm (8 in) long, from memory',
  '#.# mm (#.# in) is usual for pumps of # L/h (# US gal/h), from memory':
    'usual for pumps of this rated flow, from memory',
  '#.# mm (#.# in) is usual for pumps of # L/h (#.# US gal/h), from memory':
    'usual for pumps of this rated flow, from memory',
  '#.# mm (#.# in) is usual for pumps of #.# L/h (#.# US gal/h), from memory':
    'usual for pumps of this rated flow, from memory',
  'pumps with synchronous motors take about 17.5 W for each 1000 L/h of rated flow, from memory':
    'pumps with synchronous motors take about 17.5 W for each 1000 L/h (264 US gal/h) of rated flow, from memory',
  'loose-fitting baskets leave about half a millimetre all round; from memory':
    'loose-fitting baskets leave about 0.5 mm (0.02 in) all round; from memory',
  'about a centimetre stays free under the head; from memory':
    'about 1 cm (0.4 in) stays free under the head; from memory',
  'a partition without a seal leaves about half a millimetre; from memory':
    'a partition without a seal leaves about 0.5 mm (0.02 in); from memory',
  'a pad that slides in its rails leaves about a millimetre; from memory':
    'a pad that slides in its rails leaves about 1 mm (0.04 in); from memory',
  'boxes are hung with the outlet about a centimetre above the water; from memory':
    'boxes are hung with the outlet about 1 cm (0.4 in) above the water; from memory',
  'the lip usually stands about 12 mm above the outlet edge; from memory':
    'the lip usually stands about 12 mm (0.5 in) above the outlet edge; from memory',
  'ribs of a few millimetres keep the media off the floor; from memory':
    'ribs of a few millimetres (0.1 to 0.2 in) keep the media off the floor; from memory',
  'nozzles of small internal pumps measure about 12 mm; from memory':
    'nozzles of small internal pumps measure about 12 mm (0.5 in); from memory',
  'plates stand about 2 cm over the glass; from memory':
    'plates stand about 2 cm (0.8 in) over the glass; from memory',

  'Never stand the mat nearer than 2 cm to the pane behind it.':
    'Never stand the mat nearer than 2 cm (0.8 in) to the pane behind it.',
  '3–5 mm gravel': 'gravel of 3 to 5 mm (0.12 to 0.20 in)',
  '10 mm gravel': 'gravel of 10 mm (0.39 in)',
};
