/** Writes `docs/catalogue.md` from the catalogue: `npx tsx scripts/catalogue-docs.ts`; `--check` only compares. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { bodyShapes } from '@fettle/engine/catalogue/bodyShapes.ts';
import { fish } from '@fettle/engine/catalogue/fish.ts';
import { fittings } from '@fettle/engine/catalogue/fittings.ts';
import { hoses } from '@fettle/engine/catalogue/hoses.ts';
import { media } from '@fettle/engine/catalogue/media.ts';
import { stockClasses } from '@fettle/engine/catalogue/stock.ts';
import { throatM } from '@fettle/engine/catalogue/throat.ts';
import { families } from '@fettle/engine/families/families.ts';
import type { Figure } from '@fettle/engine/model/figure.ts';
import { comesAs, comingNames, type Medium } from '@fettle/engine/model/medium.ts';
import { measurementExampleValue } from '@fettle/job/measurementExample.ts';
import { isMain, projectRoot } from './sources.ts';

/** A unit for people: how many of it make one SI unit, and its name. */
interface Shown {
  readonly perSi: number;
  readonly unit: string;
}

const DAY_S = 86_400;
const plain: Shown = { perSi: 1, unit: '' };
const millimetres: Shown = { perSi: 1000, unit: 'mm' };
const micrometres: Shown = { perSi: 1e6, unit: 'µm' };
const centimetres: Shown = { perSi: 100, unit: 'cm' };
const squareMetresPerM3: Shown = { perSi: 1, unit: 'm²/m³' };
const gramsPerLitre: Shown = { perSi: 1, unit: 'g/L' };
const gramsPerKilogram: Shown = { perSi: 1000, unit: 'g/kg' };
const weeks: Shown = { perSi: 1 / (7 * DAY_S), unit: 'weeks' };
const poundsPerLitre: Shown = { perSi: 1e-3, unit: '£/L' };
const litresPerHour: Shown = { perSi: 3.6e6, unit: 'L/h' };
const gramsPer100LAndDay: Shown = { perSi: 1000 * 0.1 * DAY_S, unit: 'g per 100 L and day' };

const digits = (value: number): string => String(Number(value.toPrecision(3)));

const shown = (value: number, { perSi, unit }: Shown): string => `${digits(value * perSi)} ${unit}`.trim();

const doubtOf = ({ doubt }: Figure, { perSi }: Shown): string => {
  if (doubt === undefined) return '–';
  return doubt.kind === 'factor' ? `×/÷ ${digits(doubt.size)}` : `± ${digits(doubt.size * perSi)}`;
};

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  [row(heads), row(heads.map(() => '---')), ...rows.map(row)].join('\n');

type Line = readonly [what: string, figure: Figure, unit: Shown];

const resistanceLines = ({ resistance }: Medium): readonly Line[] => {
  switch (resistance.law) {
    case 'foam':
      return [
        ['cells', resistance.cellM, millimetres],
        ['voidage', resistance.voidage, plain],
      ];
    case 'fibre':
      return [
        ['fibres', resistance.fibreM, micrometres],
        ['share of fibre', resistance.solidFraction, plain],
      ];
    case 'grains':
      return [
        ['size', resistance.sizeM, millimetres],
        ['voidage', resistance.voidage, plain],
      ];
    case 'hollow':
      return [
        ['size', resistance.sizeM, millimetres],
        ['voidage', resistance.voidage, plain],
        ['outer surface', resistance.surfacePerM, squareMetresPerM3],
      ];
  }
};

const mediumLines = (medium: Medium): readonly Line[] => [
  ...resistanceLines(medium),
  ['area for bacteria', medium.areaPerM, squareMetresPerM3],
  ['bulk density, dry', medium.bulkDensityKgPerM3, gramsPerLitre],
  ['deposit factor γ', medium.depositFactor, plain],
  ['bacteria kept', medium.bacteriaKept, plain],
  ...(medium.lifeS ? ([['life', medium.lifeS, weeks]] as const) : []),
  ['price', medium.pricePerM3, poundsPerLitre],
  ...(medium.removes
    ? ([[`takes out ${medium.removes.substance}`, medium.removes.capacityRatio, gramsPerKilogram]] as const)
    : []),
];

const figureRow = ([what, figure, unit]: Line): readonly string[] => [
  what,
  shown(figure.value, unit),
  doubtOf(figure, unit),
  figure.source.text,
];

const mediumSection = (medium: Medium): string => {
  const { id, name, stage, care, cautions } = medium;
  return [
    `### \`${id}\``,
    `${name[0]?.toUpperCase()}${name.slice(1)}: ${stage}, ${care === 'rinse' ? 'rinsed' : 'replaced'} when it has clogged.`,
    table(['figure', 'value', 'doubt', 'source'], mediumLines(medium).map(figureRow)),
    cautions.map((caution) => `- ${caution}`).join('\n'),
  ].join('\n\n');
};

const overview = (): string =>
  table(
    ['medium', 'stage', 'to the hand', 'narrowest way', 'area for bacteria', 'bulk density', 'price'],
    Object.values(media).map((medium) => [
      `[\`${medium.id}\`](#${medium.id})`,
      medium.stage,
      comingNames[comesAs(medium)],
      shown(throatM(medium), millimetres),
      shown(medium.areaPerM.value, squareMetresPerM3),
      shown(medium.bulkDensityKgPerM3.value, gramsPerLitre),
      shown(medium.pricePerM3.value, poundsPerLitre),
    ]),
  );

/** Numbers of trays, slots and layers stand for all of their kind. */
const kindOf = (label: string): string => label.replace(/ \d+( \(.*\))?$/, '');

const placeTable = (): string =>
  table(
    ['filter', 'where', 'made for'],
    families.flatMap((family) => {
      const measured = family.measurements.map((one) => [one.key, measurementExampleValue(one)] as const);
      const { chambers } = family.layOut(Object.fromEntries(measured));
      const kinds = new Map(chambers.map((chamber) => [kindOf(chamber.label), chamber.holds]));
      return [...kinds].map(([label, holds]) => [
        family.name,
        label,
        holds.map((one) => comingNames[one]).join(', '),
      ]);
    }),
  );

const fittingTable = (): string =>
  table(
    ['fitting', 'what', 'K1', 'K∞', 'doubt', 'small bores lose more', 'in place of', 'source'],
    Object.values(fittings).map(({ id, name, k1, kInfinity, scalesWithBore, replacesEnd }) => [
      `\`${id}\``,
      name,
      digits(k1.value),
      digits(kInfinity.value),
      doubtOf(kInfinity, plain),
      scalesWithBore ? 'yes' : 'no',
      replacesEnd === undefined ? '–' : { intake: 'the plain entrance', outlet: 'the open end' }[replacesEnd],
      kInfinity.source.text,
    ]),
  );

const hoseTable = (): string =>
  table(
    ['hose', 'what', 'bore', 'outside', 'usual flow'],
    Object.values(hoses).map(({ id, name, boreM, outerM, usualFlow }) => [
      `\`${id}\``,
      name,
      `${shown(boreM.value, millimetres)} ${doubtOf(boreM, millimetres)}`,
      `${shown(outerM.value, millimetres)} ${doubtOf(outerM, millimetres)}`,
      `${digits(usualFlow.leastM3PerS * litresPerHour.perSi)}–${shown(usualFlow.mostM3PerS, litresPerHour)}`,
    ]),
  );

const stockTable = (): string =>
  table(
    ['class', 'dry feed', 'doubt', 'protein', 'source'],
    Object.values(stockClasses).map(({ id, feedKgPerM3PerS, proteinFraction }) => [
      `\`${id}\``,
      shown(feedKgPerM3PerS.value, gramsPer100LAndDay),
      doubtOf(feedKgPerM3PerS, gramsPer100LAndDay),
      `${shown(proteinFraction.value, plain)} ${doubtOf(proteinFraction, plain)}`,
      feedKgPerM3PerS.source.text,
    ]),
  );

const shapeTable = (): string =>
  table(
    ['body shape', 'a', 'doubt', 'b', 'doubt', 'source'],
    Object.entries(bodyShapes).map(([shape, { a, b }]) => [
      shape,
      digits(a.value),
      doubtOf(a, plain),
      digits(b.value),
      doubtOf(b, plain),
      a.source.text,
    ]),
  );

const fishTable = (): string =>
  table(
    ['fish', 'name', 'species', 'body shape', 'grown'],
    Object.values(fish).map(({ id, name, scientificName, bodyShape, adultLengthM }) => [
      `\`${id}\``,
      name,
      `*${scientificName}*`,
      bodyShape,
      `${shown(adultLengthM.value, centimetres)} ${doubtOf(adultLengthM, centimetres)}`,
    ]),
  );

const page = (): string =>
  `${[
    '# The catalogue',
    '<!-- Written by scripts/catalogue-docs.ts from packages/engine/catalogue: change it there. -->',
    'What is known beforehand of media, fittings, hoses, stock and fish. Every figure has a doubt, which holds in 95 of 100 cases (`×/÷ 2`: from half to twice; `± 0.1`: that much either way), and a source. A job may state its own media and prices, which then hold instead.',
    '## Media at a glance',
    'The narrowest way is what tells coarse media from fine ones. Prices are placeholders in pounds sterling per litre of bulk.',
    overview(),
    '## Where media lie',
    'Each chamber is made for some of what a medium may be to the hand. Plans put into it nothing else; a job that has something else there gets the finding `media-out-of-place`, and is reckoned all the same.',
    placeTable(),
    '## Media, figure by figure',
    ...Object.values(media).map(mediumSection),
    '## Fittings',
    'A fitting loses K velocity heads of the water in the bore of the hose, K = K1/Re + K∞·s. Where small bores lose more, s = 1 + 1 inch/bore; elsewhere s = 1. Every hose run has an entrance or an open end, unless a fitting stands in its place.',
    fittingTable(),
    '## Hoses',
    hoseTable(),
    '## Stock classes',
    'Used where neither the feed nor the fish are known.',
    stockTable(),
    '## Fish',
    'Mass in grams is a·Lᵇ, L the length without the tail fin in centimetres. a and b come from the body shape; their doubts go together, so only one of them is varied. Grown lengths are from memory.',
    shapeTable(),
    fishTable(),
  ].join('\n\n')}\n`;

if (isMain(import.meta.url)) {
  const path = resolve(projectRoot, 'docs/catalogue.md');
  const text = page();
  if (!process.argv.includes('--check')) writeFileSync(path, text);
  else if (!existsSync(path) || readFileSync(path, 'utf8') !== text) {
    console.error('docs/catalogue.md is not what the catalogue says: run npx tsx scripts/catalogue-docs.ts');
    process.exitCode = 1;
  }
}
