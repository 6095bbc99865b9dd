import { readShelf } from '@fettle/job/books/shelf.ts';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Book } from '../client/books.ts';
import { Refused, Unreached } from '../client/request.ts';
import { putting } from '../forms/places.ts';
import { type BookAtWork, openBook } from './bookAtWork.ts';
import type { KeptBook } from './keptBook.ts';

/** Records in memory that answer as the server does. */
class Records {
  book: Book = { media: [{ medium: 'foam-20ppi', price: '3 GBP/L' }] };
  revision = 1;
  isReached = true;
  writes = 0;
  kept: KeptBook | undefined;

  /** Somebody else writes. */
  change(book: Book): void {
    this.book = book;
    this.revision += 1;
  }

  #reach(): void {
    if (!this.isReached) throw new Unreached('no server');
  }

  open(): Promise<BookAtWork> {
    return openBook({
      records: {
        read: async () => {
          this.#reach();
          return { book: this.book, revision: this.revision };
        },
        write: async ({ book, base }) => {
          this.#reach();
          if (base !== this.revision)
            throw new Refused({ status: 412, title: '', detail: 'too late', code: 'lost-race' });
          this.writes += 1;
          this.change(book);
          return this.revision;
        },
      },
      keeper: {
        find: () => this.kept,
        keep: (kept) => {
          this.kept = kept;
        },
      },
      wrongIn: (book) => {
        const reading = readShelf(book);
        return reading.ok ? 0 : reading.problems.length;
      },
    });
  }
}

const priceAt = ['media', 0, 'price'];
const price = (text: string | undefined) => ({ says: 'price', key: 'price', recipe: putting(priceAt, text) });
const amount = (text: string) => ({ says: 'amount', recipe: putting(['media', 0, 'amount'], text) });
const foam = (more: object) => ({ media: [{ medium: 'foam-20ppi', ...more }] });

describe('a shelf at work', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('is written once after a pause in the typing', async () => {
    const records = new Records();
    const shelf = await records.open();
    for (const text of ['4 GBP/L', '4.5 GBP/L', '4.50 GBP/L']) shelf.edit(price(text));
    expect(shelf.state().standing).toEqual({ is: 'unsaved' });
    expect(records.kept?.book).toEqual(foam({ price: '4.50 GBP/L' }));
    await vi.advanceTimersByTimeAsync(1_000);
    expect(records).toMatchObject({ writes: 1, book: foam({ price: '4.50 GBP/L' }), kept: undefined });
    expect(shelf.state().standing).toEqual({ is: 'saved' });
  });

  it('is kept and not sent while a price is none, and sent when it is mended', async () => {
    const records = new Records();
    const shelf = await records.open();
    shelf.edit(price('4 GBP/m'));
    await vi.advanceTimersByTimeAsync(1_000);
    expect(shelf.state().standing).toEqual({ is: 'wrong', says: '1 field is to be mended' });
    expect(records).toMatchObject({ writes: 0, kept: { book: foam({ price: '4 GBP/m' }) } });
    shelf.edit(price('4 GBP/L'));
    await vi.advanceTimersByTimeAsync(1_000);
    expect(records).toMatchObject({ writes: 1, book: foam({ price: '4 GBP/L' }) });
  });

  it('takes in what somebody else wrote first, and writes both', async () => {
    const records = new Records();
    const shelf = await records.open();
    records.change(foam({ price: '9 GBP/L' }));
    shelf.edit(amount('2 L'));
    await vi.advanceTimersByTimeAsync(2_000);
    expect(records.book).toEqual(foam({ price: '9 GBP/L', amount: '2 L' }));
    expect(shelf.state()).toMatchObject({ standing: { is: 'saved' }, tookTheirs: true, past: [] });
  });

  it.each([
    ['yours', '5 GBP/L'],
    ['theirs', '9 GBP/L'],
  ] as const)(
    'waits where both changed a price, and writes %s when that is chosen',
    async (choice, stands) => {
      const records = new Records();
      const shelf = await records.open();
      records.change(foam({ price: '9 GBP/L' }));
      shelf.edit(price('5 GBP/L'));
      await vi.advanceTimersByTimeAsync(2_000);
      const conflict = {
        path: 'media.foam-20ppi.price',
        base: '3 GBP/L',
        theirs: '9 GBP/L',
        yours: '5 GBP/L',
      };
      expect(shelf.state().standing).toEqual({ is: 'conflict', conflicts: [conflict] });
      expect(shelf.state().book).toEqual(foam({ price: '5 GBP/L' }));
      shelf.edit(amount('2 L'));
      await vi.advanceTimersByTimeAsync(2_000);
      expect(records.writes).toBe(0);
      shelf.close();
      const again = await records.open();
      await vi.advanceTimersByTimeAsync(1_000);
      expect(again.state().standing).toEqual({ is: 'conflict', conflicts: [conflict] });
      again.settle(choice);
      await vi.advanceTimersByTimeAsync(2_000);
      expect(records.book).toEqual(foam({ price: stands, amount: '2 L' }));
      expect(again.state().standing).toEqual({ is: 'saved' });
    },
  );

  it('outlives a server that is away and a page that is shut', async () => {
    const records = new Records();
    const shelf = await records.open();
    records.isReached = false;
    shelf.edit(price('4 GBP/L'));
    await vi.advanceTimersByTimeAsync(1_000);
    expect(shelf.state().standing).toEqual({ is: 'unreached' });
    shelf.close();
    records.isReached = true;
    await records.open();
    await vi.advanceTimersByTimeAsync(1_000);
    expect(records).toMatchObject({ book: foam({ price: '4 GBP/L' }), kept: undefined });
  });

  it('writes what was typed while it was being written', async () => {
    const records = new Records();
    const shelf = await records.open();
    shelf.edit(price('4 GBP/L'));
    const written = shelf.flush();
    shelf.edit(price('5 GBP/L'));
    await written;
    await vi.advanceTimersByTimeAsync(2_000);
    expect(records.book).toEqual(foam({ price: '5 GBP/L' }));
  });

  it('goes back and on again, the letters of a price as one step', async () => {
    const records = new Records();
    const shelf = await records.open();
    shelf.edit(price('4 GBP/L'));
    shelf.edit(price('45 GBP/L'));
    shelf.edit({ says: 'take away', recipe: putting(['media'], undefined) });
    shelf.undo();
    expect(shelf.state().book).toEqual(foam({ price: '45 GBP/L' }));
    shelf.undo();
    expect(shelf.state().book).toEqual(foam({ price: '3 GBP/L' }));
    shelf.redo();
    shelf.redo();
    expect(shelf.state().book).toEqual({});
    await vi.advanceTimersByTimeAsync(1_000);
    expect(records.book).toEqual({});
  });

  it('shows what somebody else wrote when nothing is being written here', async () => {
    const records = new Records();
    const shelf = await records.open();
    records.change(foam({ amount: '1 L' }));
    await shelf.lookForNews();
    expect(shelf.state()).toMatchObject({ book: foam({ amount: '1 L' }), revision: 2, tookTheirs: true });
  });
});
