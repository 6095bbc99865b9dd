import type { Chamber } from '@fettle/engine/families/layout.ts';
import type { TwoStates } from './beforeAfterDrawing.ts';
import type { PathToDescribe } from './describeWaterPath.ts';
import { type Fold, folded } from './folding.ts';
import { laidSaid } from './laidBeds.ts';
import { printShare } from './lengths.ts';
import { type PlacedBed, placedBeds, stagesNote } from './placedBeds.ts';
import { asciiSigns, boxSigns, columnsOf, filled, plainText, type Signs } from './plainText.ts';
import { type Shares, sharesOf, spacesInWaterOrder } from './shares.ts';
import { spoken, spokenLength } from './speech.ts';

/** What a text drawing shows, and how wide it may be. */
export interface TextToDraw extends PathToDescribe {
  readonly caption?: string;
  /** Columns, 40 or more; 80 where absent. */
  readonly width?: number;
  /** Only signs from space to tilde. */
  readonly ascii?: boolean;
}

interface Page {
  readonly drawn: TextToDraw;
  readonly width: number;
  readonly signs: Signs;
  readonly shares: Shares | undefined;
  readonly beds: readonly PlacedBed[];
  readonly plain: (content: string) => string;
}

/**
 * The water path as plain text for a terminal: chambers in the water's order with their beds, the share of
 * the flow through and past each, and where other ways leave and join. Lines end with a line feed.
 */
export function textDrawing(drawn: TextToDraw): string {
  const ascii = drawn.ascii ?? false;
  const page: Page = {
    drawn,
    width: Math.max(40, drawn.width ?? 80),
    signs: ascii ? asciiSigns : boxSigns,
    shares: sharesOf(drawn.layout, drawn.assessment),
    beds: placedBeds(drawn),
    plain: (content) => plainText(content, ascii),
  };
  const { pumpPlace } = drawn.layout;
  const lines = [
    ...(drawn.caption === undefined ? [] : [...folded(page.plain(drawn.caption), columns(page.width)), '']),
    '  from the tank',
    ...(pumpPlace === 'first' ? [...arrow(page), '  pump'] : []),
    ...spacesInWaterOrder(drawn.layout).flatMap((space) => atSpace(space, page)),
    ...arrow(page),
    ...(pumpPlace === 'last' ? ['  pump', ...arrow(page)] : []),
    '  to the tank',
    ...note(page),
  ];
  return `${lines.map((line) => line.trimEnd()).join('\n')}\n`;
}

/** The water path before and after, one under the other. */
export function beforeAfterText(
  drawn: TwoStates & { readonly width?: number; readonly ascii?: boolean },
): string {
  const { before, after, ...shared } = drawn;
  return [before, after].map((state) => textDrawing({ ...shared, ...state })).join('\n');
}

function columns(most: number): Fold {
  return { most, measure: columnsOf };
}

function arrow({ signs }: Page): readonly string[] {
  return [`  ${signs.line}`, `  ${signs.down}`];
}

function note({ beds, width, shares }: Page): readonly string[] {
  const says = [stagesNote(beds), shares ? 'Shares are of the whole flow' : ''].filter((part) => part !== '');
  return says.length === 0 ? [] : ['', ...folded(`${says.join('. ')}.`, columns(width))];
}

/** Ways past media that leave and join in a space, then the chamber behind it. */
function atSpace(space: string, page: Page): readonly string[] {
  const { layout } = page.drawn;
  const ways = [
    ...layout.leaks.filter((leak) => leak.thicknessM > 0),
    ...layout.openings.filter((one) => one.bypass),
  ];
  const joining = ways
    .filter((way) => way.to === space)
    .map((way) => ({ way, says: `joins from the ${way.label}` }));
  const leaving = ways
    .filter((way) => way.from === space)
    .map((way) => ({ way, says: `leaves by the ${way.label}` }));
  const spilling = layout.weirs
    .filter((weir) => weir.purpose === 'overflow' && weir.from === space)
    .map((way) => ({
      way,
      says: `spills over the ${way.label}${way.to === undefined ? ' into the tank' : ''}`,
    }));
  const chamber = layout.chambers.find((one) => one.from === space);
  return [
    ...joining.flatMap((one) => wayLine({ ...one, sign: page.signs.joins }, page)),
    ...[...leaving, ...spilling].flatMap((one) => wayLine({ ...one, sign: page.signs.leaves }, page)),
    ...(chamber ? [...arrow(page), ...chamberBox(chamber, page)] : []),
  ];
}

function wayLine(
  line: { readonly way: { readonly id: string }; readonly says: string; readonly sign: string },
  page: Page,
): readonly string[] {
  const share = page.shares?.way.get(line.way.id);
  const says = share === undefined ? `water ${line.says}` : `${printShare(share)} ${line.says}`;
  const [first, ...rest] = folded(page.plain(says), columns(page.width - 8));
  const more = rest.map((part) => `  ${page.signs.line}     ${part}`);
  return [`  ${page.signs.line}`, `  ${line.sign} ${first ?? ''}`, ...more];
}

const directions: Readonly<Record<Chamber['flow'], string>> = {
  up: 'upward',
  down: 'downward',
  left: 'across',
  right: 'across',
};

function chamberBox(chamber: Chamber, page: Page): readonly string[] {
  const { signs, width, plain } = page;
  const { topLeft, topRight, lowLeft, lowRight } = signs.corners;
  const held = page.beds.filter((placed) => placed.chamber.id === chamber.id);
  const inner = width - 4;
  const rows = held.length === 0 ? ['empty'] : held.flatMap((placed) => bedRows(placed, inner, page));
  const title = `${signs.level} ${plain(chamber.label)}, ${directions[chamber.flow]} `;
  const shares = plain(sharesText(chamber, page.shares));
  const foot = shares === '' ? '' : ` ${shares} ${signs.level}`;
  const before = signs.level.repeat(Math.max(0, width - 2 - columnsOf(foot)));
  return [
    `${topLeft}${filled(title, width - 2, signs.level)}${topRight}`,
    ...rows.map((row) => `${signs.line} ${filled(row, inner)} ${signs.line}`),
    `${lowLeft}${before}${foot}${lowRight}`,
  ];
}

function sharesText(chamber: Chamber, shares: Shares | undefined): string {
  if (!shares) return '';
  const through = printShare(shares.chamber.get(chamber.id) ?? 0);
  return `${through} through, ${printShare(shares.gap.get(chamber.id) ?? 0)} past`;
}

function bedRows(placed: PlacedBed, inner: number, page: Page): readonly string[] {
  const depth = page.plain(spokenLength(placed.bed.depthM, page.drawn));
  const tagged = filled(page.plain(placed.tag), 4);
  const room = inner - 4 - columnsOf(depth) - 2;
  const laid = laidSaid({ name: placed.name }, placed, page.drawn);
  const name = spoken(page.drawn, 'section.bed-laid', { bed: laid });
  const [first, ...rest] = folded(page.plain(name), columns(room));
  return [`${tagged}${filled(first ?? '', room)}  ${depth}`, ...rest.map((part) => `    ${part}`)];
}
