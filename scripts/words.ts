import { createHash } from 'node:crypto';
import { type Breach, lineAt, reportBreaches } from './breach.ts';
import { isMain, readSources, type Source } from './sources.ts';

/**
 * Digests of terms of one to three words that no file may hold: names of drafts, of the tools that wrote
 * them and of the place where they were written. The project speaks of itself alone, and so does this list:
 * it keeps digests so that it need not hold the terms. Add one with `digestOf('the term')`.
 */
const unwantedDigests: ReadonlySet<string> = new Set([
  '028cdc72b35c1bc2',
  '0a91a03b3ec81d1c',
  '12607696c43d9002',
  '1509e5616d60d54f',
  '1a943eb7ed1410a6',
  '1ea7f741f4099302',
  '1f412223a72eaf1c',
  '29447fab346b1477',
  '2b3f6a7e9d6c0948',
  '2da59699d8198376',
  '306bc0cadb143e72',
  '32e83e92d45d71f6',
  '3c51c993ffd35933',
  '442e56863b7e9cf8',
  '487b91042c7cf27a',
  '492fa26db16a4df4',
  '549eb0447cc9d1d1',
  '5eff592cc497fccb',
  '5fe258d0da83a623',
  '60965168ce762e94',
  '60c378c31291f6f6',
  '61b7aed7af71083d',
  '6a6e8de309f63a5b',
  '6d60985f6cc46ad7',
  '7b1bca67f1323485',
  '7d3194f79e645c42',
  '875a4dbf957b12cf',
  '897939b397a816da',
  '8cf10d1b0e07c1d8',
  '94a168d2da574b00',
  '965040a74146bf21',
  'a4d76a4d59584d6f',
  'adeb6947975a1160',
  'ae96cc20a02ff260',
  'b3d0b3cf9bf80de1',
  'b405683d0bb5b3dc',
  'ba20768a02ee5327',
  'c5f9d8f01eaaecc5',
  'c70eca6b0f88f44d',
  'c857d09db23e6822',
  'cf07194ee232eb53',
  'd298391b07433318',
  'de2187af3fb01170',
  'e16202309c921807',
  'e47416ec50ffbe94',
  'eb7526362ee7678c',
  'ef4fbb41be66138b',
  'f60472c7e99ddf31',
  'fbb8037df8cc9050',
  'fdf9f5fedfcaced6',
]);

/** Files that repeat what other projects say of themselves. */
const othersWords: ReadonlySet<string> = new Set(['package-lock.json']);

/** Addresses and folders of one machine: true there and nowhere else. */
const machineBound: readonly { readonly rule: string; readonly pattern: RegExp; readonly message: string }[] =
  [
    {
      rule: 'registry-address',
      pattern: /\b(?:https?:\/\/)?(?:registry|deb|mirrors?|proxy)\.[a-z0-9-]+\.[a-z]{2,}\b/gi,
      message: 'the address of a package registry',
    },
    {
      rule: 'machine-address',
      pattern: /\b(?:10\.\d{1,3}|172\.(?:1[6-9]|2\d|3[01])|192\.168)\.\d{1,3}\.\d{1,3}\b/g,
      message: "a private network's address",
    },
    {
      rule: 'machine-folder',
      pattern: /(?<![\w./~@-])\/(?:work|root|home)\/[\w.-]+/g,
      message: 'a folder of one machine',
    },
  ];

/** Digest under which a term is listed: of its words in lower case, single spaces between them. */
export function digestOf(term: string): string {
  return createHash('sha256').update(term.toLowerCase()).digest('hex').slice(0, 16);
}

/** Finds unwanted terms and machine-bound addresses in a text. */
export function unwantedWords(source: Source, unwanted: ReadonlySet<string> = unwantedDigests): Breach[] {
  const terms = othersWords.has(source.path) ? [] : unwantedTerms(source, unwanted);
  return [...terms, ...machineBoundPlaces(source)];
}

const longestTerm = 3;
const digests = new Map<string, string>();

function unwantedTerms(source: Source, unwanted: ReadonlySet<string>): Breach[] {
  const words = [...source.text.matchAll(/[\p{L}\p{N}]+(?:[.-][\p{L}\p{N}]+)*/gu)];
  return words.flatMap((word, first) => {
    for (let length = 1; length <= longestTerm; length += 1) {
      const term = words
        .slice(first, first + length)
        .map(([text]) => text.toLowerCase())
        .join(' ');
      if (unwanted.has(rememberedDigest(term)))
        return [
          { path: source.path, line: lineAt(source.text, word.index), rule: 'unwanted-word', message: term },
        ];
    }
    return [];
  });
}

function rememberedDigest(term: string): string {
  const known = digests.get(term);
  if (known !== undefined) return known;
  const digest = digestOf(term);
  digests.set(term, digest);
  return digest;
}

function machineBoundPlaces(source: Source): Breach[] {
  return machineBound.flatMap(({ rule, pattern, message }) =>
    [...source.text.matchAll(pattern)].map((match) => ({
      path: source.path,
      line: lineAt(source.text, match.index),
      rule,
      message: `${message}: ${match[0]}`,
    })),
  );
}

const binaryEndings = /\.(?:png|jpe?g|gif|webp|ico|pdf|woff2?|ttf|otf|wasm|zip|gz|sqlite|inp\.gz)$/i;

if (isMain(import.meta.url)) {
  const sources = readSources((path) => !binaryEndings.test(path));
  process.exitCode = reportBreaches(
    'words',
    sources.length,
    sources.flatMap((source) => unwantedWords(source)),
  );
}
