import { type Hose, hoses } from '@fettle/engine/catalogue/hoses.ts';

/** Bores that differ by less fit the same barb, m: soft hose varies by as much. */
const fitsWithinM = 0.0003;

/** The hoses of the catalogue, as sold, of a bore, m. */
export const hosesOfBore = (boreM: number): readonly Hose[] =>
  Object.values(hoses).filter(({ boreM: { value } }) => Math.abs(value - boreM) <= fitsWithinM);
