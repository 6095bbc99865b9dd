import type { Effect, Finding } from '@fettle/engine/assessment/assessment.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { feedChange, flowChange, intervalChange } from './amounts.ts';
import { labelled } from './layout.ts';

/** Widest severity and a space. */
const LABEL = 9;

/** The effect of a cure, all three figures, each before and after in one unit. */
const effectText = ({ flow, feed, cleaningInterval }: Effect, system: System): string => {
  const interval = {
    before: cleaningInterval.beforeS,
    after: cleaningInterval.afterS,
    beforeBeyond: cleaningInterval.beforeBeyond,
    afterBeyond: cleaningInterval.afterBeyond,
  };
  return [
    `feed carried ${feedChange({ before: feed.beforeKgPerS, after: feed.afterKgPerS })}`,
    `flow ${flowChange({ before: flow.beforeM3PerS, after: flow.afterM3PerS }, system)}`,
    `cleaning after ${intervalChange(interval)}`,
  ].join(', ');
};

/** The cure with what it alone would do. */
const cureText = ({ cure, effect }: Finding, system: System): string =>
  effect ? ` Cure: ${cure} Effect of this alone: ${effectText(effect, system)}.` : ` ${cure}`;

/** Findings, worst first, each with its evidence, its cure and what the cure alone would do. */
export const printFindings = (job: AssessedJob, system: System): string =>
  job.findings
    .map((finding) => {
      const cure = finding.severity === 'strength' ? '' : cureText(finding, system);
      return labelled(finding.severity, `${finding.says}${cure}`, LABEL);
    })
    .join('\n');
