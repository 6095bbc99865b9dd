import { describe, expect, it } from 'vitest';
import type { Medium, Resistance } from '../model/medium.ts';
import { stages } from '../model/medium.ts';
import { media } from './media.ts';
import { throatM } from './throat.ts';

const shelf = Object.values(media);

const voidageOf = (resistance: Resistance): number =>
  resistance.law === 'fibre' ? 1 - resistance.solidFraction.value : resistance.voidage.value;

const named = (wrong: (medium: Medium) => boolean): string[] => shelf.filter(wrong).map(({ id }) => id);

describe('the media shelf', () => {
  it('holds at least 28 media and all three stages', () => {
    expect(shelf.length).toBeGreaterThanOrEqual(28);
    expect(new Set(shelf.map(({ stage }) => stage))).toEqual(new Set(stages));
  });

  it('leaves some of each bed open and some solid', () => {
    expect(named(({ resistance }) => !(voidageOf(resistance) > 0.3 && voidageOf(resistance) < 1))).toEqual(
      [],
    );
  });

  it('has bulk densities between floss and gravel', () => {
    expect(
      named((medium) => medium.bulkDensityKgPerM3.value < 5 || medium.bulkDensityKgPerM3.value > 1700),
    ).toEqual([]);
  });

  it('gives no medium more than 3 m² per litre, however much gas its pores take up', () => {
    expect(named(({ areaPerM }) => areaPerM.value > 3000)).toEqual([]);
  });

  it('keeps bacteria in what is rinsed and none in what is replaced', () => {
    expect(named(({ care, bacteriaKept }) => bacteriaKept.value > 0 !== (care === 'rinse'))).toEqual([]);
    expect(named(({ bacteriaKept }) => bacteriaKept.value > 1)).toEqual([]);
  });

  it('says how long what is replaced lasts', () => {
    expect(
      named(
        ({ care, stage, lifeS }) => (care === 'replace' || stage === 'chemical') !== (lifeS !== undefined),
      ),
    ).toEqual([]);
  });

  it('says of chemical media, and of them alone, what they take out', () => {
    expect(named(({ stage, removes }) => (stage === 'chemical') !== (removes !== undefined))).toEqual([]);
  });

  it('writes cautions as single sentences', () => {
    expect(
      named(({ cautions }) => cautions.some((caution) => !/^[A-Z][^.]*(\.\d[^.]*)*\.$/.test(caution))),
    ).toEqual([]);
  });

  it('packs fibres of a density that plastics have', () => {
    const wrong = named(({ resistance, bulkDensityKgPerM3 }) => {
      if (resistance.law !== 'fibre') return false;
      const solidKgPerM3 = bulkDensityKgPerM3.value / resistance.solidFraction.value;
      return solidKgPerM3 < 850 || solidKgPerM3 > 1450;
    });
    expect(wrong).toEqual([]);
  });

  it('gives grains at most the area of smooth spheres where it claims no more', () => {
    const wrong = shelf.filter(({ resistance, areaPerM }) => {
      if (resistance.law !== 'grains' || areaPerM.source.kind !== 'computed') return false;
      const spheres = (6 * (1 - resistance.voidage.value)) / resistance.sizeM.value;
      return Math.abs(areaPerM.value / spheres - 1) > 0.05;
    });
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });
});

describe('foam by grade', () => {
  const grades = [10, 20, 30, 45, 60].map((poresPerInch) => media[`foam-${poresPerInch}ppi`]!);
  const cells = grades.map(({ resistance }) =>
    resistance.law === 'foam' ? resistance.cellM.value : Number.NaN,
  );

  it.each([
    { grade: '20 ppi', cellM: cells[1]!, least: 2.7e-3, most: 3.2e-3 },
    { grade: '30 ppi', cellM: cells[2]!, least: 1.6e-3, most: 1.9e-3 },
  ])('has at $grade the cells that were counted', ({ cellM, least, most }) => {
    expect(cellM).toBeGreaterThanOrEqual(least);
    expect(cellM).toBeLessThanOrEqual(most);
  });

  it('has smaller cells, narrower throats and more area the finer it is', () => {
    for (let finer = 1; finer < grades.length; finer += 1) {
      expect(cells[finer]!).toBeLessThan(cells[finer - 1]!);
      expect(throatM(grades[finer]!)).toBeLessThan(throatM(grades[finer - 1]!));
      expect(grades[finer]!.areaPerM.value).toBeGreaterThan(grades[finer - 1]!.areaPerM.value);
    }
  });

  it('is the same foam when it serves as a biological block', () => {
    for (const grade of ['20ppi', '30ppi']) {
      const { id, name, stage, ...block } = media[`foam-${grade}-biological`]!;
      expect(media[`foam-${grade}`]).toMatchObject(block);
      expect([id, stage, name === '']).toEqual([`foam-${grade}-biological`, 'biological', false]);
    }
  });
});

describe('throats', () => {
  it.each([
    { law: 'foam', id: 'foam-20ppi', throat: 0.45 * 2.94e-3 },
    { law: 'grains', id: 'gravel-10mm', throat: 0.1547 * 0.01 },
  ])('follow the law of $law', ({ id, throat }) => {
    expect(throatM(media[id]!)).toBeCloseTo(throat, 6);
  });

  it('put the mechanical media in the order in which the trade calls them coarse and fine', () => {
    const coarseToFine = [
      'porcelain-rings-15mm',
      'foam-20ppi',
      'foam-30ppi',
      'floss-packed',
      'polishing-pad',
    ];
    const throats = coarseToFine.map((id) => throatM(media[id]!));
    expect(throats).toEqual(throats.toSorted((one, other) => other - one));
  });
});
