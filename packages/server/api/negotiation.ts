import type { Context } from 'hono';
import { Refusal } from './refusal.ts';

const yamlTypes = ['application/yaml', 'application/x-yaml', 'text/yaml', 'text/x-yaml'];

interface Range {
  readonly type: string;
  readonly quality: number;
}

const rangesOf = (header: string): Range[] =>
  header.split(',').flatMap((part) => {
    const [type = '', ...parameters] = part.split(';').map((piece) => piece.trim().toLowerCase());
    const quality = parameters.map((each) => /^q=([01](?:\.\d{0,3})?)$/.exec(each)?.[1]).find(Boolean);
    return type === '' ? [] : [{ type, quality: quality === undefined ? 1 : Number(quality) }];
  });

/** How much a type is wanted, by the most exact range that speaks of it. */
const wish = (ranges: readonly Range[], type: string): number => {
  const [group = ''] = type.split('/');
  const speaks = [type, `${group}/*`, '*/*'].map((name) => ranges.find((range) => range.type === name));
  return speaks.find((range) => range !== undefined)?.quality ?? 0;
};

/**
 * Whether a document is wanted as JSON or as YAML; JSON where both are as good.
 * @throws Refusal 406 where neither is
 */
export const formOf = (context: Context): 'json' | 'yaml' => {
  const header = context.req.header('Accept');
  if (header === undefined || header.trim() === '') return 'json';
  const ranges = rangesOf(header);
  const json = wish(ranges, 'application/json');
  const yaml = Math.max(...yamlTypes.map((type) => wish(ranges, type)));
  if (json === 0 && yaml === 0)
    throw new Refusal({
      status: 406,
      code: 'not-acceptable',
      title: 'Not in that form',
      detail: 'A document comes as application/json or application/yaml.',
    });
  return yaml > json ? 'yaml' : 'json';
};
