import { expect, test } from 'vitest';
import { isSearchedAlike } from './searchedFields.ts';

const job = { fettle: 1, tank: { volume: '180 L' }, packing: { 'basket-1': [] } };

test('plans stay good while a plan is taken or the work is quoted', () => {
  expect(isSearchedAlike(job, { ...job, planned: { packing: {} }, quote: { parts: [] } })).toBe(true);
});

test('plans are of another filter once tank, packing or prices are changed', () => {
  expect(isSearchedAlike(job, { ...job, tank: { volume: '90 L' } })).toBe(false);
  expect(isSearchedAlike(job, { ...job, packing: {} })).toBe(false);
  expect(isSearchedAlike(job, { ...job, money: { currency: 'EUR' } })).toBe(false);
});
