import { printBoth } from '@fettle/engine/quantities/printQuantity.ts';
import type { Sheet } from './schemas.ts';

type Figures = NonNullable<Sheet['figures']>;

/** SI in one of the fixed units of figures. */
const litresPerHour = 1 / 3.6e6;
const litres = 1 / 1000;

const twoFigures = (value: number): string => String(Number(value.toPrecision(2)));

const flowSentence = ({ flow, turnover }: Figures): string =>
  flow.value <= 0
    ? 'No water goes through it.'
    : `Clean, about ${printBoth({ value: flow.value * litresPerHour, dimension: 'flow' })} go through it: the tank's water ${twoFigures(turnover.value)} times an hour.`;

const carriesSentence = ({ carries, served }: Figures): string =>
  carries.value <= 0
    ? 'There is nothing in it yet that bacteria could live in.'
    : `It carries what comes of about ${twoFigures(carries.value)} g of dry food a day, enough for about ${printBoth({ value: served.value * litres, dimension: 'volume', digits: 2 })} at a normal stock.`;

const cleaningSentence = ({ cleaningInterval: { value, beyond } }: Figures): string =>
  beyond
    ? 'Nothing asks for cleaning within a year.'
    : `Clean it about every ${twoFigures(value)} days. This is known within a factor of three: look at the flow.`;

/** What the filter does, in plain words. */
export const figuresInWords = (figures: Figures): readonly string[] => [
  flowSentence(figures),
  carriesSentence(figures),
  cleaningSentence(figures),
];

/** A day of the calendar as people write it. */
export const dayInWords = (day: string): string =>
  new Date(`${day}T00:00:00Z`).toLocaleDateString('en-GB', {
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    timeZone: 'UTC',
  });

/** `handed-back` as people say it. */
export const stageInWords = (stage: string): string => stage.replaceAll('-', ' ');
