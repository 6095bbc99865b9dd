import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/**
 * Runs a script in a process of its own.
 *
 * @returns what it printed, read as JSON
 */
export function runScript(script: URL, args: readonly string[]): Promise<unknown> {
  const child = spawn(process.execPath, ['--import', 'tsx', fileURLToPath(script), ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  let complaint = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    said += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    complaint += text;
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code) => {
      if (code === 0) resolve(JSON.parse(said));
      else reject(new Error(`${script.pathname} ended with ${code}: ${complaint}`));
    });
  });
}
