import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, resolve } from 'node:path';

const packageFolder = (name: string): string =>
  dirname(createRequire(import.meta.url).resolve(`${name}/package.json`));

/** Paths of the fonts that are set: the text's own, and one that has nearly every script and the drawings' letters. */
export const fontFiles = (): readonly string[] => {
  const plex = packageFolder('@expo-google-fonts/ibm-plex-sans');
  const dejavu = resolve(packageFolder('dejavu-fonts-ttf'), 'ttf');
  const weights = ['400Regular', '600SemiBold', '700Bold'].flatMap((weight) =>
    readdirSync(resolve(plex, weight))
      .filter((file) => file.endsWith('.ttf'))
      .map((file) => resolve(plex, weight, file)),
  );
  return [...weights, resolve(dejavu, 'DejaVuSans.ttf'), resolve(dejavu, 'DejaVuSans-Bold.ttf')];
};
