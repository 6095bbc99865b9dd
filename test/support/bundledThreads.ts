import { runThreadsFromBundle } from '../../scripts/bundle.ts';

/** Bundles once what all tests start threads of. */
export default runThreadsFromBundle;
