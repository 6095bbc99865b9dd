import { describe, expect, test } from 'vitest';
import { canInstall, findBrowser, type Machine } from './find-browser.ts';

function machine(given: Partial<Omit<Machine, 'isProgram'>> & { programs?: readonly string[] }): Machine {
  const { programs = [], ...rest } = given;
  return {
    platform: 'linux',
    environment: {},
    homeFolder: '/Users/bench',
    isProgram: (path) => programs.includes(path),
    ...rest,
  };
}

const everywhere = [
  '/usr/bin/chromium',
  '/opt/own/chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

describe('a browser is found', () => {
  test.each<[string, Machine, string]>([
    [
      'that CHROMIUM names, before any other',
      machine({ environment: { CHROMIUM: '/opt/own/chrome', PATH: '/usr/bin' }, programs: everywhere }),
      '/opt/own/chrome',
    ],
    [
      'that CHROME_PATH names',
      machine({ environment: { CHROMIUM: '', CHROME_PATH: '/opt/own/chrome' }, programs: everywhere }),
      '/opt/own/chrome',
    ],
    [
      'in the search path',
      machine({ environment: { PATH: '/usr/bin:/opt/bin' }, programs: ['/opt/bin/google-chrome'] }),
      '/opt/bin/google-chrome',
    ],
    ['in Debian without a search path', machine({ programs: ['/usr/bin/chromium'] }), '/usr/bin/chromium'],
    [
      "among a Mac's applications",
      machine({
        platform: 'darwin',
        programs: ['/Applications/Google Chrome.app/Contents/MacOS/Google Chrome'],
      }),
      '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    ],
    [
      "among a Mac user's own applications",
      machine({
        platform: 'darwin',
        programs: ['/Users/bench/Applications/Chromium.app/Contents/MacOS/Chromium'],
      }),
      '/Users/bench/Applications/Chromium.app/Contents/MacOS/Chromium',
    ],
    [
      'among the programs of Windows',
      machine({
        platform: 'win32',
        environment: { PROGRAMFILES: 'C:\\Program Files' },
        programs: ['C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe'],
      }),
      'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    ],
  ])('%s', (_name, given, path) => {
    expect(findBrowser(given)).toEqual({ found: true, path });
  });
});

describe('no browser', () => {
  test('a named one that is not there is not replaced by another', () => {
    const given = machine({ environment: { CHROMIUM: '/nowhere', PATH: '/usr/bin' }, programs: everywhere });
    expect(findBrowser(given)).toEqual({
      found: false,
      advice: 'CHROMIUM names /nowhere, which is not a program.',
      named: true,
    });
  });

  test.each<[NodeJS.Platform, RegExp]>([
    ['linux', /apt-get install chromium fonts-dejavu-core/],
    ['darwin', /into Applications/],
    ['win32', /Edge/],
  ])('on %s one sentence says what to install', (platform, words) => {
    const search = findBrowser(machine({ platform }));
    expect(search).toMatchObject({ found: false, named: false, advice: expect.stringMatching(words) });
  });
});

test.each([
  ['Debian as root', 'NAME="Debian GNU/Linux"\nID=debian\n', 0, true],
  ['a Debian-like system as root', 'ID=linuxmint\nID_LIKE="ubuntu debian"\n', 0, true],
  ['Debian as somebody', 'ID=debian\n', 1000, false],
  ['another system as root', 'ID=fedora\nNAME="not debian"\n', 0, false],
  ['a system without user numbers', '', undefined, false],
])('a browser is installed unasked only on Debian as root: %s', (_name, osRelease, userId, allowed) => {
  expect(canInstall({ osRelease, userId })).toBe(allowed);
});
