import { Command } from 'commander';
import { addAssess } from './commands/assess.ts';
import { addCheck } from './commands/check.ts';
import { addClaims } from './commands/claims.ts';
import { addDemo } from './commands/demo.ts';
import { addNew } from './commands/new.ts';
import { addPlan } from './commands/plan.ts';
import { addReckon } from './commands/reckon.ts';
import packageFile from './package.json' with { type: 'json' };

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
  for (const add of [addAssess, addPlan, addReckon, addClaims, addCheck, addNew, addDemo]) add(program);
  for (const command of program.commands) command.exitOverride().configureOutput({ writeErr: () => {} });
  return program;
};
