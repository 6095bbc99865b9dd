import { describe, it } from 'vitest';
import { openApart } from './apart/openApart.ts';
import { openStore } from './open.ts';
import { describeStoreContract } from './testing/contractCases.ts';

describeStoreContract('records by libsql', (options) => openStore({ ...options, driver: 'libsql' }));

if (process.getBuiltinModule?.('node:sqlite') === undefined) {
  describe('records by node:sqlite', () => {
    it.skip(`Node ${process.versions.node} has no database of its own`, () => undefined);
  });
} else {
  describeStoreContract('records by node:sqlite', (options) =>
    openStore({ ...options, driver: 'node:sqlite' }),
  );
}

describeStoreContract('records on a thread of their own', (options) => openApart(options));
