import type { QuantityProblem, QuantityProblemCode } from '@fettle/engine/quantities/problem.ts';
import { type FieldPath, shownPath, writtenPath } from './fieldPath.ts';

/** One thing that is wrong with a job document. */
export interface Problem {
  /** Stable: see `problemWordings`. */
  readonly code: ProblemCode;
  /** Where, as `filter.pump.ratedFlow` or `packing.basket-1[0].depth`; empty where it is the whole file. */
  readonly path: string;
  /** One sentence: which field, what is wrong with it. */
  readonly says: string;
  /** What is allowed, where that can be listed. */
  readonly allowed?: string;
  /** Where in the text, counted from 1; absent where the document did not come from text. */
  readonly at?: { readonly line: number; readonly column: number };
}

/** A quantity as it was found, and what is wrong with it. */
interface QuantityFacts {
  readonly found: string;
  readonly detail: string;
}

/** What each wording is told beside the field's path. */
interface ProblemFacts {
  'file-too-large': { readonly bytes: number; readonly most: number };
  'file-empty': object;
  'file-not-utf8': object;
  'file-utf16': object;
  'not-a-job-file': { readonly looksLike: string };
  'not-a-book-file': { readonly looksLike: string; readonly name: string };
  'file-control-character': { readonly character: string };
  'yaml-syntax': { readonly detail: string };
  'yaml-several-documents': { readonly count: number };
  'yaml-version': { readonly version: string };
  'yaml-alias': { readonly mark: string };
  'yaml-tag': { readonly tag: string };
  'yaml-key': object;
  'nested-too-deep': { readonly most: number };
  'too-many-parts': { readonly most: number };
  'duplicate-field': object;
  'decimal-comma': { readonly found: string; readonly advice: string };
  'root-not-fields': { readonly found: string; readonly of: string };
  'edition-missing': { readonly current: number };
  'edition-newer': { readonly found: string; readonly current: number };
  'edition-wrong': { readonly found: string };
  'unknown-field': { readonly nearest: string | undefined };
  'missing-field': object;
  'empty-field': object;
  'wrong-kind': { readonly found: string; readonly wanted: string };
  'not-among': {
    readonly found: string;
    readonly what: string;
    readonly nearest: string | undefined;
  };
  'bad-id': { readonly found: string };
  'bad-tag': { readonly found: string };
  'text-too-long': { readonly most: number };
  'bad-date': { readonly found: string };
  'list-too-long': { readonly most: number };
  'list-too-short': { readonly least: number };
  'number-out-of-range': { readonly found: string };
  'not-a-quantity': QuantityFacts;
  'no-unit': QuantityFacts;
  'unknown-unit': QuantityFacts;
  'wrong-dimension': QuantityFacts;
  'ambiguous-quantity': QuantityFacts;
  'out-of-bounds': QuantityFacts;
  'bad-doubt': QuantityFacts;
  'one-of-fields': { readonly fields: string; readonly found: string };
  'measurement-missing': { readonly how: string };
  'not-in-family': { readonly what: string; readonly family: string };
  'unknown-chamber': { readonly found: string; readonly nearest: string | undefined };
  'unknown-medium': { readonly found: string; readonly nearest: string | undefined };
  'chamber-overfull': {
    readonly beds: string;
    readonly chamber: string;
    readonly over: string;
  };
  'piece-too-large': {
    readonly medium: string;
    readonly piece: string;
    readonly chamber: string;
  };
  'does-not-give-way': { readonly medium: string };
  'cannot-be-mixed': { readonly medium: string };
  'said-two-ways': { readonly other: string; readonly what: string };
  'pressed-from-less': { readonly found: string; readonly depth: string };
  'gap-leaves-nothing': { readonly found: string; readonly chamber: string };
  'flat-walls-only': { readonly chamber: string };
  'listed-twice': { readonly found: string };
  'alteration-contradiction': { readonly found: string };
  'alteration-not-here': { readonly found: string; readonly family: string };
  'setting-missing': { readonly found: string };
  'setting-not-here': { readonly found: string };
  'bad-currency': { readonly found: string };
  'currency-mismatch': { readonly found: string; readonly currency: string; readonly of: string };
  'curve-not-falling': { readonly detail: string };
  'curve-not-of-three': { readonly count: number };
  'dates-reversed': { readonly what: string };
  'not-for-this-medium': { readonly medium: string };
  'flow-missing': object;
  'state-not-described': object;
  'bad-pattern': { readonly found: string };
  'pattern-place': { readonly found: string };
  'bad-happening': { readonly found: string };
  'happening-place': { readonly found: string };
  'bad-tank-start': { readonly found: string };
  'bad-tank-changes': { readonly found: string };
}

/** Stable code of a problem. */
export type ProblemCode = keyof ProblemFacts;

const near = (nearest: string | undefined) => (nearest === undefined ? '' : ` (nearest: ${nearest})`);

/** A quantity's problem comes with its own words from the reader of quantities. */
const quantityWording = (path: string, { found, detail }: QuantityFacts) =>
  `${path} says ${found}: ${detail}.`;

/** The wording of every problem, by code. */
export const problemWordings: {
  readonly [C in ProblemCode]: (path: string, facts: ProblemFacts[C]) => string;
} = {
  'file-too-large': (_path, { bytes, most }) => `The file has ${bytes} bytes; at most ${most} are read.`,
  'file-empty': () => 'The file is empty.',
  'file-not-utf8': () => 'The file is not text in UTF-8; open it in a text editor and save it as UTF-8.',
  'file-utf16': () => 'The file is text in UTF-16; save it as UTF-8.',
  'not-a-job-file': (_path, { looksLike }) =>
    `This is not a job file: it looks like ${looksLike}, and a job file is YAML text that begins with its edition.`,
  'not-a-book-file': (_path, { looksLike, name }) =>
    `This is not a file of ${name}: it looks like ${looksLike}, and a file of ${name} is YAML text.`,
  'file-control-character': (_path, { character }) =>
    `The file contains the control character ${character}, which does not belong in a text file.`,
  'yaml-syntax': (_path, { detail }) => `The file cannot be read as YAML: ${detail}.`,
  'yaml-several-documents': (_path, { count }) =>
    `The file contains ${count} documents separated by ---; one is read.`,
  'yaml-version': (_path, { version }) =>
    `The file says that it is YAML ${version}; what is read is YAML 1.2.`,
  'yaml-alias': (_path, { mark }) =>
    `The file uses ${mark}, a YAML anchor or alias, which may not be used; write the value out.`,
  'yaml-tag': (_path, { tag }) => `The file uses the YAML tag ${tag}, which may not be used; leave it out.`,
  'yaml-key': () => 'The file has a field name that is not plain text.',
  'nested-too-deep': (_path, { most }) => `The file nests fields more than ${most} levels deep.`,
  'too-many-parts': (_path, { most }) => `The file has more than ${most} names, values and signs.`,
  'duplicate-field': (path) => `${path} is written twice; keep one.`,
  'decimal-comma': (path, { found, advice }) =>
    `${path} says ${found}, but inside { } and [ ] a comma without quotes ends the entry: ${advice}.`,
  'root-not-fields': (_path, { found, of }) => `The file contains ${found} instead of the fields of ${of}.`,
  'edition-missing': (_path, { current }) =>
    `fettle is missing, so the edition of the format is not known; write fettle: ${current} at the top.`,
  'edition-newer': (_path, { found, current }) =>
    `fettle says edition ${found}, which is newer than edition ${current}, the newest that this version reads.`,
  'edition-wrong': (_path, { found }) => `fettle says ${found}, which is no edition of the format.`,
  'unknown-field': (path, { nearest }) =>
    /(?:^|\.)$/.test(path)
      ? `A field of ${path.slice(0, -1) || 'the job'} has no name.`
      : `${shownPath(path)} is not a known field${near(nearest)}.`,
  'missing-field': (path) => `${path} is missing, and nothing can be assumed in its place.`,
  'empty-field': (path) => `${path} is empty; give it a value or leave the field out.`,
  'wrong-kind': (path, { found, wanted }) => `${path} is ${found}, but ${wanted} is needed.`,
  'not-among': (path, { found, what, nearest }) =>
    `${path} says ${found}, which is not ${what}${near(nearest)}.`,
  'bad-id': (path, { found }) =>
    `${path} uses ${found} as a short name; short names consist of small letters, digits and hyphens and begin with a letter.`,
  'bad-tag': (path, { found }) => `${path} says ${found}, which cannot be a tag.`,
  'text-too-long': (path, { most }) => `${path} is longer than ${most} characters.`,
  'bad-date': (path, { found }) => `${path} says ${found}, which is not a date; write it like 2026-11-02.`,
  'list-too-long': (path, { most }) => `${path} has more than ${most} entries.`,
  'list-too-short': (path, { least }) =>
    `${path} has fewer than ${least} ${least === 1 ? 'entry' : 'entries'}.`,
  'number-out-of-range': (path, { found }) => `${path} says ${found}, which is outside the range allowed.`,
  'not-a-quantity': quantityWording,
  'no-unit': quantityWording,
  'unknown-unit': quantityWording,
  'wrong-dimension': quantityWording,
  'ambiguous-quantity': quantityWording,
  'out-of-bounds': quantityWording,
  'bad-doubt': quantityWording,
  'one-of-fields': (path, { fields, found }) => `${path} needs exactly one of ${fields}, but has ${found}.`,
  'measurement-missing': (path, { how }) =>
    `${path} is missing, and this family of filter cannot do without it: ${how}.`,
  'not-in-family': (path, { what, family }) =>
    `${path} describes ${what}, which the ${family} does not have.`,
  'unknown-chamber': (path, { found, nearest }) =>
    `${path} names ${found}, which is not a chamber of this filter${near(nearest)}.`,
  'unknown-medium': (path, { found, nearest }) =>
    `${path} names ${found}, which is not a known medium${near(nearest)}.`,
  'chamber-overfull': (path, { beds, chamber, over }) =>
    `${path} has beds ${beds} deep in all, but the chamber is only ${chamber} deep: ${over} too much.`,
  'piece-too-large': (path, { medium, piece, chamber }) =>
    `${path} puts ${medium}, in pieces of ${piece}, into a chamber only ${chamber} across.`,
  'does-not-give-way': (path, { medium }) => `${path} presses ${medium}, which does not give way.`,
  'cannot-be-mixed': (path, { medium }) => `${path} mixes ${medium} into a bed, but it is not loose pieces.`,
  'said-two-ways': (path, { other, what }) => `${path} and ${other} both say ${what}; keep one.`,
  'pressed-from-less': (path, { found, depth }) =>
    `${path} says ${found}, which is less than the ${depth} that the bed has now.`,
  'gap-leaves-nothing': (path, { found, chamber }) =>
    `${path} says ${found}, which leaves next to nothing of a piece in a chamber ${chamber} across.`,
  'flat-walls-only': (path, { chamber }) =>
    `${path} is for chambers with flat walls, but the media of ${chamber} lie about a tube.`,
  'listed-twice': (path, { found }) => `${path} names ${found} a second time.`,
  'alteration-contradiction': (path, { found }) => `${path} forbids ${found}, which is also permitted.`,
  'alteration-not-here': (path, { found, family }) =>
    `${path} names ${found}, which cannot be done on the ${family}.`,
  'setting-missing': (path, { found }) => `${path} is missing: ${found} needs it.`,
  'setting-not-here': (path, { found }) => `${path} is a setting that ${found} does not have.`,
  'bad-currency': (path, { found }) => `${path} says ${found}, which is not a currency code.`,
  'currency-mismatch': (path, { found, currency, of }) =>
    `${path} is in ${found}, but ${of} one currency is ${currency}.`,
  'curve-not-falling': (path, { detail }) => `${path} does not fall as the flow rises: ${detail}.`,
  'curve-not-of-three': (path, { count }) =>
    `${path} says power, which takes three points, the first without flow (or the shut-off head and two points); there are ${count}.`,
  'dates-reversed': (path, { what }) => `${path} is before ${what}.`,
  'not-for-this-medium': (path, { medium }) => `${path} is a figure that ${medium} does not have.`,
  'state-not-described': (path) => `${path} is missing: the job does not describe its filter so.`,
  'bad-pattern': (_path, { found }) => `“${found}” is no pattern of cleaning.`,
  'pattern-place': (_path, { found }) =>
    `The pattern of cleaning names “${found}”, and the filter has no bed of that name.`,
  'bad-happening': (_path, { found }) => `“${found}” is nothing that can happen to a tank.`,
  'happening-place': (_path, { found }) =>
    `What happens to the tank names “${found}”, and the filter has no bed of that name.`,
  'bad-tank-start': (_path, { found }) => `“${found}” is no start of a tank.`,
  'bad-tank-changes': (_path, { found }) => `“${found}” says no water changes.`,
  'flow-missing': (path) => `${path} is missing: the pump needs either a rated flow or a curve.`,
};

/** The code of each way in which a quantity may be wrong. */
const quantityCodes = {
  'not-text': 'not-a-quantity',
  empty: 'not-a-quantity',
  'too-long': 'not-a-quantity',
  'not-a-number': 'not-a-quantity',
  'too-large': 'not-a-quantity',
  range: 'not-a-quantity',
  'ambiguous-number': 'ambiguous-quantity',
  'ambiguous-unit': 'ambiguous-quantity',
  'no-unit': 'no-unit',
  'unknown-unit': 'unknown-unit',
  'unknown-basis': 'unknown-unit',
  'wrong-dimension': 'wrong-dimension',
  'bad-doubt': 'bad-doubt',
  'below-absolute-zero': 'out-of-bounds',
  'below-least': 'out-of-bounds',
  'above-most': 'out-of-bounds',
  'not-above': 'out-of-bounds',
} as const satisfies Readonly<Record<QuantityProblemCode, ProblemCode>>;

/** Makes a problem of a quantity that could not be taken. */
export function problemOfQuantity(
  path: FieldPath,
  found: string,
  wrong: Pick<QuantityProblem, 'code' | 'says' | 'allowed'>,
): Problem {
  const [says = ''] = wrong.says.split('; allowed: ');
  const detail = says.replace(/^(?:The|This|A)\b/, (word) => word.toLowerCase()).replace(/\.$/, '');
  return problem(quantityCodes[wrong.code], path, { facts: { found, detail }, allowed: wrong.allowed });
}

/** Names that a document makes up may be of any length and hold line ends: a sentence shows neither. */
function shortened(path: string): string {
  return path.length > 120 ? `${path.slice(0, 117)}…` : path;
}

function oneLine(sentence: string): string {
  return sentence.replace(/[\s\p{Cc}]+/gu, ' ');
}

/** Makes a problem from its code, its place and what its wording has to be told. */
export function problem<C extends ProblemCode>(
  code: C,
  path: FieldPath,
  told: { readonly facts: ProblemFacts[C]; readonly allowed?: string },
): Problem {
  const where = writtenPath(path);
  const says = oneLine(problemWordings[code](shortened(where), told.facts));
  return { code, path: where, says, ...(told.allowed === undefined ? {} : { allowed: told.allowed }) };
}
