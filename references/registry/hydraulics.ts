import type { Registry } from './adapter.ts';

export const hydraulicsLaws = {} as const satisfies Registry;
