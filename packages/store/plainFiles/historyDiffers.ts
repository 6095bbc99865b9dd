import type { Attachment } from '../contract/attachments.ts';
import type { StoredRevision } from '../contract/jobs.ts';
import type { Reading } from '../contract/readings.ts';
import type { ExportedJob } from './exportedJob.ts';

/** What of a job may differ between an export and the records. */
type JobPart = 'revisions' | 'readings' | 'photographs';

/** One part of a job that differs. */
export interface PartDiffers {
  readonly part: JobPart;
  /** How many the export has alone, the records have alone, and how many say something else. */
  readonly inExport: number;
  readonly here: number;
  readonly changed: number;
}

/** A record by its id, and all of it as one text, with its fields in one order. */
type ById = ReadonlyMap<string | number, string>;

const ofRevision = ({ at, by, kind, wentBackTo, changes, document }: StoredRevision): unknown => [
  [at, by, kind, wentBackTo, changes],
  document,
];

const ofReading = ({ kind, day, value, note, enteredAt, enteredBy }: Reading): unknown => [
  [kind, day, value, note],
  [enteredAt, enteredBy],
];

const ofAttachment = ({ hash, name, caption, takenAt, place, addedAt, addedBy }: Attachment): unknown => [
  [hash, name, caption, takenAt, addedAt, addedBy],
  [place?.latitudeDeg, place?.longitudeDeg],
];

function partsOf({ revisions, readings, attachments }: ExportedJob): Readonly<Record<JobPart, ById>> {
  return {
    revisions: new Map(revisions.map((each) => [each.revision, JSON.stringify(ofRevision(each))])),
    readings: new Map(readings.map((each) => [each.id, JSON.stringify(ofReading(each))])),
    photographs: new Map(attachments.map((each) => [each.id, JSON.stringify(ofAttachment(each))])),
  };
}

/** How a job of an export differs from the same number in the records; empty where it does not. */
export function historyDiffers(exported: ExportedJob, stored: ExportedJob): readonly PartDiffers[] {
  const [theirs, ours] = [partsOf(exported), partsOf(stored)];
  return (['revisions', 'readings', 'photographs'] as const)
    .map((part) => differing(part, theirs[part], ours[part]))
    .filter(({ inExport, here, changed }) => inExport + here + changed > 0);
}

function differing(part: JobPart, theirs: ById, ours: ById): PartDiffers {
  return {
    part,
    inExport: [...theirs.keys()].filter((id) => !ours.has(id)).length,
    here: [...ours.keys()].filter((id) => !theirs.has(id)).length,
    changed: [...theirs].filter(([id, text]) => ours.has(id) && ours.get(id) !== text).length,
  };
}

/** The difference of one part in words, such as `readings (2 here alone)`. */
export function partText({ part, inExport, here, changed }: PartDiffers): string {
  const words = [
    [inExport, 'in the export alone'],
    [here, 'here alone'],
    [changed, 'with other content'],
  ] as const;
  const told = words.flatMap(([count, says]) => (count > 0 ? [`${count} ${says}`] : []));
  return `${part} (${told.join(', ')})`;
}
