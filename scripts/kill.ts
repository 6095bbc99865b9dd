/**
 * Kills a writing server at moments of chance, opens the records again and holds them against everything that was
 * acknowledged: `npm run kill -- [rounds] [--seed N] [--harm name]`. Then kills single commands in the middle.
 * Ends with 1 on any loss. `--harm` damages the records on purpose before each look, to see that the look sees it:
 * older-database, cut-picture, lost-picture or scratched-database.
 */
import { parseArgs } from 'node:util';
import { runFromBundle } from './bundle.ts';
import { harms } from './records/harms.ts';
import { killCommands } from './records/killedCommands.ts';
import { killRounds } from './records/killRounds.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { seed: { type: 'string', default: '1' }, harm: { type: 'string' } },
});
const rounds = Number(positionals[0] ?? 200);
const seed = Number(values.seed);
const harm = values.harm === undefined ? undefined : harms[values.harm]?.();
if (values.harm !== undefined && harm === undefined)
  throw new Error(`--harm is one of ${Object.keys(harms).join(', ')}`);

await runFromBundle();
const tally = await killRounds({
  rounds,
  seed,
  ...(harm === undefined ? {} : { harm }),
  onRound: (round, losses, ledger) => {
    if (losses.length > 0 || (round + 1) % 10 === 0)
      console.log(
        `round ${round + 1}: ${ledger.acknowledged} acknowledged in this folder, ${losses.length} losses`,
      );
  },
});
for (const { round, kind, says } of tally.losses.slice(0, 40))
  console.log(`round ${round + 1}, ${kind}: ${says}`);

const count = (kind: 'lost' | 'torn'): number => tally.losses.filter((loss) => loss.kind === kind).length;
console.table({
  'kills of a writing server': tally.rounds,
  'acknowledged writes': tally.acknowledged,
  'lost races': tally.outrun,
  lost: count('lost'),
  torn: count('torn'),
  seconds: Math.round(tally.seconds),
});

const commands = harm === undefined ? await killCommands({ kills: Math.ceil(rounds / 10), seed }) : [];
console.table(commands.map(({ faults, ...row }) => ({ ...row, faults: faults.length })));
for (const { faults } of commands) for (const fault of faults) console.log(fault);
const faults = tally.losses.length + commands.flatMap((row) => row.faults).length;
process.exitCode = faults === 0 ? 0 : 1;
