import { Command } from 'commander';
import { addAccounts } from './commands/accounts.ts';
import { addAssess } from './commands/assess.ts';
import { addAttach } from './commands/attach.ts';
import { addBackup } from './commands/backup.ts';
import { addBooks } from './commands/books.ts';
import { addCheck } from './commands/check.ts';
import { addCheckup } from './commands/checkup.ts';
import { addClaims } from './commands/claims.ts';
import { addDemo } from './commands/demo.ts';
import { addExport } from './commands/export.ts';
import { addFaded } from './commands/faded.ts';
import { addForecast } from './commands/forecast.ts';
import { addImport } from './commands/import.ts';
import { addJobs } from './commands/jobs.ts';
import { addNew } from './commands/new.ts';
import { addOpen } from './commands/open.ts';
import { addOwnerLink } from './commands/ownerLink.ts';
import { addPhotographs } from './commands/photographs.ts';
import { addPlan } from './commands/plan.ts';
import { addPutAway } from './commands/putAway.ts';
import { addReadings } from './commands/readings.ts';
import { addReckon } from './commands/reckon.ts';
import { addResidence } from './commands/residence.ts';
import { addRestore } from './commands/restore.ts';
import { addServe } from './commands/serve.ts';
import { addUndo } from './commands/undo.ts';
import { addWriteUp } from './commands/writeUp.ts';
import packageFile from './package.json' with { type: 'json' };

/** In the order in which help lists them: single jobs, then the records, then everything around. */
const commands = [
  addAssess,
  addForecast,
  addPlan,
  addResidence,
  addWriteUp,
  addClaims,
  addFaded,
  addCheck,
  addNew,
  addReckon,
  addDemo,
  addJobs,
  addOpen,
  addImport,
  addAttach,
  addPhotographs,
  addReadings,
  addOwnerLink,
  addBooks,
  addUndo,
  addPutAway,
  addExport,
  addBackup,
  addRestore,
  addCheckup,
  addServe,
  addAccounts,
];

/** The whole command line; parsing errors are thrown, never printed by the library. */
export const buildProgram = (): Command => {
  const program = new Command('fettle');
  program
    .description('The workbench of the independent aquarium-filter technician.')
    .version(packageFile.version)
    .showSuggestionAfterError()
    .exitOverride()
    .configureOutput({ writeErr: () => {} })
    .addHelpText(
      'after',
      '\nTry:\n  fettle demo\n  fettle new --out job.yaml\n  fettle assess job.yaml\n  fettle plan job.yaml --budget 15',
    );
  for (const add of commands) add(program);
  for (const command of program.commands) command.exitOverride().configureOutput({ writeErr: () => {} });
  return program;
};
