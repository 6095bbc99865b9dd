import type { Medium } from '../model/medium.ts';
import { chemicals } from './chemicals.ts';
import { fibres } from './fibres.ts';
import { foams } from './foams.ts';
import { grains } from './grains.ts';
import { plastics } from './plastics.ts';
import { rings } from './rings.ts';

/** The media shelf by id: generic media, each figure with its doubt and its source. */
export const media: Readonly<Record<string, Medium>> = {
  ...foams,
  ...fibres,
  ...rings,
  ...grains,
  ...plastics,
  ...chemicals,
};
