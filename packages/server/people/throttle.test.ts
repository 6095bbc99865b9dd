import { afterEach, describe, expect, it, vi } from 'vitest';
import { throttle } from './throttle.ts';

afterEach(() => {
  vi.useRealTimers();
});

describe('guessing passwords', () => {
  it('of many names from one address is held back', async () => {
    const of = throttle();
    const from = '198.51.100.8';
    const waits: (number | undefined)[] = [];
    for (let count = 0; count < 31; count += 1) waits.push(await of.try({ name: `name${count}`, from }));
    expect(waits.filter((wait) => wait !== undefined).length).toBe(1);
  });

  it('from everywhere never locks the owner of an account out of the usual place, nor anybody for ever', async () => {
    vi.useFakeTimers({ now: new Date('2026-11-25T08:00:00Z') });
    const of = throttle();
    await of.try({ name: 'ines', from: '192.0.2.1' });
    await of.succeeded({ name: 'ines', from: '192.0.2.1' });
    const waits: (number | undefined)[] = [];
    for (let count = 0; count < 80; count += 1) {
      waits.push(await of.try({ name: 'ines', from: `203.0.113.${count}` }));
    }
    expect(waits.slice(0, 50)).toEqual(Array.from({ length: 50 }, () => undefined));
    expect(waits.at(-1)).toBeGreaterThan(0);
    expect(await of.try({ name: 'ines', from: '192.0.2.1' })).toBeUndefined();
    await vi.advanceTimersByTimeAsync(3_700_000);
    expect(await of.try({ name: 'ines', from: '203.0.113.200' })).toBeUndefined();
  });
});
