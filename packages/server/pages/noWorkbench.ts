/** Builds the workbench in the folder of the repository. */
export const buildCommand = 'npm run workbench';

/** What stands where the workbench is not built: the pages without script answer in its place. */
export const noWorkbench = `The workbench is not built, so only the pages without script are served: stop this, run ${buildCommand} in the folder of the repository, and start it again.`;
