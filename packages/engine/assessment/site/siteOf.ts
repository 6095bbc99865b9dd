import type { Warning } from '../assessment.ts';
import type { Compiled } from '../compiled.ts';
import { jetsOf } from './jets.ts';
import { boxLevelsOf } from './levels.ts';
import { pressuresOf } from './pressures.ts';
import type { Site } from './site.ts';
import { siteWarnings } from './siteWarnings.ts';
import { spillsOf } from './spills.ts';

/** What hoses, heights and outlets mean for the room and the tank, with its warnings, at the last solve. */
export const siteOf = (
  compiled: Compiled,
): { readonly site: Site; readonly siteWarnings: readonly Warning[] } => {
  const spills = spillsOf(compiled);
  const box = boxLevelsOf(compiled, spills);
  const site = {
    pressures: pressuresOf(compiled),
    spills,
    jets: jetsOf(compiled),
    ...(box === undefined ? {} : { box }),
  };
  return { site, siteWarnings: siteWarnings(compiled, site) };
};
