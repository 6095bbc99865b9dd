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
