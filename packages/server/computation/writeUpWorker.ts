import { usualDoubts } from '@fettle/workflows/assessJob.ts';
import { openJob } from '@fettle/workflows/openJob.ts';
import { writeUpSource } from '@fettle/workflows/writeUpSource.ts';
import { tellsRanges } from '@fettle/writeup/fileNames.ts';
import { writeUpFile } from '@fettle/writeup/writeUpFile.ts';
import { writeUpFiles } from '@fettle/writeup/writeUpFiles.ts';
import { archiveOf } from './archive.ts';
import type { TaskResults, WriteUpTask } from './tasks.ts';

/** What a thread does that writes a job up: apart from other threads, since it loads the typesetter and its fonts. */
export default function perform({
  document,
  workshop,
  photographs = [],
  file,
  paper = 'a4',
}: WriteUpTask): TaskResults['writeUp'] {
  const opened = openJob({ document });
  if (!opened.ok) return opened;
  const isRanged = file === undefined || tellsRanges(file.name);
  const source = {
    ...writeUpSource(opened.document, opened.model, isRanged ? { doubtsOf: usualDoubts } : {}),
    photographs,
    ...(workshop === undefined ? {} : { workshop }),
  };
  // Packed here, so that the thread that answers everybody does not stand still for it.
  if (file === undefined)
    return {
      ok: true,
      result: [{ path: 'write-up.zip', content: archiveOf(writeUpFiles(source, { paper })) }],
    };
  return { ok: true, result: [{ path: file.name, content: writeUpFile(source, file) }] };
}
