import { readFileSync } from 'node:fs';

/** Memory that a process holds, in MiB; as Linux tells it, 0 where the system does not. */
export function residentMiB(id: number | undefined): number {
  try {
    const status = readFileSync(`/proc/${id}/status`, 'utf8');
    return Math.round(Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) / 1024);
  } catch {
    return 0;
  }
}

/** How long the thread that answers requests has been at work since the process began, s; of Linux only. */
export function busySeconds(id: number | undefined): number {
  try {
    const [, fields = ''] = readFileSync(`/proc/${id}/task/${id}/stat`, 'utf8').split(') ');
    const [user, system] = fields.split(' ').slice(11, 13).map(Number);
    // A tick is 10 ms wherever Linux is asked by this file.
    return ((user ?? 0) + (system ?? 0)) / 100;
  } catch {
    return 0;
  }
}
