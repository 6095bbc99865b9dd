import type { Registry } from './adapter.ts';

export const dirtLaws = {} as const satisfies Registry;
