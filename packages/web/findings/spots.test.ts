import { sectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import { assessJob } from '@fettle/workflows/assessJob.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { describe, expect, test } from 'vitest';
import { isEmpty, spotsOf } from './spots.ts';

const files = import.meta.glob<string>('../../../demo/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const opened = (name: string) => {
  const reading = openJob(files[`../../../demo/${name}.yaml`] ?? '');
  if (!reading.ok) throw new Error(name);
  const job = assessJob(reading.model);
  const { layout } = job.assessment;
  const { packing, media } = reading.model;
  return { job, section: { layout, places: sectionPlaces({ layout, packing, media, units: 'metric' }) } };
};

const demos = ['everything-wrong', 'tall-drum', 'two-halves', 'back-hanger', 'corner-box'];

describe('places that findings point at', () => {
  test.each(demos)('%s: every finding of the filter itself points at something in the drawing', (name) => {
    const { job, section } = opened(name);
    const elsewhere = ['tank', 'claims', ...job.model.tests.map(({ id }) => id)];
    for (const { place, says } of job.findings)
      expect([says, isEmpty(spotsOf(section, place))]).toEqual([says, elsewhere.includes(place)]);
  });

  test.each(demos)('%s: pump and hose ends lie to the sheet as its ways do', (name) => {
    const { section } = opened(name);
    const { layout, places } = section;
    const [way] = [...layout.openings, ...layout.leaks, ...layout.weirs];
    const [first] = places.ways;
    expect(way && first).toBeDefined();
    if (way === undefined || first === undefined) return;
    const [inlet] = spotsOf(section, 'intake').points;
    expect((inlet?.x ?? 0) - first.at.x).toBeCloseTo(places.scale * (layout.drawing.inlet.x - way.at.x));
    expect(first.at.y - (inlet?.y ?? 0)).toBeCloseTo(places.scale * (layout.drawing.inlet.y - way.at.y));
    const [pump] = spotsOf(section, 'pump').boxes;
    const top = layout.drawing.pump.y + layout.drawing.pump.height;
    expect(first.at.y - (pump?.y ?? 0)).toBeCloseTo(places.scale * (top - way.at.y));
  });

  test('a bed of a basket with two is told from the other', () => {
    const { section } = opened('everything-wrong');
    const [first] = spotsOf(section, 'basket-1:1').boxes;
    const [second] = spotsOf(section, 'basket-1:2').boxes;
    expect(first).not.toEqual(second);
    expect(isEmpty(spotsOf(section, 'basket-1:3'))).toBe(true);
  });
});
