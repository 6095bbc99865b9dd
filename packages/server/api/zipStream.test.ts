import { expect, it } from 'vitest';
import { TooLarge, zipStream } from './zipStream.ts';

it('takes no more than its form can hold: an archive beyond that would look whole and not be', async () => {
  const zip = zipStream(new Date(), 10_000);
  const came = new Response(zip.stream).arrayBuffer().catch((error: unknown) => error);
  await zip.writer.put('jobs/000001/photographs/one.jpg', new Uint8Array(6000));
  await expect(zip.writer.put('jobs/000001/photographs/two.jpg', new Uint8Array(6000))).rejects.toThrow(
    TooLarge,
  );
  zip.fail(new TooLarge('The archive would have more.'));
  expect(await came).toBeInstanceOf(Error);
});
