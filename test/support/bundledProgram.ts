import { runFromBundle } from '../../scripts/bundle.ts';

/** Bundles the program once for all tests that run it as a process: it is what people install. */
export default runFromBundle;
