import type { MessagePort } from 'node:worker_threads';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import type { JobReading } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Outcome } from '@fettle/workflows/assessDocument.ts';
import type { NamedFile } from '@fettle/writeup/fileNames.ts';
import type { PublishedPhotograph } from '@fettle/writeup/source.ts';

/** Light or dark ink, or one colour for print. */
export type DrawingTheme = 'light' | 'dark' | 'print';

export interface ReadTask {
  readonly task: 'read';
  readonly bytes: Uint8Array;
}

/** A document to be written as YAML. */
export interface WriteTask {
  readonly task: 'write';
  readonly document: JobDocument;
}

export interface AssessTask {
  readonly task: 'assess';
  readonly document: unknown;
  readonly day?: number | undefined;
  /** Units of the words; metric where left out. */
  readonly units?: System | undefined;
  /** Which packing; as found where left out. */
  readonly state?: PackedState | undefined;
}

export interface ForecastTask {
  readonly task: 'forecast';
  readonly document: unknown;
  /** How far ahead, days; 180 where left out. */
  readonly days?: number | undefined;
  /** The pattern of cleaning as people write it; never where left out. */
  readonly clean?: string | undefined;
  /** Which packing; as found where left out. */
  readonly state?: PackedState | undefined;
}

export interface DrawTask {
  readonly task: 'draw';
  readonly document: unknown;
  /** Which packing; as found where left out. */
  readonly state?: PackedState | undefined;
  readonly theme: DrawingTheme;
  readonly units: System;
}

/** One document of a job's write-up in one form, or all of its files in an archive. */
export interface WriteUpTask {
  readonly task: 'writeUp';
  readonly document: unknown;
  /** Name of the workshop; it signs where the job names nobody. */
  readonly workshop?: string;
  /** Those that may be published; none where left out. */
  readonly photographs?: readonly PublishedPhotograph[];
  /** Which file; all in one archive where left out. */
  readonly file?: NamedFile;
  /** Paper of what comes on one paper only, where all are made. */
  readonly paper?: NamedFile['paper'];
}

/** A file that was made: its path under the folder of the write-up, and what is in it. */
export interface MadeFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Long work, of a kind that `work/kinds/kinds.ts` lists. */
export interface LongTask {
  readonly task: 'work';
  readonly kind: string;
  readonly document: unknown;
  readonly request: unknown;
  /** What earlier runs of it gave as `checkpoint`, oldest first. */
  readonly checkpoints: readonly unknown[];
  /** How many requests are being answered, as `answering.ts` counts them. */
  readonly answering: SharedArrayBuffer;
  /** By which it tells how far it is: `WorkNews`. */
  readonly port: MessagePort;
}

/** What the usual threads do; a write-up has threads of its own. */
export type UsualTask = ReadTask | WriteTask | AssessTask | ForecastTask | DrawTask | LongTask;

export type Task = UsualTask | WriteUpTask;

/** What long work tells on its way. */
export type WorkNews =
  | { readonly progress: { readonly assessed: number; readonly planned: number } }
  | { readonly checkpoint: unknown };

/** A job as read, without the model, which does not leave the thread. */
export type PlainReading =
  | Pick<Extract<JobReading, { ok: true }>, 'ok' | 'document' | 'notes'>
  | Extract<JobReading, { ok: false }>;

/** What each task gives back. */
export interface TaskResults {
  readonly read: PlainReading;
  /** YAML. */
  readonly write: string;
  /** The text of the result, two spaces deep, as the command prints it. */
  readonly assess: Outcome<string>;
  /** The same of a forecast. */
  readonly forecast: Outcome<string>;
  /** SVG. */
  readonly draw: Outcome<string>;
  readonly writeUp: Outcome<readonly MadeFile[]>;
  readonly work: Outcome<unknown>;
}
