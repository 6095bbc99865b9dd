import type { HooperFitting } from '../laws/hydraulics/fittings.ts';
import {
  ENTRANCE_K_SHARP_RENNELS_2012,
  EXIT_K,
  entranceKCrane1988,
  hooperFittings,
} from '../laws/hydraulics/fittings.ts';
import type { Figure } from '../model/figure.ts';
import { computed, fromMemory, secondary, times } from './figureOf.ts';

/**
 * A fitting of a hose run: K = k1/Re + k∞ · s, s = 1 + 1 in/bore where it scales with the bore and 1 where it
 * does not. Re and K are on the mean velocity in the bore of the hose, for every fitting here.
 */
export interface Fitting {
  readonly id: string;
  readonly name: string;
  /** K·Re at low Re, 1; 0 where the loss is a fixed number of velocity heads. */
  readonly k1: Figure;
  /** K at high Re, 1; of a large fitting where it scales with the bore. */
  readonly kInfinity: Figure;
  /** Whether small bores lose more, by Hooper's 1 + 1 in/bore. */
  readonly scalesWithBore: boolean;
  /** The end of a run whose plain entrance or exit this fitting takes the place of; its loss includes that. */
  readonly replacesEnd?: 'intake' | 'outlet';
}

const noLaminarTerm: Figure = computed(0, times(2), 'a fixed loss has no laminar term');

const hooperText =
  'Hooper 1981, The two-K method predicts head losses in pipe fittings, Chem. Eng. 88(17), 96–100, as tabulated in later handbooks';

const hooper = (id: string, name: string, kind: HooperFitting): Fitting => ({
  id,
  name,
  k1: secondary(hooperFittings[kind].k1, times(1.4), hooperText),
  kInfinity: secondary(hooperFittings[kind].kInfinity, times(1.4), hooperText),
  scalesWithBore: true,
});

const fixed = (fitting: Pick<Fitting, 'id' | 'name' | 'kInfinity' | 'replacesEnd'>): Fitting => ({
  ...fitting,
  k1: noLaminarTerm,
  scalesWithBore: false,
});

const craneText = 'Crane TP-410 (1988), Flow of Fluids, A-29';

/** Fittings by id. */
export const fittings: Readonly<Record<string, Fitting>> = {
  'elbow-90': {
    ...hooper('elbow-90', 'moulded 90° elbow', 'elbow-90-screwed'),
    kInfinity: fromMemory(
      0.55,
      times(1.6),
      'a moulded elbow turns sharper than a screwed one (0.4 in Hooper 1981)',
    ),
  },
  'elbow-90-long': hooper('elbow-90-long', 'long-radius 90° elbow', 'elbow-90-long-radius'),
  'elbow-90-screwed': hooper('elbow-90-screwed', 'screwed 90° elbow', 'elbow-90-screwed'),
  'elbow-90-mitred': hooper('elbow-90-mitred', 'mitred 90° elbow', 'elbow-90-mitred'),
  'elbow-45': hooper('elbow-45', '45° elbow', 'elbow-45-standard'),
  'bend-180': hooper('bend-180', '180° return bend', 'bend-180-screwed'),
  'tee-run': hooper('tee-run', 'tee, straight on', 'tee-run-screwed'),
  'tee-branch': hooper('tee-branch', 'tee, through the branch', 'tee-into-branch-screwed'),
  'tap-ball': hooper('tap-ball', 'ball tap, full bore', 'tap-full-bore'),
  'tap-ball-reduced': hooper('tap-ball-reduced', 'ball tap, reduced bore', 'tap-reduced-bore-0.8'),
  'tap-quick-release': {
    ...hooper('tap-quick-release', 'quick-release tap', 'tap-reduced-bore-0.8'),
    kInfinity: fromMemory(
      0.7,
      times(2.5),
      'two taps back to back with a step between, each a ball tap of reduced bore; measure it',
    ),
  },
  'valve-gate': hooper('valve-gate', 'gate valve, open', 'tap-full-bore'),
  'valve-check-swing': hooper('valve-check-swing', 'swing check valve', 'check-swing'),
  'entrance-sharp': fixed({
    id: 'entrance-sharp',
    name: 'sharp entrance',
    kInfinity: secondary(
      entranceKCrane1988({ shape: 'flush-sharp' }),
      times(1.2),
      `${craneText}; Rennels & Hudson 2012, Pipe Flow, ch. 9, have ${ENTRANCE_K_SHARP_RENNELS_2012}`,
    ),
    replacesEnd: 'intake',
  }),
  'entrance-rounded': fixed({
    id: 'entrance-rounded',
    name: 'rounded entrance',
    kInfinity: secondary(entranceKCrane1988({ shape: 'flush-rounded' }), times(2), craneText),
    replacesEnd: 'intake',
  }),
  'entrance-projecting': fixed({
    id: 'entrance-projecting',
    name: 'open pipe end as entrance',
    kInfinity: secondary(entranceKCrane1988({ shape: 'projecting' }), times(1.2), craneText),
    replacesEnd: 'intake',
  }),
  strainer: fixed({
    id: 'strainer',
    name: 'intake strainer',
    kInfinity: fromMemory(
      1.5,
      times(2),
      'clean; slots of one to two times the area of the bore, entrance included',
    ),
    replacesEnd: 'intake',
  }),
  exit: fixed({
    id: 'exit',
    name: 'open end under water',
    kInfinity: secondary(EXIT_K, times(1.05), `${craneText}: all of the velocity head is lost`),
    replacesEnd: 'outlet',
  }),
  'spray-bar': fixed({
    id: 'spray-bar',
    name: 'spray bar',
    kInfinity: fromMemory(
      3.5,
      times(2.5),
      'holes of about 0.9 of the area of the bore, discharge coefficient 0.61; count and measure the holes',
    ),
    replacesEnd: 'outlet',
  }),
  'nozzle-jet': fixed({
    id: 'nozzle-jet',
    name: 'narrowed outlet nozzle',
    kInfinity: fromMemory(4, times(2), 'mouth of 0.7 of the bore, all of its velocity head lost'),
    replacesEnd: 'outlet',
  }),
  'hose-coil': fixed({
    id: 'hose-coil',
    name: 'one turn of coiled hose',
    kInfinity: fromMemory(0.4, times(2), 'over the friction of the straight hose'),
  }),
  'hose-kink': fixed({
    id: 'hose-kink',
    name: 'kinked hose',
    kInfinity: fromMemory(5, times(3), 'half of the bore closed'),
  }),
  reducer: fixed({
    id: 'reducer',
    name: 'reducer, one size down and up again',
    kInfinity: fromMemory(
      1,
      times(2.5),
      'to 0.75 of the bore: contraction and expansion, on the velocity in the wider hose',
    ),
  }),
};
