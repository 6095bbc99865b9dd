/** Text as markup. */
export const escaped = (text: string): string =>
  text
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;')
    .replace(/'/g, '&#39;');

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
