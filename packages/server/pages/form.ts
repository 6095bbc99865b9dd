import type { Context } from 'hono';

/** The fields of a form as browsers send one; undefined where the body is something else. Of doubled fields the last. */
export async function readForm(context: Context): Promise<Readonly<Record<string, string>> | undefined> {
  const [kind = ''] = (context.req.header('content-type') ?? '').split(';');
  if (kind.trim().toLowerCase() !== 'application/x-www-form-urlencoded') return undefined;
  return Object.fromEntries(new URLSearchParams(await context.req.text()));
}
