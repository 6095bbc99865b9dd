import type { Language } from '@fettle/engine/wording/language.ts';
import { english } from './english/english.ts';
import { german } from './german/german.ts';

/** Every language that a write-up may be in, by its tag. */
export const languages: Readonly<Record<string, Language>> = { en: english, de: german };
