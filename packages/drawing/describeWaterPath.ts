import type { Chamber } from '@fettle/engine/families/layout.ts';
import { chambersInWaterOrder } from '@fettle/engine/families/waterOrder.ts';
import { type Fact, type Said, said } from '@fettle/engine/wording/said.ts';
import { laidSaid } from './laidBeds.ts';
import { printShare } from './lengths.ts';
import { type Packed, type PlacedBed, placedBeds } from './placedBeds.ts';
import { type Flows, type Shares, sharesOf } from './shares.ts';
import { type Speech, spoken, spokenLength } from './speech.ts';

/** What the text alternative of a drawing is made from. */
export interface PathToDescribe extends Packed, Speech {
  readonly assessment?: Flows;
}

/**
 * The water path in one sentence: every chamber with its beds in the water's order, then what misses them.
 * It says in words all that the section drawing shows of the water.
 */
export function describeWaterPath(described: PathToDescribe): string {
  const { layout } = described;
  const beds = placedBeds(described);
  const shares = sharesOf(layout, described.assessment);
  const missed = shares ? missing(described, shares) : [];
  const stations = [
    ...(layout.pumpPlace === 'first' ? [said('way.pump')] : []),
    ...chambersInWaterOrder(layout).map((chamber) => station(chamber, beds, described)),
  ];
  const facts = {
    stations: stations.reduceRight((next, first) => said('way.then', { first, next })),
    end: said(layout.pumpPlace === 'last' ? 'way.end.pump' : 'way.end'),
  };
  return missed.length === 0
    ? spoken(described, 'way.path', facts)
    : spoken(described, 'way.path-missed', { ...facts, missed: { all: missed, by: ', ' } });
}

const directions: Readonly<Record<Chamber['flow'], string>> = {
  up: 'way.up',
  down: 'way.down',
  left: 'way.across',
  right: 'way.across',
};

function station(chamber: Chamber, beds: readonly PlacedBed[], speech: PathToDescribe): Said {
  const held = beds.filter((placed) => placed.chamber.id === chamber.id);
  const name = { name: chamber.label };
  if (held.length === 0) return said(`${directions[chamber.flow]}.empty`, { chamber: name });
  const all = held.map((placed) => bedSaid(placed, speech));
  return said(directions[chamber.flow], { chamber: name, beds: { all, by: '; ' } });
}

function bedSaid(placed: PlacedBed, speech: PathToDescribe): Fact {
  const { bed, name, medium } = placed;
  const facts = { depth: spokenLength(bed.depthM, speech), medium: { name } };
  const plain = medium
    ? said('way.bed', { ...facts, stage: { name: medium.stage } })
    : said('way.bed.unknown', facts);
  return laidSaid(plain, placed, speech);
}

function missing({ layout }: Packed, shares: Shares): readonly Said[] {
  const gaps = chambersInWaterOrder(layout).map(({ id, label }) => ({
    share: shares.gap.get(id) ?? 0,
    code: 'way.past',
    label,
  }));
  const ways = [...layout.leaks, ...layout.openings.filter((opening) => opening.bypass)].map(
    ({ id, label }) => ({ share: shares.way.get(id) ?? 0, code: 'way.through', label }),
  );
  const overflows = layout.weirs
    .filter((weir) => weir.purpose === 'overflow')
    .map(({ id, label }) => ({ share: shares.way.get(id) ?? 0, code: 'way.over', label }));
  return [...gaps, ...ways, ...overflows]
    .filter(({ share }) => share > 0)
    .map(({ share, code, label }) =>
      said(code, { share: printShare(share), [code === 'way.past' ? 'chamber' : 'way']: { name: label } }),
    );
}
