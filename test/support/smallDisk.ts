import { spawnSync } from 'node:child_process';
import { appendFileSync, mkdtempSync, rmSync, statfsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';

/** A disk of its own, small enough to fill. */
export interface SmallDisk {
  readonly path: string;
  /** Fills it up, or further up, but for so many KiB. */
  readonly fill: (leaveKiB: number) => void;
  /** Takes the filling off again. */
  readonly free: () => void;
  readonly makeReadOnly: () => void;
  readonly makeWritable: () => void;
}

const mounted: string[] = [];

const mount = (...words: readonly string[]): boolean => spawnSync('mount', words).status === 0;

/** The system refuses as long as a file on it is open for writing. */
function remount(how: 'ro' | 'rw', path: string): void {
  if (!mount('-o', `remount,${how}`, path)) throw new Error(`${path} cannot be mounted anew as ${how}`);
}

/** A disk in memory of so many MiB, gone after the test; undefined where this user may not make one. */
export function smallDisk(sizeMiB: number): SmallDisk | undefined {
  const path = mkdtempSync(join(tmpdir(), 'fettle-disk-'));
  if (process.platform !== 'linux' || !mount('-t', 'tmpfs', '-o', `size=${sizeMiB}m`, 'tmpfs', path)) {
    rmSync(path, { recursive: true });
    return undefined;
  }
  mounted.push(path);
  const filling = join(path, 'filling');
  return {
    path,
    fill: (leaveKiB) => {
      const { bavail, bsize } = statfsSync(path);
      appendFileSync(filling, Buffer.alloc(Math.max(0, bavail * bsize - leaveKiB * 1024)));
    },
    free: () => rmSync(filling),
    makeReadOnly: () => remount('ro', path),
    makeWritable: () => remount('rw', path),
  };
}

/** Whether small disks can be made here; tests that need one are passed over elsewhere. */
export const hasSmallDisks = ((): boolean => {
  const disk = smallDisk(1);
  unmountAll();
  return disk !== undefined;
})();

function unmountAll(): void {
  for (const path of mounted.splice(0)) {
    spawnSync('umount', ['-l', path]);
    rmSync(path, { recursive: true, force: true });
  }
}

afterEach(unmountAll);
