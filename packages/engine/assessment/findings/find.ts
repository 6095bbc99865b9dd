import type { Model } from '../../model/model.ts';
import type { System } from '../../quantities/displayUnits.ts';
import { engineEnglish } from '../../wording/english/english.ts';
import { said } from '../../wording/said.ts';
import { type Wording, word } from '../../wording/word.ts';
import type { AssessOptions } from '../assess.ts';
import { assess } from '../assess.ts';
import type { Assessment, Finding } from '../assessment.ts';
import { effectBetween } from '../effect.ts';
import { liftTubeShort, matFaceVelocity, spaceBehindNarrow } from './air.ts';
import { bypassPastBed, littleBypass, openingPastMedia, partitionLeaks } from './bypass.ts';
import { dyeDeadRoom, dyeEarly } from './dye.ts';
import {
  barbsTooNarrow,
  flowForTank,
  hoseKinked,
  hoseTooLong,
  openingNarrow,
  outletLift,
  pumpCannotLift,
} from './hardware.ts';
import { cutTooSmall, packedTight, pastBag, slotPastMedia } from './laying.ts';
import { measuredBelowDirty, measuredDiffers } from './measured.ts';
import {
  bedTooShallow,
  deadChamber,
  dirtInBiology,
  fullEarly,
  mediaUnsuited,
  outOfPlace,
  replacedOften,
  stageMissing,
} from './media.ts';
import { bedNotCarried, bedWashedUp, carriersOverfull, screenTooWide } from './movedMedia.ts';
import { dripPlateTight, runsDownWalls } from './openBoxes.ts';
import {
  biologicalBeforeMechanical,
  chemicalBeforeBiological,
  finerBeforeCoarser,
  orderFollowsTheWater,
} from './order.ts';
import type { FindingContext, FindingRule, Sighting } from './rule.ts';
import {
  alkalinityRunsDown,
  clogsSoon,
  fedTooMuch,
  overflowOpen,
  oxygenStarved,
  waterTooAcid,
} from './service.ts';
import { jetSweepsTank, spillsOver } from './site.ts';
import { severityOf, weighing } from './weighing.ts';

/** Every kind of finding. */
export const findingRules: readonly FindingRule[] = [
  pumpCannotLift,
  biologicalBeforeMechanical,
  finerBeforeCoarser,
  chemicalBeforeBiological,
  bypassPastBed,
  cutTooSmall,
  packedTight,
  pastBag,
  slotPastMedia,
  partitionLeaks,
  openingPastMedia,
  runsDownWalls,
  dripPlateTight,
  openingNarrow,
  outOfPlace,
  bedTooShallow,
  deadChamber,
  stageMissing,
  replacedOften,
  mediaUnsuited,
  fullEarly,
  dirtInBiology,
  hoseTooLong,
  hoseKinked,
  barbsTooNarrow,
  outletLift,
  flowForTank,
  fedTooMuch,
  oxygenStarved,
  waterTooAcid,
  clogsSoon,
  overflowOpen,
  spillsOver,
  jetSweepsTank,
  alkalinityRunsDown,
  measuredDiffers,
  measuredBelowDirty,
  dyeEarly,
  dyeDeadRoom,
  orderFollowsTheWater,
  liftTubeShort,
  spaceBehindNarrow,
  matFaceVelocity,
  bedNotCarried,
  bedWashedUp,
  carriersOverfull,
  screenTooWide,
  littleBypass,
];

/** How findings are to be written. */
export interface FindingOptions extends AssessOptions {
  readonly system?: System;
}

const RANK: Record<Finding['severity'], number> = { grave: 0, marked: 1, slight: 2, note: 3, strength: 4 };

const toFinding = (
  id: string,
  sighting: Sighting,
  asItIs: { readonly assessment: Assessment; readonly options: FindingOptions },
): Finding => {
  const { assessment, options } = asItIs;
  const { place, says, cure } = sighting;
  const effect = sighting.cured ? effectBetween(assessment, assess(sighting.cured, options)) : undefined;
  const severity = sighting.severity ?? (effect ? severityOf(effect) : 'note');
  const weighed = effect === undefined ? [] : weighing(effect);
  const cureSaid =
    weighed.length === 0 ? cure : said('weighed.cure', { cure, weighed: { all: weighed, by: ' ' } });
  const wording: Wording = { language: engineEnglish, units: options.system ?? 'metric' };
  return {
    id,
    severity,
    place,
    said: says,
    cureSaid,
    says: word(says, wording),
    cure: word(cureSaid, wording),
    ...(effect === undefined ? {} : { effect }),
  };
};

/** All findings about an assessed job, worst first. */
export const findingsOf = (model: Model, assessment: Assessment, options: FindingOptions = {}): Finding[] => {
  const context: FindingContext = { model, assessment };
  return findingRules
    .flatMap((rule) =>
      rule.look(context).map((sighting) => toFinding(rule.id, sighting, { assessment, options })),
    )
    .sort((a, b) => RANK[a.severity] - RANK[b.severity]);
};
