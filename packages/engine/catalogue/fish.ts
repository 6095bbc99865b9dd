import type { Figure } from '../model/figure.ts';
import { type BodyShape, bodyShapes, type LengthMass } from './bodyShapes.ts';
import { fromMemory, times } from './figureOf.ts';

/** A kind of fish. Every length is standard length, without the tail fin. */
export interface Fish {
  readonly id: string;
  readonly name: string;
  readonly scientificName: string;
  readonly bodyShape: BodyShape;
  /** Usual standard length when grown in a tank or pond, m. */
  readonly adultLengthM: Figure;
  readonly lengthMass: LengthMass;
}

const fishOf = (
  id: string,
  {
    name,
    scientificName,
    bodyShape,
    adultCm,
  }: Pick<Fish, 'name' | 'scientificName' | 'bodyShape'> & { adultCm: number },
): Fish => ({
  id,
  name,
  scientificName,
  bodyShape,
  adultLengthM: fromMemory(adultCm / 100, times(1.3)),
  lengthMass: bodyShapes[bodyShape],
});

/** Kinds of fish by id. */
export const fish: Readonly<Record<string, Fish>> = {
  'small-tetra': fishOf('small-tetra', {
    name: 'small tetra',
    scientificName: 'Hyphessobrycon spp.',
    bodyShape: 'fusiform',
    adultCm: 3,
  }),
  'neon-tetra': fishOf('neon-tetra', {
    name: 'neon tetra',
    scientificName: 'Paracheirodon innesi',
    bodyShape: 'fusiform',
    adultCm: 2.5,
  }),
  'cardinal-tetra': fishOf('cardinal-tetra', {
    name: 'cardinal tetra',
    scientificName: 'Paracheirodon axelrodi',
    bodyShape: 'fusiform',
    adultCm: 3,
  }),
  'rummy-nose-tetra': fishOf('rummy-nose-tetra', {
    name: 'rummy-nose tetra',
    scientificName: 'Hemigrammus rhodostomus',
    bodyShape: 'fusiform',
    adultCm: 3.5,
  }),
  'black-widow-tetra': fishOf('black-widow-tetra', {
    name: 'black widow tetra',
    scientificName: 'Gymnocorymbus ternetzi',
    bodyShape: 'short-deep',
    adultCm: 4.5,
  }),
  'congo-tetra': fishOf('congo-tetra', {
    name: 'Congo tetra',
    scientificName: 'Phenacogrammus interruptus',
    bodyShape: 'fusiform',
    adultCm: 6.5,
  }),
  'harlequin-rasbora': fishOf('harlequin-rasbora', {
    name: 'harlequin rasbora',
    scientificName: 'Trigonostigma heteromorpha',
    bodyShape: 'fusiform',
    adultCm: 3,
  }),
  'zebra-danio': fishOf('zebra-danio', {
    name: 'zebra danio',
    scientificName: 'Danio rerio',
    bodyShape: 'elongated',
    adultCm: 3.5,
  }),
  'white-cloud-minnow': fishOf('white-cloud-minnow', {
    name: 'white cloud minnow',
    scientificName: 'Tanichthys albonubes',
    bodyShape: 'elongated',
    adultCm: 3,
  }),
  'cherry-barb': fishOf('cherry-barb', {
    name: 'cherry barb',
    scientificName: 'Puntius titteya',
    bodyShape: 'fusiform',
    adultCm: 4,
  }),
  'tiger-barb': fishOf('tiger-barb', {
    name: 'tiger barb',
    scientificName: 'Puntigrus tetrazona',
    bodyShape: 'short-deep',
    adultCm: 5,
  }),
  'rosy-barb': fishOf('rosy-barb', {
    name: 'rosy barb',
    scientificName: 'Pethia conchonius',
    bodyShape: 'short-deep',
    adultCm: 6.5,
  }),
  'silver-shark': fishOf('silver-shark', {
    name: 'silver shark',
    scientificName: 'Balantiocheilos melanopterus',
    bodyShape: 'fusiform',
    adultCm: 25,
  }),
  'rainbow-shark': fishOf('rainbow-shark', {
    name: 'rainbow shark',
    scientificName: 'Epalzeorhynchos frenatum',
    bodyShape: 'fusiform',
    adultCm: 10,
  }),
  guppy: fishOf('guppy', {
    name: 'guppy',
    scientificName: 'Poecilia reticulata',
    bodyShape: 'fusiform',
    adultCm: 3.5,
  }),
  molly: fishOf('molly', {
    name: 'molly',
    scientificName: 'Poecilia sphenops',
    bodyShape: 'fusiform',
    adultCm: 6,
  }),
  platy: fishOf('platy', {
    name: 'platy',
    scientificName: 'Xiphophorus maculatus',
    bodyShape: 'fusiform',
    adultCm: 4,
  }),
  swordtail: fishOf('swordtail', {
    name: 'swordtail',
    scientificName: 'Xiphophorus hellerii',
    bodyShape: 'fusiform',
    adultCm: 8,
  }),
  'siamese-fighter': fishOf('siamese-fighter', {
    name: 'Siamese fighting fish',
    scientificName: 'Betta splendens',
    bodyShape: 'fusiform',
    adultCm: 4.5,
  }),
  'dwarf-gourami': fishOf('dwarf-gourami', {
    name: 'dwarf gourami',
    scientificName: 'Trichogaster lalius',
    bodyShape: 'short-deep',
    adultCm: 5.5,
  }),
  'pearl-gourami': fishOf('pearl-gourami', {
    name: 'pearl gourami',
    scientificName: 'Trichopodus leerii',
    bodyShape: 'short-deep',
    adultCm: 9,
  }),
  'three-spot-gourami': fishOf('three-spot-gourami', {
    name: 'three-spot gourami',
    scientificName: 'Trichopodus trichopterus',
    bodyShape: 'short-deep',
    adultCm: 9,
  }),
  'bronze-corydoras': fishOf('bronze-corydoras', {
    name: 'bronze corydoras',
    scientificName: 'Corydoras aeneus',
    bodyShape: 'fusiform',
    adultCm: 5.5,
  }),
  'peppered-corydoras': fishOf('peppered-corydoras', {
    name: 'peppered corydoras',
    scientificName: 'Corydoras paleatus',
    bodyShape: 'fusiform',
    adultCm: 5.5,
  }),
  'dwarf-suckermouth': fishOf('dwarf-suckermouth', {
    name: 'dwarf suckermouth catfish',
    scientificName: 'Otocinclus vittatus',
    bodyShape: 'fusiform',
    adultCm: 3,
  }),
  'bristlenose-catfish': fishOf('bristlenose-catfish', {
    name: 'bristlenose catfish',
    scientificName: 'Ancistrus cirrhosus',
    bodyShape: 'fusiform',
    adultCm: 9,
  }),
  'common-suckermouth': fishOf('common-suckermouth', {
    name: 'common suckermouth catfish',
    scientificName: 'Pterygoplichthys pardalis',
    bodyShape: 'fusiform',
    adultCm: 30,
  }),
  'clown-loach': fishOf('clown-loach', {
    name: 'clown loach',
    scientificName: 'Chromobotia macracanthus',
    bodyShape: 'fusiform',
    adultCm: 18,
  }),
  'kuhli-loach': fishOf('kuhli-loach', {
    name: 'kuhli loach',
    scientificName: 'Pangio kuhlii',
    bodyShape: 'eel-like',
    adultCm: 8,
  }),
  'weather-loach': fishOf('weather-loach', {
    name: 'weather loach',
    scientificName: 'Misgurnus anguillicaudatus',
    bodyShape: 'elongated',
    adultCm: 15,
  }),
  angelfish: fishOf('angelfish', {
    name: 'angelfish',
    scientificName: 'Pterophyllum scalare',
    bodyShape: 'short-deep',
    adultCm: 7.5,
  }),
  discus: fishOf('discus', {
    name: 'discus',
    scientificName: 'Symphysodon aequifasciatus',
    bodyShape: 'short-deep',
    adultCm: 13,
  }),
  'ram-cichlid': fishOf('ram-cichlid', {
    name: 'ram cichlid',
    scientificName: 'Mikrogeophagus ramirezi',
    bodyShape: 'short-deep',
    adultCm: 4,
  }),
  kribensis: fishOf('kribensis', {
    name: 'kribensis',
    scientificName: 'Pelvicachromis pulcher',
    bodyShape: 'fusiform',
    adultCm: 7,
  }),
  'convict-cichlid': fishOf('convict-cichlid', {
    name: 'convict cichlid',
    scientificName: 'Amatitlania nigrofasciata',
    bodyShape: 'short-deep',
    adultCm: 9,
  }),
  oscar: fishOf('oscar', {
    name: 'oscar',
    scientificName: 'Astronotus ocellatus',
    bodyShape: 'short-deep',
    adultCm: 25,
  }),
  'yellow-cichlid': fishOf('yellow-cichlid', {
    name: 'yellow cichlid',
    scientificName: 'Labidochromis caeruleus',
    bodyShape: 'fusiform',
    adultCm: 8,
  }),
  'zebra-cichlid': fishOf('zebra-cichlid', {
    name: 'zebra cichlid',
    scientificName: 'Maylandia zebra',
    bodyShape: 'fusiform',
    adultCm: 9,
  }),
  'boesemans-rainbowfish': fishOf('boesemans-rainbowfish', {
    name: "Boeseman's rainbowfish",
    scientificName: 'Melanotaenia boesemani',
    bodyShape: 'short-deep',
    adultCm: 9,
  }),
  'dwarf-rainbowfish': fishOf('dwarf-rainbowfish', {
    name: 'dwarf rainbowfish',
    scientificName: 'Melanotaenia praecox',
    bodyShape: 'short-deep',
    adultCm: 5,
  }),
  goldfish: fishOf('goldfish', {
    name: 'goldfish',
    scientificName: 'Carassius auratus',
    bodyShape: 'short-deep',
    adultCm: 15,
  }),
  'fancy-goldfish': fishOf('fancy-goldfish', {
    name: 'fancy goldfish',
    scientificName: 'Carassius auratus',
    bodyShape: 'short-deep',
    adultCm: 11,
  }),
  koi: fishOf('koi', {
    name: 'koi',
    scientificName: 'Cyprinus rubrofuscus',
    bodyShape: 'fusiform',
    adultCm: 50,
  }),
  'golden-orfe': fishOf('golden-orfe', {
    name: 'golden orfe',
    scientificName: 'Leuciscus idus',
    bodyShape: 'fusiform',
    adultCm: 35,
  }),
  tench: fishOf('tench', {
    name: 'tench',
    scientificName: 'Tinca tinca',
    bodyShape: 'fusiform',
    adultCm: 30,
  }),
  rudd: fishOf('rudd', {
    name: 'rudd',
    scientificName: 'Scardinius erythrophthalmus',
    bodyShape: 'fusiform',
    adultCm: 20,
  }),
  sterlet: fishOf('sterlet', {
    name: 'sterlet',
    scientificName: 'Acipenser ruthenus',
    bodyShape: 'elongated',
    adultCm: 50,
  }),
  clownfish: fishOf('clownfish', {
    name: 'clownfish',
    scientificName: 'Amphiprion ocellaris',
    bodyShape: 'short-deep',
    adultCm: 7,
  }),
  'green-chromis': fishOf('green-chromis', {
    name: 'green chromis',
    scientificName: 'Chromis viridis',
    bodyShape: 'short-deep',
    adultCm: 6,
  }),
  'yellow-tang': fishOf('yellow-tang', {
    name: 'yellow tang',
    scientificName: 'Zebrasoma flavescens',
    bodyShape: 'short-deep',
    adultCm: 14,
  }),
  'royal-gramma': fishOf('royal-gramma', {
    name: 'royal gramma',
    scientificName: 'Gramma loreto',
    bodyShape: 'fusiform',
    adultCm: 6,
  }),
};

/**
 * Mass of one fish from its length.
 *
 * m = a·Lᵇ, m in g and L in cm.
 *
 * @param one.lengthMass a and b on standard length
 * @param one.lengthM standard length, m; above 0
 * @returns mass, kg
 * Accuracy: ×/÷ 2.3 where a and b come from the body shape alone.
 * @source Froese, Thorson & Reyes 2014, J. Appl. Ichthyol. 30, 78–85
 */
export const fishMassKg = (one: { readonly lengthMass: LengthMass; readonly lengthM: number }): number => {
  const grams = one.lengthMass.a.value * (100 * one.lengthM) ** one.lengthMass.b.value;
  return grams / 1000;
};
