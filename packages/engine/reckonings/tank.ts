import { solidsMade } from '../laws/dirt/production.ts';
import { ammoniumChlorideDose, nitriteChlorideDose } from '../laws/life/dosing.ts';
import {
  alkalinityForNitrification,
  ammoniaFromFeed,
  ammoniaFromFeedRange,
  oxygenForNitrification,
} from '../laws/life/feed.ts';
import { molarMass } from '../quantities/basis.ts';
import { choiceOr, countedAs, nitrogenReading, quantity, quantityOr } from './inputs.ts';
import { outsideOf } from './outside.ts';
import { reckoning } from './reckoning.ts';

const perDay = (label: string) => ({ label, unit: 'g/d', dimension: 'mass-rate', digits: 3 }) as const;

export const feedLoad = reckoning({
  name: 'feed-load',
  says: 'What a daily ration lays on the filter: ammonia, the oxygen and alkalinity to oxidise it, and dirt.',
  formula: 'P = F·protein·0.092; oxygen 4.57·P, alkalinity 7.14·P, solids 0.25·F',
  inputs: {
    feed: quantity('mass-rate', { label: 'dry feed', example: '5 g/d', least: '0 g/d' }),
    protein: quantity('fraction', {
      label: 'protein in the feed',
      example: '45 %',
      least: '0 %',
      most: '100 %',
    }),
  },
  results: {
    tan: perDay('ammonia made, as N'),
    oxygen: perDay('oxygen to oxidise it to nitrate'),
    alkalinity: perDay('alkalinity that this uses, as CaCO3'),
    solids: perDay('suspended solids made, dry'),
  },
  source:
    'Timmons & Ebeling, Recirculating Aquaculture, and Ebeling et al. 2006, Aquaculture 257, seen quoted; stoichiometry',
  compute: ({ feed, protein }) => {
    const tan = ammoniaFromFeed({ feedKgPerS: feed, proteinFraction: protein });
    const load = { nitrogenKgPerS: tan };
    return {
      answers: {
        tan,
        oxygen: oxygenForNitrification(load),
        alkalinity: alkalinityForNitrification(load),
        solids: solidsMade({ feedKgPerS: feed }),
      },
      outside: outsideOf(ammoniaFromFeedRange, {
        proteinFraction: { label: 'protein', value: protein, dimension: 'fraction' },
      }),
    };
  },
  examples: [
    {
      source: 'Timmons & Ebeling, Recirculating Aquaculture: 1000 g of feed of 35 % protein',
      seen: 'secondary',
      inputs: { feed: '1000 g/d', protein: '35 %' },
      expected: { tan: '32.2 g/d' },
    },
  ],
});

export const challengeDose = reckoning({
  name: 'challenge-dose',
  says: 'Ammonium chloride that brings clean water to a level of total ammonia for a test of the filter.',
  formula: 'm = V·C·M(NH4Cl)/M(N), 3.819 mg per mg N',
  inputs: {
    volume: quantity('volume', { label: 'volume of water', example: '100 L', above: '0 L' }),
    target: nitrogenReading({ label: 'total ammonia wanted', example: '2.0 mg/L', least: '0 mg/L' }),
    basis: choiceOr(['N', 'NH3', 'NH4'], {
      label: 'what the target is counted as where it does not say it',
      otherwise: 'N',
    }),
  },
  results: {
    ammoniumChloride: { label: 'ammonium chloride, dry', unit: 'mg', dimension: 'mass', digits: 3 },
  },
  source: 'molar masses of IUPAC 2021',
  compute: ({ volume, target, basis }) => {
    const riseKgNPerM3 = countedAs(target, { unlessSaid: basis, to: 'N' });
    const tooStrong =
      'More than 5 mg/L of N slows the bacteria that are to be tested (common practice, no source).';
    return {
      answers: { ammoniumChloride: ammoniumChlorideDose({ volumeM3: volume, riseKgNPerM3 }) },
      notes: riseKgNPerM3 > 0.005 * (1 + 1e-9) ? [tooStrong] : [],
    };
  },
  examples: [
    {
      source: 'molar masses of IUPAC 2021: 53.49 g/mol of NH4Cl for 14.007 g/mol of N',
      seen: 'formula',
      inputs: { volume: '100 L', target: '2.0 mg/L' },
      expected: { ammoniumChloride: '764 mg' },
    },
    {
      source: 'molar masses of IUPAC 2021: 53.49/17.031 = 3.141 mg per mg of NH3',
      seen: 'formula',
      inputs: { volume: '1 L', target: '1 mg/L', basis: 'NH3' },
      expected: { ammoniumChloride: '3.141 mg' },
    },
  ],
});

/** Chloride in sodium chloride by mass, molar masses of IUPAC 2021. */
const CHLORIDE_IN_SALT = 35.45 / 58.44;

export const nitriteChloride = reckoning({
  name: 'nitrite-chloride',
  says: 'Chloride, and cooking salt for it, that shields fish from nitrite until the filter has caught up.',
  formula: 'ΔCl = max(0, r·C(NO2) − C(Cl)), salt = ΔCl·M(NaCl)/M(Cl)',
  inputs: {
    nitrite: nitrogenReading({ label: 'nitrite in the water', example: '1 mg/L', least: '0 mg/L' }),
    chloride: quantity('concentration', {
      label: 'chloride in the water already',
      example: '5 mg/L',
      least: '0 mg/L',
    }),
    ratio: quantityOr('count', {
      label: 'chloride wanted over nitrite counted as NO2, by mass',
      example: '10',
      least: '0',
      otherwise: '10',
    }),
    basis: choiceOr(['NO2', 'N'], {
      label: 'what the nitrite is counted as where it does not say it',
      otherwise: 'NO2',
    }),
  },
  results: {
    chloride: { label: 'chloride to add', unit: 'mg/L', dimension: 'concentration', digits: 3 },
    salt: { label: 'as sodium chloride', unit: 'mg/L', dimension: 'concentration', digits: 3 },
  },
  source: 'ratio from memory of advice to fish farmers, 6 to 20 are in use; molar masses of IUPAC 2021',
  compute: ({ nitrite, chloride, ratio, basis }) => {
    const salt = nitriteChlorideDose({
      volumeM3: 1,
      nitriteKgNPerM3: countedAs(nitrite, { unlessSaid: basis, to: 'N' }),
      chlorideKgPerM3: chloride,
      chlorideRatio: (ratio * molarMass.NO2) / molarMass.N,
    });
    const notes =
      salt > 0 ? ['Some plants and fish do not stand salt; nitrite stays until the bacteria take it.'] : [];
    return { answers: { chloride: salt * CHLORIDE_IN_SALT, salt }, notes };
  },
  examples: [
    {
      source:
        'ten parts of chloride for one of NO2; 58.44/35.45 parts of salt for one of chloride (IUPAC 2021)',
      seen: 'formula',
      inputs: { nitrite: '1 mg/L', chloride: '2 mg/L' },
      expected: { chloride: '8.000 mg/L', salt: '13.19 mg/L' },
    },
    {
      source: 'ten parts of chloride for one of NO2, enough there already',
      seen: 'formula',
      inputs: { nitrite: '1 mg/L', chloride: '40 mg/L' },
      expected: { chloride: '0 mg/L', salt: '0 mg/L' },
    },
  ],
});
