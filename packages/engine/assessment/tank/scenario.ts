import type { Stage } from '../../model/medium.ts';

/** What of the bacteria a tank starts with: none but those that drift in, a share of a mature filter's, or all. */
export type TankStart =
  | { readonly kind: 'new' }
  | { readonly kind: 'seeded'; readonly share: number }
  | { readonly kind: 'mature' };

/** Beds that something is done to: all, those of a stage, or a chamber, a medium or a bed by its id. */
export type Beds = 'all' | Stage | string;

/** Something that happens to a tank, at the start of a day counted from 0. */
export type Happening = { readonly day: number } & (
  | { readonly kind: 'replace'; readonly beds: Beds /** Of each bed, 0 to 1. */; readonly share: number }
  | { readonly kind: 'clean'; readonly beds: Beds; readonly water: 'tank' | 'tap' }
  | {
      /** Feed against the job's own, for so many days, or from then on. */
      readonly kind: 'feed';
      readonly factor: number;
      readonly forDays?: number;
    }
  | { readonly kind: 'temperature'; readonly temperatureK: number; readonly forDays?: number }
  | {
      /** A chemical in the water: bacteria that it kills at once, and what it leaves of the others' work while it stays. */
      readonly kind: 'harm';
      readonly killed: number;
      readonly activity: number;
      readonly forDays: number;
    }
  | {
      readonly kind: 'stop';
      readonly hours: number;
      /** Whether its water was poured away and its media rinsed before it ran again. */
      readonly rinsed: boolean;
    }
  | { readonly kind: 'change' /** Of the water, 0 to 1. */; readonly share: number }
  | { readonly kind: 'dose'; readonly riseKgNPerM3: number }
);

/** What a tank is to be put through. */
export interface TankScenario {
  /** Days, whole, 1 to 730. */
  readonly days: number;
  readonly start: TankStart;
  readonly happenings: readonly Happening[];
  /** Water changes on set days in place of the job's steady ones. */
  readonly changes?: { readonly share: number; readonly everyDays: number };
  /** Bacteria on glass and ground; counted where left out. */
  readonly walls?: boolean;
  /** Plants that take up nitrogen; as the job has it where left out. */
  readonly plants?: boolean;
}
