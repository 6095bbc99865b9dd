import { fittings } from '@fettle/engine/catalogue/fittings.ts';
import { commonShelf } from '../toModel/supplies.ts';

/** A job file that reads clean. */
export const example = `fettle: 1
job: { number: 12, title: Canister of the hall tank, received: 2026-11-02 }
tank: { volume: 180 L ± 5 %, stock: normal, planted: no }
filter:
  family: basket-stack-canister
  measurements: { baskets: 3, basketWidth: 160 mm, basketDepth: 150 mm, basketHeight: 60 mm }
  pump: { ratedFlow: 900 L/h, power: 14 ± 1 W }
packing:
  basket-3: [{ medium: floss-loose, depth: 20 mm }]
  basket-2: [{ medium: ceramic-rings-15mm, fill: 100 % }]
  basket-1: [{ medium: foam-20ppi, depth: 50 mm }]
alterations: [seal-gaps, { change: hose-bore, bore: 19 mm }]
tests:
  - { kind: timed-volume, volume: 5 L ± 1 %, times: [31.2 s, 30.8 s, 31.5 s] }
`;

/** What stands above the tables. */
export const prose = `# The job file

A job is one file of YAML 1.2 (JSON is YAML, so JSON does as well) in UTF-8, of at most 2 MB. It begins with the
edition of the format, \`fettle: 1\`. \`fettle new --family <family>\` writes one to start from.

\`\`\`yaml
${example}\`\`\`

- Quantities are written with their units and, where it is known, their doubt: see [How quantities are written](quantities.md).
- Short names (chambers, media, alterations) consist of small letters, digits and hyphens and begin with a letter. Known names may be written with capitals and spaces (\`Foam 20PPI\`); a note says how they are taken.
- Inside \`{ }\` and \`[ ]\` a comma ends the entry: write a decimal point there, or put the value in quotes (\`{ length: "1,5 m" }\`).
- The order of fields changes nothing; the order of a list of beds does: from the top down, or from the pump's side in slots.
- A field that is not in the tables below is refused, with the nearest that is. So are anchors and aliases (\`&\`, \`*\`), tags (\`!\`), several documents in one file, tabs for indenting and a field written twice.
- What is left out is assumed where that is possible, and listed as assumed with its reason. A file that is wrong is never half read: what is wrong with it is told at once, each with its line. Parts are checked against each other as far as they can be read; where a measurement is missing or wrong, the room in the chambers is checked once that is put right.
- \`packages/job/job.schema.json\` is the same format as a JSON Schema, for editors that complete and check while typing.
`;

/** What stands below the table of fields. */
export const notes = [
  'A bed has exactly one of `depth`, `volume`, `mass` and `fill`. `alterations` is a list, or `{ permitted: […], forbidden: […] }`; with `forbidden` alone all other alterations of the family that need no setting are permitted. An own medium keeps every figure of the one it is `like` that it does not state; a stated figure without a doubt keeps the doubt of the one it replaces, in proportion.',
  '',
  'A timed filling becomes a flow with its doubt by the rules of JCGM 100:2008 (GUM): the doubts of volume and watch and the scatter of the repeats are added in quadrature, and Student’s factor is taken for the effective degrees of freedom. Without stated doubts: 1.5 % for filling to a line, 0.3 s for a watch, 2 % and at least 0.5 W for a plug meter, 2 cm for a height, 1 % for weighed water (common practice, no source). Of three runs or more, one that lies outside what the others allow is named in a note (`odd-run`, [the rule](models/filter.md)) and counted all the same. A flow that was timed `as-left` is held against the packing of `asLeft` (`fettle assess --state as-left`) and no other: there it proves the work, and too little is told as well as too much. Tests of kind `dye` and `ammonia-challenge` are kept and not yet used in figures.',
  '',
  'What stands under `owner` is personal, and so are its place, photographs and notes. Nothing of it is published without consent: only what `consent` states as `true`, and nothing from the day on which it is `withdrawn`. A tag may stand once. In a quote, labour without a price costs its time at the rate of `money.labour`, and a part without a price that of `money.parts`; a rate or price that is not stated is not assumed, and the quote says what is missing. Each line is rounded to the hundredth.',
  '',
  `Where \`shelf\` is absent, plans may use any amount of a common shelf: ${commonShelf.map((id) => `\`${id}\``).join(', ')}; a note says so.`,
  '',
  `Fittings: ${Object.keys(fittings)
    .map((id) => `\`${id}\``)
    .join(', ')}. Media and fish are listed in [the catalogue](catalogue.md).`,
];
