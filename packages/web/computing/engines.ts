import { type Remote, wrap } from 'comlink';
import type { Engine } from './engine.worker.ts';

const startThread = (): Worker =>
  new Worker(new URL('./engine.worker.ts', import.meta.url), { type: 'module' });

const start = (): Remote<Engine> => wrap<Engine>(startThread());

let quick: Remote<Engine> | undefined;
let thorough: Remote<Engine> | undefined;

/** The engine that follows a hand: nothing that takes long is asked of it. */
export const quickEngine = (): Remote<Engine> => {
  quick ??= start();
  return quick;
};

/** An engine for one long piece of work, which can be ended in the middle of it. */
export const engineOfItsOwn = (): { readonly engine: Remote<Engine>; readonly stop: () => void } => {
  const thread = startThread();
  return { engine: wrap<Engine>(thread), stop: () => thread.terminate() };
};

/** The engine for what takes longer. */
export const thoroughEngine = (): Remote<Engine> => {
  thorough ??= start();
  return thorough;
};
