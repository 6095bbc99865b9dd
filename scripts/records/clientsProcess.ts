/** A process of clients of the load run: it is told what to ask, and tells what came back. */
import { askAll, type ClientsTask } from './manyClients.ts';

process.once('message', async (task: ClientsTask) => {
  process.send?.(await askAll(task));
  process.disconnect();
});
