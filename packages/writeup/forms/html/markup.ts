import { escapeXml as escaped } from '@fettle/drawing/svg.ts';
import { joined } from '../joints.ts';

/** Text as markup, its figures held together. */
export const text = (plain: string): string => escaped(joined(plain));

/** An element; attributes without a value are left out, content is markup. */
export const tag = (
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>>,
  ...content: readonly string[]
): string => {
  const written = Object.entries(attributes)
    .flatMap(([key, value]) => (value === undefined ? [] : [` ${key}="${escaped(String(value))}"`]))
    .join('');
  return `<${name}${written}>${content.join('')}</${name}>`;
};
