import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { type Zippable, zipSync } from 'fflate';
import type { Chance } from '../chance.ts';
import { anyBytes, hostileNames, mutatedBytes } from './hostile.ts';

/** The files of a folder, by their paths within it. */
function filesIn(folder: string): Zippable {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return Object.fromEntries(
    files.map(({ name, parentPath }) => {
      const path = join(parentPath, name);
      return [relative(folder, path).split(sep).join('/'), new Uint8Array(readFileSync(path))];
    }),
  );
}

/** Names that lead out of a folder, or make a folder of what is a file. */
const crookedNames = (files: Zippable): readonly string[] => [
  ...hostileNames.filter((name) => name.length < 60_000),
  '../outside.yaml',
  '/tmp/outside.yaml',
  'jobs/../../outside.yaml',
  ...Object.keys(files).map((name) => `${name}/inside`),
  ...Object.keys(files).map((name) => name.toUpperCase()),
];

/** Overwrites one number of the archive's own lists: sizes, places, lengths of names, ways of packing. */
function withForgedNumber(archive: Uint8Array, chance: Chance): Uint8Array {
  const bytes = Buffer.from(archive);
  const marks = [0x06054b50, 0x02014b50, 0x04034b50];
  const heads: number[] = [];
  for (let at = 0; at + 4 <= bytes.length; at++) if (marks.includes(bytes.readUInt32LE(at))) heads.push(at);
  const at = chance.among(heads) + chance.between(4, 46);
  const forged = chance.among([0, 1, 0xff, 0xffff, 0x7fffffff, 0xffffffff, chance.below(2 ** 31)]);
  if (at + 4 <= bytes.length) bytes.writeUInt32LE(forged, at);
  return bytes;
}

/** The archive of an exported folder, damaged or forged, and what was done to it. */
export function damagedArchive(
  folder: string,
  chance: Chance,
): { readonly what: string; readonly bytes: Uint8Array } {
  const files = filesIn(folder);
  const whole = zipSync(files);
  switch (chance.below(5)) {
    case 0: {
      const name = chance.among(crookedNames(files));
      return {
        what: `with a file ${JSON.stringify(name)}`,
        bytes: zipSync({ ...files, [name]: anyBytes(200, chance) }),
      };
    }
    case 1:
      return { what: 'cut', bytes: whole.subarray(0, chance.below(whole.length)) };
    case 2:
      return {
        what: 'that unpacks to much',
        bytes: zipSync({ ...files, 'jobs/much.yaml': new Uint8Array(3e8) }),
      };
    case 3:
      return { what: 'with a forged number', bytes: withForgedNumber(whole, chance) };
    default:
      return { what: 'changed', bytes: mutatedBytes(Buffer.from(whole), chance) };
  }
}
