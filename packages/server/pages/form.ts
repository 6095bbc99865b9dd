import type { Context } from 'hono';
import { type BodyRules, readBody } from '../api/body.ts';

/** A form of ours has a few short fields. */
const formBody: BodyRules = { types: ['application/x-www-form-urlencoded'], mostBytes: 20_000 };

/**
 * The fields of a form as browsers send one; of doubled fields the last.
 * @throws Refusal 413 or 415
 */
export async function readForm(context: Context): Promise<Readonly<Record<string, string>>> {
  const text = new TextDecoder().decode(await readBody(context, formBody));
  return Object.fromEntries(new URLSearchParams(text));
}
