import { describe, expect, it } from 'vitest';
import { basketStackCanister } from './basketStackCanister.ts';
import { bedShapes } from './bedShape.ts';
import { cartridgeCanister } from './cartridgeCanister.ts';
import { centralTubeCanister } from './centralTubeCanister.ts';
import { hangOnBack } from './hangOnBack.ts';
import { internalBox } from './internalBox.ts';
import { splitHousingCanister } from './splitHousingCanister.ts';
import { sump } from './sump.ts';
import { sizes } from './testing/sizes.ts';
import { trickleTower } from './trickleTower.ts';
import { chambersInWaterOrder, inWaterOrder } from './waterOrder.ts';

const box = {
  boxWidth: 0.1,
  waterDepth: 0.12,
  slots: 2,
  slotThickness: 0.02,
  weirWidth: 0.09,
  overflowWidth: 0.05,
};

describe('stack of baskets', () => {
  const layout = basketStackCanister.layOut(sizes.stack);

  it('lists baskets from the top down and meets them from the lowest up', () => {
    expect(layout.chambers.map((chamber) => chamber.id)).toEqual(['basket-3', 'basket-2', 'basket-1']);
    expect(chambersInWaterOrder(layout).map((chamber) => chamber.id)).toEqual([
      'basket-1',
      'basket-2',
      'basket-3',
    ]);
    expect(inWaterOrder(layout.chambers[0]!, ['floss', 'rings'])).toEqual(['rings', 'floss']);
  });

  it('holds a litre and a half of media in each basket', () => {
    for (const chamber of layout.chambers) expect(chamber.areaM2 * chamber.depthM).toBeCloseTo(1.536e-3, 12);
  });

  it('leaves a slot of the basket perimeter', () => {
    expect(layout.chambers[0]?.gap).toEqual({ thicknessM: 0.0005, widthM: 0.64, lengthM: 0.06 });
  });

  it('fills the housing from floor to head and from wall to wall', () => {
    const body = layout.drawing.housing[0]!;
    // base 15 + three baskets of 60 with floors of 3 + head space 10
    expect(body.height).toBeCloseTo(0.015 + 3 * 0.063 + 0.01, 12);
    // tube 20 + its wall 2 + basket 160 + two gaps of 0.5
    expect(body.width).toBeCloseTo(0.02 + 0.002 + 0.16 + 2 * 0.0005, 12);
  });

  it('passes the foot of the tube with the area of its bore', () => {
    expect(layout.openings[0]?.areaM2).toBeCloseTo(Math.PI * 0.01 ** 2, 12);
  });
});

describe('two halves', () => {
  const asBuilt = splitHousingCanister.layOut(sizes.halves);
  const turned = splitHousingCanister.layOut({ ...sizes.halves, headTurned: 1 });

  it('runs down the left and up the right as built', () => {
    expect(chambersInWaterOrder(asBuilt).map((chamber) => chamber.id)).toEqual([
      'left-1',
      'left-2',
      'right-2',
      'right-1',
    ]);
  });

  it('runs down the right and up the left with the head turned: the order of the trays is reversed', () => {
    const before = chambersInWaterOrder(asBuilt).map((chamber) => chamber.id);
    const after = chambersInWaterOrder(turned).map((chamber) => chamber.id);
    expect(after).toEqual(before.toReversed());
    for (const chamber of turned.chambers) {
      const same = asBuilt.chambers.find((one) => one.id === chamber.id)!;
      expect([chamber.from, chamber.to]).toEqual([same.to, same.from]);
      expect(chamber.listedInWaterOrder).toBe(!same.listedInWaterOrder);
      expect(chamber.box).toEqual(same.box);
    }
  });

  it('moves the ports but not the trays when the head is turned', () => {
    expect(turned.drawing.inlet).toEqual(asBuilt.drawing.outlet);
    expect(turned.drawing.outlet).toEqual(asBuilt.drawing.inlet);
  });

  it('shares the height among foot, trays and head space', () => {
    // (225 − 15 − 10) / 2 trays, each with a floor of 3
    expect(asBuilt.chambers[0]?.depthM).toBeCloseTo(0.097, 12);
  });

  it('shares the width between two trays, four gaps and the partition', () => {
    // (222 − 2) / 2 − 2 × 0.5 = 109, deep 150 − 2 × 0.5 = 149
    expect(asBuilt.chambers[0]?.areaM2).toBeCloseTo(0.109 * 0.149, 12);
  });

  it('leaks over the partition from the first half to the second', () => {
    expect(asBuilt.leaks[0]).toMatchObject({
      from: 'left-top',
      to: 'right-top',
      widthM: 0.15,
      thicknessM: 0.0005,
    });
    expect(turned.leaks[0]).toMatchObject({ from: 'right-top', to: 'left-top' });
    expect(asBuilt.leaks[0]?.from).toBe(asBuilt.inletSpace);
    expect(asBuilt.leaks[0]?.to).toBe(asBuilt.outletSpace);
  });
});

describe('media about a tube', () => {
  const layout = centralTubeCanister.layOut(sizes.tube);
  const chamber = layout.chambers[0]!;

  it('are crossed from the outside to the tube, the outermost sleeve first', () => {
    expect([chamber.from, chamber.to]).toEqual(['outside', 'tube']);
    expect(inWaterOrder(chamber, ['outer sleeve', 'inner sleeve'])).toEqual(['outer sleeve', 'inner sleeve']);
  });

  it('fill four litres between 40 and 160 mm', () => {
    // π(80² − 20²) mm² × 210 mm
    expect(chamber.depthM).toBeCloseTo(0.06, 12);
    expect(bedShapes(chamber, [chamber])[0]!.volumeM3).toBeCloseTo(3.9584e-3, 7);
    expect(chamber.areaM2 * chamber.depthM).toBeCloseTo(3.9584e-3, 7);
  });

  it('are met over 2πrL outside, four times what is left at the tube', () => {
    const [bed] = bedShapes(chamber, [chamber]);
    expect(bed!.faceAreaM2).toBeCloseTo(Math.PI * 0.16 * 0.21, 12);
    expect(bed!.faceAreaM2 / (2 * Math.PI * bed!.ring!.innerRadiusM * 0.21)).toBeCloseTo(4, 12);
  });

  it('have a slot at both end caps, as wide as the logarithmic mean of its circumferences', () => {
    expect(chamber.gap.lengthM).toBeCloseTo(0.06, 12);
    expect(chamber.gap.widthM).toBeCloseTo((2 * 2 * Math.PI * 0.06) / Math.log(4), 12);
  });

  it('are passed by a slot under the tube, to be sealed by a ring', () => {
    expect(layout.leaks).toMatchObject([{ from: 'outside', to: 'tube', sealedBy: 'ring' }]);
    expect(layout.leaks[0]!.widthM).toBeCloseTo(Math.PI * 0.04, 12);
  });
});

describe('cartridge', () => {
  const layout = cartridgeCanister.layOut({ ...sizes.tube, spigotGap: 0.0004 });

  it('is crossed inward to its core, and leaks past its spigot straight to the pump', () => {
    expect(layout.chambers.map(({ from, to }) => [from, to])).toEqual([['outside', 'core']]);
    expect(layout.leaks).toMatchObject([{ from: 'outside', to: 'pump-space', thicknessM: 0.0004 }]);
    expect(layout.outletSpace).toBe('pump-space');
  });

  it('takes the water in at its side', () => {
    const [first, second] = layout.drawing.mainPath;
    expect(first!.y).toBe(second!.y);
    expect(first!.x).toBeLessThan(0);
  });
});

describe('hang-on-back', () => {
  const layout = hangOnBack.layOut(box);

  it('has the pump first and crosses the slots from its side', () => {
    expect(layout.pumpPlace).toBe('first');
    expect(chambersInWaterOrder(layout).map((chamber) => chamber.id)).toEqual(['slot-1', 'slot-2']);
    expect(layout.chambers.map((chamber) => chamber.flow)).toEqual(['right', 'right']);
  });

  it('meets a slot over its wetted face, with a gap beside and under it', () => {
    expect(layout.chambers[0]?.areaM2).toBeCloseTo(0.012, 12);
    expect(layout.chambers[0]?.gap).toMatchObject({ thicknessM: 0.001, lengthM: 0.02 });
    expect(layout.chambers[0]?.gap.widthM).toBeCloseTo(0.34, 12);
  });

  it('leaves by the outlet edge and spills from the well over a higher lip', () => {
    const [outlet, overflow] = layout.weirs;
    expect(outlet).toMatchObject({ from: 'last', purpose: 'outlet', crestHeightM: 0.01, crestWidthM: 0.09 });
    expect(overflow).toMatchObject({ from: 'well', purpose: 'overflow', crestWidthM: 0.05 });
    expect(overflow!.crestHeightM).toBeGreaterThan(outlet!.crestHeightM);
    expect(overflow!.at.y - outlet!.at.y).toBeCloseTo(overflow!.crestHeightM - outlet!.crestHeightM, 12);
  });
});

describe('internal box', () => {
  it('rises from the slots at the base to the pump on top', () => {
    const layout = internalBox.layOut(sizes.internal);
    expect(chambersInWaterOrder(layout).map((chamber) => chamber.id)).toEqual(['chamber-1', 'chamber-2']);
    expect(layout.openings.find((opening) => opening.id === 'base-slots')?.areaM2).toBe(0.0006);
    // (156 − 6 − 10) / 2 with a grid of 3
    expect(layout.chambers[0]?.depthM).toBeCloseTo(0.067, 12);
  });

  it('has a bypass to the pump only where there are upper slots', () => {
    const closed = internalBox.layOut(sizes.internal);
    const open = internalBox.layOut({ ...sizes.internal, upperSlotArea: 0.0002 });
    expect(closed.openings.some((opening) => opening.bypass)).toBe(false);
    expect(open.openings.filter((opening) => opening.bypass)).toMatchObject([
      { from: 'tank-side', to: 'pump-space', areaM2: 0.0002 },
    ]);
  });
});

describe('sump', () => {
  const layout = sump.layOut(sizes.sump);
  const weir = (id: string) => layout.weirs.find((one) => one.id === id)!;

  it('leads from the overflow through sock and trays to the pump', () => {
    expect(chambersInWaterOrder(layout).map(({ id }) => id)).toEqual(['sock', 'tray-1', 'tray-2']);
    expect([layout.inletSpace, layout.outletSpace]).toEqual(['overflow', 'return']);
  });

  it('stands below the tank by the lift and the water round the pump', () => {
    expect(layout.gravityFed?.floorHeightM).toBeCloseTo(-1.39, 12);
    expect(weir('first-baffle').crestHeightM).toBeCloseTo(-1.39 + 0.29, 12);
    expect(weir('last-baffle').crestHeightM).toBeCloseTo(-1.39 + 0.22, 12);
  });

  it('has a rim past the sock and an edge past the media, which are overflows', () => {
    expect(weir('sock-rim')).toMatchObject({ from: 'in-sock', to: 'sock-section', purpose: 'overflow' });
    expect(weir('sock-rim').crestWidthM).toBeCloseTo(Math.PI * 0.1, 12);
    expect(weir('over-media-baffle')).toMatchObject({ from: 'media-top', to: 'trap', purpose: 'overflow' });
  });

  it('meets the cloth that stands in water, walls and bottom', () => {
    // bottom at 345 − 200 = 145 mm, water to the first baffle at 290 mm
    const wetted = Math.PI * 0.1 * (0.145 + 0.025);
    expect(layout.chambers[0]?.areaM2).toBeCloseTo(wetted, 12);
  });

  it('says what stays in each section when the pump stops', () => {
    const rest = Object.fromEntries(layout.gravityFed!.sections.map((one) => [one.space, one.restLevelM]));
    expect(rest).toEqual({ 'sock-section': 0.29, 'media-top': 0.22, trap: 0.22, return: 0.19 });
    expect(layout.gravityFed!.sections.at(-1)?.areaM2).toBeCloseTo(0.22 * 0.3, 12);
  });
});

describe('trickle tower', () => {
  const layout = trickleTower.layOut(sizes.tower);

  it('leads over pad, plate and layers into the box, where only the layers trickle', () => {
    expect(chambersInWaterOrder(layout).map(({ id }) => id)).toEqual(['pad', 'layer-1', 'layer-2']);
    expect(layout.chambers.map(({ trickles }) => trickles)).toEqual([undefined, true, true]);
  });

  it('drips from holes that fall free under the plate', () => {
    const [holes] = layout.openings;
    // 160 holes of 4 mm
    expect(holes?.areaM2).toBeCloseTo(160 * Math.PI * 0.002 ** 2, 12);
    // box 150 + 30 over the water + 420 of media + 30 fall + 2 plate, below the tank by 1.1 m and 150 mm
    expect(holes?.fallsAtM).toBeCloseTo(0.632 - 1.25, 12);
  });

  it('spills over the rim of the plate, past the media', () => {
    const rim = layout.weirs.find(({ id }) => id === 'plate-rim')!;
    expect(rim).toMatchObject({ from: 'on-plate', to: 'return', purpose: 'overflow' });
    expect(rim.crestHeightM - layout.openings[0]!.fallsAtM!).toBeCloseTo(0.06, 12);
  });

  it('loses the area of the holes that are blocked', () => {
    const blocked = trickleTower.layOut({ ...sizes.tower, holesBlocked: 0.75 });
    expect(blocked.openings[0]!.areaM2 / layout.openings[0]!.areaM2).toBeCloseTo(0.25, 12);
  });
});
