import { changeCost } from './changes.ts';
import { length } from './quantities.ts';
import { lastState, type Writer } from './writer.ts';

/** A part that the change needs, as people read of it. */
export interface PartLine {
  readonly name: string;
  /** Hoses by length, all else by the piece. */
  readonly amount: string;
  /** Of the whole amount, in the job's currency. */
  readonly price: number;
  /** Whether the job states the price; else it stands in for one. */
  readonly isStated: boolean;
}

/** Every part that the alterations need, with its amount and its price. */
export const partLines = (writer: Writer): readonly PartLine[] => {
  const { filter } = lastState(writer.source).model;
  const bore = filter.intake?.boreM ?? filter.outlet?.boreM ?? 0;
  return changeCost(writer.source).parts.map(({ part, count, price }) => ({
    name: writer.say(`part.${part}`, { bore: length(bore) }),
    amount: part === 'hose-per-metre' ? writer.fact(length(count)) : writer.fact(count),
    price: count * price,
    isStated: writer.source.document.money?.parts?.[part] !== undefined,
  }));
};
