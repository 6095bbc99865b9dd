import { notLookedUp } from './sources.ts';

const practice = 'gängige Praxis, ohne Quelle';

/** Felder eines Auftrags und warum ein Wert angenommen wird, nach ihren englischen Worten. */
export const assumedNames: Readonly<Record<string, string>> = {
  "the maker's rated flow, which is the flow of the bare pump at no head":
    'Nennleistung nach Hersteller: Durchfluss der Pumpe allein, ohne Förderhöhe',
  'head at which the flow stops': 'Förderhöhe, bei der der Durchfluss endet',
  'flow at this head': 'Durchfluss bei dieser Förderhöhe',
  'head at this flow': 'Förderhöhe bei diesem Durchfluss',
  'electrical power at the plug': 'elektrische Leistung am Stecker',
  "speed against the curve's own speed": 'Drehzahl im Verhältnis zu der der Kennlinie',
  'length of the hose': 'Länge des Schlauchs',
  'inner diameter of the hose': 'Innendurchmesser des Schlauchs',
  'inner diameter of the barbs at its ends': 'Innendurchmesser der Tüllen an seinen Enden',
  'roughness of the wall': 'Rauheit der Wand',
  'the fittings on this run, one entry each': 'Formstücke und Hähne auf dieser Strecke',
  'loss of coils and kinks: how many times the head that the speed of the water is worth; one tight elbow is about 1':
    'Verlust durch Schlaufen und Knicke, in Geschwindigkeitshöhen des Wassers; ein enger Bogen ist etwa 1',
  "height of a free outlet above the tank's surface; 0 where it is under water":
    'Höhe eines freien Auslaufs über dem Wasserspiegel; 0, wo er unter Wasser liegt',
  'thickness of the film on its wall, which takes bore and makes it rough':
    'Dicke des Belags an seiner Wand, der ihn enger und rau macht',
  'how many turns of it lie in a coil': 'wie viele Windungen davon aufgewickelt liegen',
  'diameter of the coil at the middle of the hose':
    'Durchmesser des Wickels, von Schlauchmitte zu Schlauchmitte',
  'share of its bore that its worst kink leaves open':
    'Anteil seines Querschnitts, den sein schlimmster Knick offen lässt',
  'how far its tap is open, by the turn of the handle':
    'wie weit sein Hahn offen ist, nach der Drehung des Griffs',
  'head that its check valve asks for before it opens; 0.35 m is half a pound per square inch':
    'Förderhöhe, die sein Rückschlagventil zum Öffnen braucht; 0,35 m sind ein halbes Pfund je Quadratzoll',
  'fall over length of its flattest stretch that leads down, where it does not hang straight down':
    'Gefälle des flachsten Stücks, das abwärts führt, wo er nicht gerade herabhängt',
  'outlets that this hose parts into at its end, which is then no outlet of its own':
    'Ausläufe, in die sich dieser Schlauch an seinem Ende teilt; es ist dann selbst kein Auslauf',
  "highest point of the hoses above the tank's surface":
    'höchster Punkt der Schläuche über dem Wasserspiegel',
  "lid of the filter below the tank's surface; below 0 where it stands higher":
    'Deckel des Filters unter dem Wasserspiegel; unter 0, wo er höher steht',
  'mouth of the intake below the surface': 'Mündung des Ansaugrohrs unter dem Wasserspiegel',
  'mouth of the return below the surface; 0 where it is free':
    'Mündung des Rücklaufs unter dem Wasserspiegel; 0, wo sie frei liegt',
  "area of the water's surface: length times width": 'Fläche des Wasserspiegels: Länge mal Breite',
  'current that the weakest swimmers in it stand for long':
    'Strömung, die die schwächsten Schwimmer darin auf Dauer aushalten',
  'price of the filter': 'Preis des Filters',
  'time over which the price is spread': 'Zeit, auf die sich der Preis verteilt',
  'net water volume': 'Wasservolumen netto',
  'water temperature': 'Wassertemperatur',
  pH: 'pH',
  'alkalinity (carbonate hardness)': 'Karbonathärte',
  'practical salinity: 0 fresh, 35 sea water': 'Salinität: 0 Süßwasser, 35 Meerwasser',
  'oxygen in the tank as a share of saturation': 'Sauerstoff im Becken als Anteil der Sättigung',
  'dry feed given': 'Trockenfutter',
  'protein share of the dry feed': 'Eiweißanteil des Trockenfutters',
  'plants in the tank': 'Pflanzen im Becken',
  'price of electricity': 'Strompreis',
  'price of labour': 'Stundensatz',

  'most tropical tanks are kept near 25 °C, from memory': `die meisten tropischen Becken stehen bei 25 °C (77 °F); ${notLookedUp}`,
  'most tap water ends between 6.8 and 8 in a tank, from memory': `das meiste Leitungswasser liegt im Becken zwischen 6,8 und 8; ${notLookedUp}`,
  'most tap water has 2.5 to 10 dKH, from memory': `das meiste Leitungswasser hat 2,5 bis 10 dKH (45 bis 179 ppm CaCO3); ${notLookedUp}`,
  'taken as fresh water': 'als Süßwasser angenommen',
  'tanks that are moved at the surface hold about 95 % of saturation, from memory': `Becken mit bewegter Oberfläche halten etwa 95 % der Sättigung; ${notLookedUp}`,
  'taken at sea level': 'auf Meereshöhe angenommen',
  'dry feeds hold 35 to 55 % protein, from memory': `Trockenfutter enthält 35 bis 55 % Eiweiß; ${notLookedUp}`,
  '25 % once a week, common practice, no source': `25 % einmal in der Woche; ${practice}`,
  'taken at full speed': 'mit voller Drehzahl angenommen',
  'drawn plastic tube is about 1.5 µm rough (Moody 1944, from memory); films make it rougher': `gezogenes Kunststoffrohr ist etwa 1,5 µm (0,00006 in) rau (Moody 1944; ${notLookedUp}); Belag macht es rauer`,
  'taken without coils and kinks': 'ohne Schlaufen und Knicke angenommen',
  'hoses that are too long are coiled to about 30 cm, from memory': `zu lange Schläuche werden auf etwa 30 cm (12 in) aufgewickelt; ${notLookedUp}`,
  'hoses rise about a hand over the edge of the tank, from memory': `Schläuche steigen etwa eine Handbreit über den Beckenrand; ${notLookedUp}`,
  'a cabinet puts the lid about 80 cm below the water, from memory': `ein Unterschrank bringt den Deckel etwa 80 cm (31 in) unter das Wasser; ${notLookedUp}`,
  'intakes reach most of the way down, from memory': `Ansaugrohre reichen weit nach unten; ${notLookedUp}`,
  'returns end a few centimetres under water, from memory': `Rückläufe enden wenige Zentimeter unter Wasser; ${notLookedUp}`,
  'usual tanks hold about 40 cm of water, from memory': `übliche Becken sind etwa 40 cm (16 in) tief gefüllt; ${notLookedUp}`,
  'taken to leave under water': 'Austritt unter Wasser angenommen',
  'about what electricity cost in 2024 to 2026, from memory': `etwa der Strompreis der Jahre 2024 bis 2026; ${notLookedUp}`,
  'a common rate for bench work, common practice, no source': `üblicher Satz für Werkstattarbeit; ${practice}`,
  'filters of this kind are kept 5 to 12 years, from memory': `Filter dieser Art werden 5 bis 12 Jahre gehalten; ${notLookedUp}`,
  'a cabinet takes 1 to 2.2 m of hose on each side, from memory': `ein Unterschrank braucht auf jeder Seite 1 bis 2,2 m (3,3 bis 7,2 ft) Schlauch; ${notLookedUp}`,
  'intake tubes of boxes that hang on the tank are about 20 cm long, from memory': `Ansaugrohre angehängter Kästen sind etwa 20 cm (8 in) lang; ${notLookedUp}`,
  '#.# mm (#.# in) is usual for pumps of # L/h (# US gal/h), from memory': `üblich bei Pumpen dieser Nennleistung; ${notLookedUp}`,
  '#.# mm (#.# in) is usual for pumps of # L/h (#.# US gal/h), from memory': `üblich bei Pumpen dieser Nennleistung; ${notLookedUp}`,
  '#.# mm (#.# in) is usual for pumps of #.# L/h (#.# US gal/h), from memory': `üblich bei Pumpen dieser Nennleistung; ${notLookedUp}`,
  'pumps with synchronous motors take about 17.5 W for each 1000 L/h of rated flow, from memory': `Pumpen mit Synchronmotor nehmen etwa 17,5 W je 1000 L/h (264 US gal/h) Nennleistung auf; ${notLookedUp}`,
  'an intake tube has no barbs': 'ein Ansaugrohr hat keine Tüllen',
  'barbs leave about 0.8 of the bore of their hose, from memory': `Tüllen lassen etwa 0,8 der Weite ihres Schlauchs frei; ${notLookedUp}`,
  'the usual strainer in, and a plain end out, from memory': `der übliche Ansaugkorb, ein glattes Ende am Auslauf; ${notLookedUp}`,
  'taken from the last point of the curve': 'vom letzten Punkt der Kennlinie genommen',
  'usual for a canister with a stack of baskets, from memory': `üblich bei einem Außenfilter mit Korbstapel; ${notLookedUp}`,
  'usual for a canister with two halves, from memory': `üblich bei einem Außenfilter mit zwei Hälften; ${notLookedUp}`,
  'usual for a hang-on-back box, from memory': `üblich bei einem Rucksackfilter; ${notLookedUp}`,
  'air blown into the lift tubes, of all together, where air drives the filter: fill a jar under water and time it':
    'Luft in alle Steigrohre zusammen, wo Luft den Filter antreibt: ein Glas unter Wasser füllen und die Zeit nehmen',
  'one outlet of a small air pump, throttled, gives about 60 L/h against 30 cm of water, from memory': `ein gedrosselter Ausgang einer kleinen Luftpumpe gibt etwa 60 L/h (16 US gal/h) gegen 30 cm (12 in) Wasser; ${notLookedUp}`,
  'air pumps of tanks take 2 to 5 W, from memory': `Luftpumpen von Becken nehmen 2 bis 5 W auf; ${notLookedUp}`,
  'usual for a sponge filter, from memory': `üblich bei einem Schwammfilter; ${notLookedUp}`,
  'usual for a mat filter, from memory': `üblich bei einem Mattenfilter; ${notLookedUp}`,
  'usual for a undergravel filter, from memory': `üblich bei einem Bodenfilter; ${notLookedUp}`,
  'usual for a fluidised bed, from memory': `üblich bei einem Wirbelbettfilter; ${notLookedUp}`,
  'usual for a moving bed, from memory': `üblich bei einem Bewegtbettfilter; ${notLookedUp}`,
  'usual for a internal box, from memory': `üblich bei einem Innenfilter; ${notLookedUp}`,
  'what the listed fish are fed by their length and the temperature, from memory': `was die genannten Fische nach Länge und Temperatur erhalten; ${notLookedUp}`,
  'what a tank with light stock is fed, common practice, no source': `was ein Becken mit leichtem Besatz erhält; ${practice}`,
  'what a tank with normal stock is fed, common practice, no source': `was ein Becken mit normalem Besatz erhält; ${practice}`,
  'what a tank with heavy stock is fed, common practice, no source': `was ein Becken mit schwerem Besatz erhält; ${practice}`,
  'taken without plants': 'ohne Pflanzen angenommen',

  'loose-fitting baskets leave about half a millimetre all round; from memory': `lose sitzende Körbe lassen ringsum etwa 0,5 mm (0,02 in) frei; ${notLookedUp}`,
  'moulded grids are open over about two fifths of their area; from memory': `Gitter aus Spritzguss sind zu etwa zwei Fünfteln offen; ${notLookedUp}`,
  'about a centimetre stays free under the head; from memory': `unter dem Kopf bleibt etwa 1 cm (0,4 in) frei; ${notLookedUp}`,
  'feet of about 15 mm (0.6 in) keep the lowest basket off the floor; from memory': `Füße von etwa 15 mm (0,6 in) halten den untersten Korb über dem Boden; ${notLookedUp}`,
  'the way down is usually a little wider than a 16 mm (5/8 in) hose; from memory': `der Weg nach unten ist meist etwas weiter als ein Schlauch von 16 mm (5/8 in); ${notLookedUp}`,
  'partitions usually end about 15 mm (0.6 in) above the floor; from memory': `Trennwände enden meist etwa 15 mm (0,6 in) über dem Boden; ${notLookedUp}`,
  'a partition without a seal leaves about half a millimetre; from memory': `eine Trennwand ohne Dichtung lässt etwa 0,5 mm (0,02 in) frei; ${notLookedUp}`,
  'the head is taken to sit as it left the works': 'Kopf angenommen, wie er ab Werk sitzt',
  'a pad that slides in its rails leaves about a millimetre; from memory': `eine Matte in ihren Schienen lässt etwa 1 mm (0,04 in) frei; ${notLookedUp}`,
  'boxes are hung with the outlet about a centimetre above the water; from memory': `Kästen hängen mit dem Auslauf etwa 1 cm (0,4 in) über dem Wasser; ${notLookedUp}`,
  'the lip usually stands about 12 mm above the outlet edge; from memory': `der Notüberlauf steht meist etwa 12 mm (0,5 in) über der Auslaufkante; ${notLookedUp}`,
  'no slots are taken to open past the media unless they were seen':
    'Schlitze an den Medien vorbei gelten als nicht vorhanden, solange keine gesehen wurden',
  'ribs of a few millimetres keep the media off the floor; from memory': `Rippen von wenigen Millimetern (0,1 bis 0,2 in) halten die Medien über dem Boden; ${notLookedUp}`,
  'nozzles of small internal pumps measure about 12 mm; from memory': `Düsen kleiner Innenpumpen messen etwa 12 mm (0,5 in); ${notLookedUp}`,

  'most lift tubes end in an elbow; common practice, no source': `die meisten Steigrohre enden in einem Bogen; ${practice}`,
  'one lift tube is taken where none were counted; common practice, no source': `ein Steigrohr angenommen, wo keine gezählt wurden; ${practice}`,
  'slots take about a quarter of the core of a sponge; from memory': `Schlitze nehmen etwa ein Viertel des Kerns ein; ${notLookedUp}`,
  'a sponge that sits on its tube closes its own ends; a loose one would have been seen':
    'ein Schwamm, der auf seinem Rohr sitzt, schließt seine Enden selbst; einen losen hätte man gesehen',
  'a mat cut a few millimetres too large presses itself tight to the panes; from memory': `eine um wenige Millimeter (0,1 in) zu groß geschnittene Matte drückt sich dicht an die Scheiben; ${notLookedUp}`,
  'plates stand about 2 cm over the glass; from memory': `Platten stehen etwa 2 cm (0,8 in) über dem Glas; ${notLookedUp}`,
  'slots take about a twentieth of a plate; from memory': `Schlitze nehmen etwa ein Zwanzigstel einer Platte ein; ${notLookedUp}`,
  'the gravel is taken to cover the plate unless bare places were seen':
    'der Kies gilt als deckend, solange keine blanken Stellen gesehen wurden',
};
