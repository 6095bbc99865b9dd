import type { Holding } from '@fettle/engine/claims/holding.ts';
import type { Block } from '../content/document.ts';
import { heading, lastState, type Writer } from './writer.ts';

/** What is said of a claim, in the language. */
const claimText = (writer: Writer, { said }: Holding): string => writer.fact(said);

/** A verdict in words; two units of one statement that fit say nothing of the filter. */
const verdictText = (writer: Writer, { verdict, said }: Holding): string =>
  writer.say(
    verdict === 'agrees' && said.code.startsWith('claim.pair')
      ? 'verdict.agrees-with-itself'
      : `verdict.${verdict}`,
  );

/** The maker's claims, verbatim, held against themselves and against what was measured or computed. */
export const claimsPart = (writer: Writer): readonly Block[] => {
  const { claims } = lastState(writer.source);
  if (claims.length === 0) return [];
  return [
    heading(writer, 'claims'),
    {
      kind: 'table',
      id: 'claims',
      caption: writer.say('table.claims'),
      columns: [
        { head: writer.say('column.claim'), align: 'left', share: 1.3 },
        { head: writer.say('column.verdict'), align: 'left' },
        { head: writer.say('column.why'), align: 'left', share: 2.2 },
      ],
      rows: claims.map((claim) => [
        writer.say('claim.verbatim', { text: claim.says }),
        verdictText(writer, claim),
        claimText(writer, claim),
      ]),
    },
  ];
};
