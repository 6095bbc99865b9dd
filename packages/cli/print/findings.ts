import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printDay } from '@fettle/engine/quantities/printShort.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { type ChangeText, effectTexts } from '@fettle/workflows/report/effects.ts';
import { labelled } from './layout.ts';

/** Widest severity and a space. */
const LABEL = 9;

/** A change as `0.155 -> 0.436 g/d (+181 %)`. */
export const changeInLine = ({ before, after, unit, percent }: ChangeText): string =>
  `${before} -> ${after}${unit === '' ? '' : ` ${unit}`}${percent === '' ? '' : ` (${percent})`}`;

/** The cure with what it alone would do. */
const cureText = ({ cure, effect }: Finding, system: System): string => {
  if (effect === undefined) return ` ${cure}`;
  const changes = effectTexts(effect, system).map((text) => `${text.what} ${changeInLine(text)}`);
  return ` Cure: ${cure} Effect of this alone on ${printDay(effect.dayS)} after cleaning: ${changes.join(', ')}.`;
};

/** Findings, worst first, each with its evidence, its cure and what the cure alone would do. */
export const printFindings = (job: AssessedJob, system: System): string =>
  job.findings
    .map((finding) => {
      const cure = finding.severity === 'strength' ? '' : cureText(finding, system);
      return labelled(finding.severity, `${finding.says}${cure}`, LABEL);
    })
    .join('\n');
