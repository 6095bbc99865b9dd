import { type AssessOptions, assess } from '@fettle/engine/assessment/assess.ts';
import type { Assessment, Finding } from '@fettle/engine/assessment/assessment.ts';
import { usualConstants } from '@fettle/engine/assessment/constants.ts';
import { powerW } from '@fettle/engine/assessment/cost.ts';
import { findingsOf } from '@fettle/engine/assessment/findings/find.ts';
import {
  type Comparison,
  compareTests,
  flowDoubtRatio,
} from '@fettle/engine/assessment/findings/measured.ts';
import { saysAndCure } from '@fettle/engine/assessment/findings/rule.ts';
import { compareDye, type DyeComparison } from '@fettle/engine/assessment/residence/dye.ts';
import { type ResidenceFigures, residenceFigures } from '@fettle/engine/assessment/residence/residence.ts';
import { holdClaims } from '@fettle/engine/claims/holdClaims.ts';
import type { Computed, Holding } from '@fettle/engine/claims/holding.ts';
import { readClaims } from '@fettle/engine/claims/readClaims.ts';
import { type Doubts, doubtOf } from '@fettle/engine/doubt/doubtOf.ts';
import { tankBalance } from '@fettle/engine/lineup/tankBalance.ts';
import { tankRanges } from '@fettle/engine/lineup/tankDoubt.ts';
import type { TankOf } from '@fettle/engine/lineup/tankSaid.ts';
import { bestShutoffTest } from '@fettle/engine/model/benchTests.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { statedShutoffHead } from '@fettle/engine/model/pump.ts';
import { isDrivenByAir } from '@fettle/engine/planning/handling.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';

/** One job with everything that was found out about it. */
export interface AssessedJob {
  readonly model: Model;
  readonly assessment: Assessment;
  readonly findings: readonly Finding[];
  readonly claims: readonly Holding[];
  readonly comparisons: readonly Comparison[];
  /** Dye tests beside what the map says; absent without any. */
  readonly dye?: readonly DyeComparison[];
  /** How long water stays in it with clean media; absent where none flows. */
  readonly residence?: ResidenceFigures;
  /** How sure the figures are; absent where nothing was drawn. */
  readonly doubts?: Doubts;
  /** Where the whole tank settles; absent where it was not asked for. */
  readonly tank?: TankOf;
}

export interface AssessJobOptions extends AssessOptions {
  /** Units in which findings are worded; metric where left out. */
  readonly system?: System;
  /** Draws of everything that is not sure, 32 to 65,536; nothing is drawn where left out. */
  readonly draws?: number;
  /** Also where the whole tank settles, with the nitrate that water changes are to hold. */
  readonly tank?: { readonly nitrateTargetKgNPerM3?: number | undefined };
}

/** Draws for the ranges of one job that is looked at: docs/decisions/0022. */
export const USUAL_DRAWS = 256;

/** How sure the figures of one job that is looked at are. */
export const usualDoubts = (model: Model): Doubts => doubtOf(model, { draws: USUAL_DRAWS });

/** Draws for the ranges of the tank: fewer, for each marches the filter's dirt anew. */
const TANK_DRAWS = 48;

const tankOf = (model: Model, { tank = {}, draws }: AssessJobOptions): TankOf => {
  const { nitrateTargetKgNPerM3: target } = tank;
  const asked = target === undefined ? {} : { nitrateTargetKgNPerM3: target };
  return {
    model,
    balance: tankBalance(model, asked),
    recoveryS: usualConstants.recoveryS,
    ...(draws === undefined ? {} : { ranges: tankRanges(model, { ...asked, draws: TANK_DRAWS }) }),
  };
};

/** The shut-off head that a claim may be held against: measured, or stated; an assumed one convicts nobody. */
const shutoffOf = (model: Model): Pick<Computed, 'shutoffHeadM' | 'shutoffHeadMeasured'> => {
  const measured = bestShutoffTest(model)?.headM;
  if (measured !== undefined) return { shutoffHeadM: measured, shutoffHeadMeasured: true };
  const assumed = model.givens.some(
    ({ path, assumedBecause }) => path === 'filter.pump.shutoffHead' && assumedBecause !== undefined,
  );
  const stated = statedShutoffHead(model.filter.pump);
  return assumed || stated === undefined ? {} : { shutoffHeadM: stated };
};

/** Holds the maker's claims against themselves and against what was computed or measured. */
export const holdClaimsOf = (model: Model, assessment: Assessment): readonly Holding[] => {
  const chambers = assessment.layout.chambers.reduce(
    (sum, chamber) => sum + chamber.areaM2 * chamber.depthM,
    0,
  );
  return holdClaims({
    claims: readClaims(model.claims),
    computed: {
      flowM3PerS: assessment.dutyPoint.flowM3PerS,
      flowDoubtRatio: flowDoubtRatio(model),
      // What a lift tube lifts by itself is computed, and is no rating of a pump.
      ...(isDrivenByAir(model) ? {} : { ratedFlowM3PerS: model.filter.pump.ratedFlowM3PerS }),
      ...shutoffOf(model),
      powerW: powerW(model),
      powerMeasured: model.tests.some((test) => test.kind === 'power'),
      mediaVolumeM3: chambers,
      servedM3: assessment.carries.day.servedM3,
    },
  });
};

/** A claim that contradicts itself is a fault of the papers, not of the filter: a note. */
const claimFindings = (claims: readonly Holding[]): Finding[] =>
  claims
    .filter((claim) => claim.verdict === 'contradicts-itself')
    .map((claim) => {
      const sayings = saysAndCure('claim-contradicts-itself', { claim: claim.says, detail: claim.said });
      const wording = { language: engineEnglish, units: 'both' } as const;
      return {
        id: 'claim-contradicts-itself',
        severity: 'note',
        place: 'claims',
        said: sayings.says,
        cureSaid: sayings.cure,
        says: word(sayings.says, wording),
        cure: word(sayings.cure, wording),
      };
    });

/** Assesses a job: figures, findings, claims, bench tests beside what was computed. */
export const assessJob = (model: Model, options: AssessJobOptions = {}): AssessedJob => {
  const assessment = assess(model, options);
  const claims = holdClaimsOf(model, assessment);
  const findings = [...findingsOf(model, assessment, options), ...claimFindings(claims)];
  const residence = residenceFigures(model);
  const { draws, day } = options;
  return {
    model,
    assessment,
    findings,
    claims,
    comparisons: compareTests(model, assessment),
    ...(residence === undefined ? {} : { residence }),
    ...(model.dyeTests === undefined ? {} : { dye: compareDye(model) }),
    ...(options.tank === undefined ? {} : { tank: tankOf(model, options) }),
    ...(draws === undefined
      ? {}
      : { doubts: doubtOf(model, { draws, ...(day === undefined ? {} : { day }) }) }),
  };
};
