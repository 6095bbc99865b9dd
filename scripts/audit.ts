import { spawnSync } from 'node:child_process';
import { projectRoot } from './sources.ts';

/** Severities of advisories that fail the audit. */
const failing = ['moderate', 'high', 'critical'] as const;

interface Report {
  readonly metadata?: { readonly vulnerabilities?: Readonly<Record<string, number>> };
  readonly vulnerabilities?: Readonly<Record<string, { readonly severity: string; readonly range: string }>>;
  readonly message?: string;
}

/**
 * Asks the registry for advisories about the packages that are handed on. A registry that keeps no list of
 * advisories fails nothing, but it is said: nobody shall take its silence for a clean bill.
 */
function audit(): number {
  const onWindows = process.platform === 'win32';
  const asked = spawnSync(onWindows ? 'npm.cmd' : 'npm', ['audit', '--omit=dev', '--json'], {
    cwd: projectRoot,
    encoding: 'utf8',
    shell: onWindows,
  });
  const report = readReport(asked.stdout);
  const counts = report?.metadata?.vulnerabilities;
  if (counts === undefined) {
    console.log(`audit: NOT DONE, the registry gives no advisories (${report?.message ?? 'no answer'})`);
    return 0;
  }
  for (const [name, { severity, range }] of Object.entries(report?.vulnerabilities ?? {}))
    console.error(`${name} ${range}: ${severity}`);
  const grave = failing.reduce((sum, severity) => sum + (counts[severity] ?? 0), 0);
  console.log(`audit: ${grave} advisories of moderate severity or worse, ${counts.total ?? 0} in all`);
  return grave > 0 ? 1 : 0;
}

function readReport(text: string): Report | undefined {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

process.exitCode = audit();
