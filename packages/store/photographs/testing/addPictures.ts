import { openStore } from '../../open.ts';
import { plainPicture } from './pictures.ts';

// Adds one picture after the other to job 1 of a data folder and says so of each, until it is killed.
const [folder = '', seed = '1'] = process.argv.slice(2);
const store = await openStore({ folder });
process.stdout.write('ready\n');
for (let count = 0; ; count++) {
  const picture = plainPicture(64 + (count % 5), 48, Number(seed) * 1000 + count);
  // Every third is a picture that is there already.
  const bytes = await (count % 3 === 2 ? plainPicture(70, 50, 7) : picture).png().toBuffer();
  const added = await store.attachments.add({ job: 1, bytes, name: `${count}.png`, by: 'tamsel' });
  if (!added.ok) break;
  process.stdout.write(`${added.attachment.id} ${added.attachment.hash}\n`);
}
