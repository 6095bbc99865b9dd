import { describe, expect, it } from 'vitest';
import { lockBreaches, looseDependencies } from './dependencies.ts';

const sound = { version: '1.0.0', integrity: 'sha512-abc', license: 'MIT' };

describe('the lock file', () => {
  it('passes packages with a checksum, from the registry, without scripts, under a fitting licence', () => {
    expect(lockBreaches({ '': {}, 'node_modules/sound': sound, 'node_modules/own': { link: true } })).toEqual(
      [],
    );
  });

  it.each([
    ['no-checksum', { ...sound, integrity: '' }],
    ['address', { ...sound, resolved: 'git+ssh://somewhere/thing.git' }],
    ['install-script', { ...sound, hasInstallScript: true }],
    ['licence', { ...sound, license: 'GPL-3.0' }],
    ['licence', { version: '1.0.0', integrity: 'sha512-abc' }],
  ])('is refused for %s', (rule, locked) => {
    expect(lockBreaches({ 'node_modules/planted': locked }).map((breach) => breach.rule)).toEqual([rule]);
  });

  it('leaves the licence of what only builds and tests alone', () => {
    expect(lockBreaches({ 'node_modules/tool': { ...sound, license: 'MPL-2.0', dev: true } })).toEqual([]);
  });
});

describe('a package file', () => {
  it.each(['^1.0.0', '~1.0.0', '*', 'latest', 'file:../x', 'github:a/b', '1.x'])(
    'may not ask for %s',
    (wanted) => {
      const text = JSON.stringify({ dependencies: { planted: wanted, pinned: '1.2.3' } });
      expect(looseDependencies('package.json', text).map((breach) => breach.message)).toEqual([
        `planted is ${wanted}`,
      ]);
    },
  );
});
