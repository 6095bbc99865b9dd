import { type Remote, wrap } from 'comlink';
import type { Engine } from './engine.worker.ts';

const start = (): Remote<Engine> =>
  wrap<Engine>(new Worker(new URL('./engine.worker.ts', import.meta.url), { type: 'module' }));

let quick: Remote<Engine> | undefined;
let thorough: Remote<Engine> | undefined;

/** The engine that follows a hand: nothing that takes long is asked of it. */
export const quickEngine = (): Remote<Engine> => {
  quick ??= start();
  return quick;
};

/** The engine for what takes longer. */
export const thoroughEngine = (): Remote<Engine> => {
  thorough ??= start();
  return thorough;
};
