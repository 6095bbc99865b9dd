import * as z from 'zod';
import { byShortName, list, oneOf, quantity, shortName, text } from './fields.ts';
import { pricePerVolume } from './money.ts';

const share = (says: string, example: string) =>
  quantity({ dimension: 'fraction', says, example, above: '0 %', most: '99.9 %' });

/** A medium of the technician's own: like one of the catalogue's, but for what is stated. */
export const ownMediumSchema = z.strictObject({
  like: shortName({ says: 'medium of the catalogue that it is most like', example: 'ceramic-rings-12mm' }),
  name: text({ says: 'what it is called', example: 'short ceramic rings' }).optional(),
  stage: oneOf(['mechanical', 'biological', 'chemical'], { says: 'what it is for' }).optional(),
  form: oneOf(['foam', 'fibre', 'grains', 'rings', 'plastic'], {
    says: 'how it looks in section',
  }).optional(),
  cell: quantity({
    dimension: 'length',
    says: 'diameter of the cells of a foam',
    example: '2.9 mm',
    least: '0.05 mm',
    most: '20 mm',
  }).optional(),
  fibre: quantity({
    dimension: 'length',
    says: 'diameter of the fibres',
    example: '0.03 mm',
    least: '0.001 mm',
    most: '2 mm',
  }).optional(),
  solid: share('share of the bed that fibres fill', '2 %').optional(),
  size: quantity({
    dimension: 'length',
    says: 'size of a piece',
    example: '12 mm',
    least: '0.1 mm',
    most: '150 mm',
  }).optional(),
  voidage: share(
    'share of the bed that water can move through, pores inside the pieces not counted',
    '65 %',
  ).optional(),
  surface: quantity({
    dimension: 'specific-area',
    says: 'outer surface of the pieces by volume of bed',
    example: '500 m2/m3',
    least: '1 m2/m3',
    most: '100000 m2/m3',
  }).optional(),
  area: quantity({
    dimension: 'specific-area',
    says: 'area open to bacteria by volume of bed',
    example: '150 m2/m3',
    least: '0 m2/m3',
    most: '100000 m2/m3',
  }).optional(),
  density: quantity({
    dimension: 'density',
    says: 'dry mass by volume of bed',
    example: '450 g/L',
    least: '1 g/L',
    most: '5000 g/L',
  }).optional(),
  depositFactor: quantity({
    dimension: 'count',
    says: 'how steeply caught dirt raises the resistance',
    example: '17 ×/÷ 3',
    least: '0',
    most: '500',
  }).optional(),
  care: oneOf(['rinse', 'replace'], { says: 'what is usually done when it has clogged' }).optional(),
  bacteriaKept: quantity({
    dimension: 'fraction',
    says: 'share of the bacteria left after that',
    example: '70 %',
    least: '0 %',
    most: '100 %',
  }).optional(),
  life: quantity({
    dimension: 'time',
    says: 'time after which it is replaced whatever its state',
    example: '4 week',
    least: '1 h',
    most: '50 a',
  }).optional(),
  price: pricePerVolume.optional(),
  cautions: list(text({ says: 'one caution', most: 500 }), { says: 'what to mind', most: 20 }).optional(),
});

/** The technician's own media by short name. */
export const ownMediaSchema = byShortName(ownMediumSchema, { says: "the technician's own media" });
