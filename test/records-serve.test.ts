import { spawn } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { ownCertificate } from '@fettle/server/listen/certificate.ts';
import { afterEach, describe, expect, test } from 'vitest';
import {
  commandLineOf,
  type ServerProcess,
  startServerProcess,
  stopServerProcess,
} from '../scripts/records/serverProcess.ts';
import { demo, fettleProcess } from './support/program.ts';
import { newWorkshop, unwrapped, workshopWithDrum } from './support/workshop.ts';

const running: ServerProcess[] = [];

afterEach(async () => {
  for (const server of running.splice(0)) await stopServerProcess(server);
});

async function served(data: string, ...more: readonly string[]): Promise<ServerProcess> {
  const server = await startServerProcess(data, more);
  running.push(server);
  return server;
}

const password = 'long reef walks at dawn';

const withAccount = (data: string, name: string, role = 'technician') =>
  fettleProcess(['accounts', 'add', name, '--role', role, '--password-from', '-', '--data', data], {
    input: `${password}\n`,
  });

describe('fettle serve', () => {
  test.each(['SIGINT', 'SIGTERM'] as const)(
    'prints its address when it is ready, and %s ends it with 0',
    async (signal) => {
      const { data } = await workshopWithDrum();
      const server = await served(data);
      expect(server.written()).toMatch(/^Fettle is ready: http:\/\/127\.0\.0\.1:\d+\n/);
      const answer = await fetch(`${server.address}/api/jobs/1`);
      expect([answer.status, answer.headers.get('etag')]).toEqual([200, '"1"']);
      server.process.kill(signal);
      expect(await server.ended).toBe(0);
      running.pop();
      expect(unwrapped(server.written())).toContain(`The records are in ${data}. Ctrl-C stops it.`);
    },
  );

  test('--json prints one line with the same', async () => {
    const { data } = newWorkshop();
    const server = await served(data, '--json');
    expect(JSON.parse(server.written().trim())).toMatchObject({ address: server.address, folder: data });
  });

  test('commands and server work on the same records at the same time', async () => {
    const { data, told, json } = await workshopWithDrum();
    const { address } = await served(data);
    await told('import', demo('corner-box'));
    expect(await (await fetch(`${address}/api/jobs`)).json()).toEqual(await json('jobs'));
    const { code, err } = fettleProcess(['restore', '--data', data]);
    expect([code, unwrapped(err)]).toEqual([2, expect.stringMatching(/no backup|in use/)]);
  });

  test('shared, it is open to those who sign in alone', async () => {
    const { data } = await workshopWithDrum();
    expect(withAccount(data, 'anna').code).toBe(0);
    const { address } = await served(data, '--share');
    expect((await fetch(`${address}/api/jobs`)).status).toBe(401);
  });

  test('a certificate and a key that do not belong together are told', async () => {
    const { path, run } = newWorkshop();
    const own = (name: string) =>
      ownCertificate({ folder: path(name), names: ['bench.example'], now: new Date() });
    const [one, other] = [await own('one'), await own('other')];
    writeFileSync(path('cert.pem'), one.cert);
    writeFileSync(path('key.pem'), other.key);
    const { code, err } = await run('serve', '--share', '--cert', path('cert.pem'), '--key', path('key.pem'));
    expect([code, unwrapped(err)]).toEqual([2, expect.stringContaining('is not the key of the certificate')]);
  });
});

describe('fettle accounts', () => {
  test('makes, lists, changes and closes accounts, and shows no password', async () => {
    const { data, told, json } = newWorkshop();
    expect(withAccount(data, 'anna').out).toContain('anna can sign in now, as technician.');
    expect(withAccount(data, 'ben', 'helper').code).toBe(0);
    expect(await told('accounts', 'role', 'ben', '--role', 'reader')).toContain('ben is reader now');
    expect(await told('accounts', 'close', 'ben')).toContain('cannot sign in any more');
    const { accounts } = await json('accounts');
    expect(accounts.map(({ name, role }: Record<string, string>) => [name, role])).toEqual([
      ['anna', 'technician'],
      ['ben', 'reader'],
    ]);
    expect(JSON.stringify(accounts)).not.toMatch(/argon|hash/i);
    expect(await told('accounts')).toMatch(/ben reader .* closed/);
  });

  test('refuses a weak password, a name that is taken, and closing the last technician', async () => {
    const { data, run } = newWorkshop();
    const weak = fettleProcess(
      ['accounts', 'add', 'anna', '--role', 'reader', '--password-from', '-', '--data', data],
      { input: 'short\n' },
    );
    expect([weak.code, unwrapped(weak.err)]).toEqual([2, expect.stringContaining('12 to 200')]);
    expect(withAccount(data, 'anna').code).toBe(0);
    const again = withAccount(data, 'anna');
    expect([again.code, again.err]).toEqual([2, expect.stringContaining('already')]);
    expect((await run('accounts', 'close', 'anna')).code).toBe(2);
    expect((await run('accounts', 'role', 'anna', '--role', 'reader')).code).toBe(2);
  });

  test('without a terminal it says how to hand the password over', async () => {
    const { data } = newWorkshop();
    const { code, err } = fettleProcess(['accounts', 'add', 'anna', '--role', 'reader', '--data', data], {
      input: '',
    });
    expect([code, unwrapped(err)]).toEqual([2, expect.stringContaining('--password-from -')]);
  });

  test.runIf(process.platform === 'linux')(
    'on a terminal it asks twice and shows nothing of what is typed',
    async () => {
      const { data, json } = newWorkshop();
      const words = [
        process.execPath,
        ...commandLineOf(['accounts', 'add', 'anna', '--role', 'technician', '--data', data]),
      ];
      const terminal = spawn('script', ['-qec', words.map((word) => `'${word}'`).join(' '), '/dev/null'], {
        stdio: ['pipe', 'pipe', 'inherit'],
      });
      let seen = '';
      terminal.stdout.on('data', (piece) => {
        seen += String(piece);
        const asked = (seen.match(/: /g) ?? []).length;
        if (asked > typed) {
          typed = asked;
          terminal.stdin.write(`${password}\r`);
        }
      });
      let typed = 0;
      await new Promise((resolve) => terminal.once('exit', resolve));
      expect(seen).toMatch(/Password .*: \s+The same once more: \s+anna can sign in now/);
      expect(seen).not.toContain('reef');
      expect((await json('accounts')).accounts).toHaveLength(1);
    },
  );
});
