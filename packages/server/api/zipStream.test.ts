import { expect, it } from 'vitest';
import { mostZipFiles, TooLarge, zipStream } from './zipStream.ts';

it('takes no more than its form can hold: an archive beyond that would look whole and not be', async () => {
  const zip = zipStream(new Date(), { mostBytes: 10_000 });
  const came = new Response(zip.stream).arrayBuffer().catch((error: unknown) => error);
  await zip.writer.put('jobs/000001/photographs/one.jpg', new Uint8Array(6000));
  await expect(zip.writer.put('jobs/000001/photographs/two.jpg', new Uint8Array(6000))).rejects.toThrow(
    TooLarge,
  );
  zip.fail(new TooLarge('The archive would have more.'));
  expect(await came).toBeInstanceOf(Error);
});

it('takes no more files than its list can count', async () => {
  const zip = zipStream(new Date(), { mostFiles: 3 });
  const came = new Response(zip.stream).arrayBuffer().catch((error: unknown) => error);
  for (const name of ['one', 'two', 'three']) await zip.writer.put(`${name}.csv`, new Uint8Array(10));
  await expect(zip.writer.put('four.csv', new Uint8Array(10))).rejects.toThrow(
    'The archive would have more than 3 files.',
  );
  zip.fail(new TooLarge('The archive would have more.'));
  expect(await came).toBeInstanceOf(Error);
});

it('lists as many files as it says it can, each of them', async () => {
  const zip = zipStream(new Date());
  const came = new Response(zip.stream).arrayBuffer();
  for (let count = 0; count < mostZipFiles; count++) await zip.writer.put(`${count}.jpg`, new Uint8Array(0));
  await expect(zip.writer.put('one-more.jpg', new Uint8Array(0))).rejects.toThrow(TooLarge);
  zip.finish();
  const end = Buffer.from(await came).subarray(-22);
  expect([end.readUInt32LE(0), end.readUInt16LE(10)]).toEqual([0x06054b50, mostZipFiles]);
});
