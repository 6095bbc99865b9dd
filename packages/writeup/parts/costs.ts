import type { Block } from '../content/document.ts';
import { changeCost } from './changes.ts';
import { energy, money } from './quantities.ts';
import { heading, lastState, paragraph, tense, type Writer } from './writer.ts';

const yearRows = (writer: Writer): readonly (readonly string[])[] => {
  const { model, assessment } = lastState(writer.source);
  const { cost } = assessment;
  const sum = (value: number): string => writer.fact(money(value, cost.currency));
  return [
    [writer.say('cost.energy', { energy: energy(cost.energyJPerYear) }), sum(cost.energyPerYear)],
    [writer.say('cost.media'), sum(cost.mediaPerYear)],
    // A price that nobody stated is left out, not called nothing.
    ...(model.filter.price === undefined ? [] : [[writer.say('cost.price'), sum(cost.pricePerYear)]]),
  ];
};

/** What the change costs once, and the filter every year. */
export const costsPart = (writer: Writer): readonly Block[] => {
  const { cost } = lastState(writer.source).assessment;
  const change = changeCost(writer.source);
  const form = tense(writer.source);
  return [
    heading(writer, 'costs'),
    ...(form === 'found'
      ? []
      : paragraph('cost-of-change', [
          writer.say(`cost.change.${form}`, { cost: money(change.total, change.currency) }),
        ])),
    {
      kind: 'table',
      id: 'yearly',
      caption: writer.say('table.yearly'),
      columns: [
        { head: writer.say('column.what'), align: 'left', share: 3 },
        { head: writer.say('column.per-year'), align: 'right' },
      ],
      rows: yearRows(writer),
      foot: [writer.say('cost.total'), writer.fact(money(cost.perYear, cost.currency))],
    },
    ...paragraph('cost-notes', [writer.say('cost.tariff')], 'soft'),
  ];
};
