/** Attributes of an element; numbers are written with at most two decimals. */
type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Characters that XML 1.0 forbids even when escaped. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to drop.
const forbidden = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu;

/** Marks that turn the writing round from there on, figures of ours that stand behind a name with it. */
const turning = /[\u202a-\u202e\u2066-\u2069]/g;

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text made safe for XML content and for attributes in either kind of quotes. */
export function escapeXml(text: string): string {
  return text
    .replace(forbidden, '')
    .replace(turning, '')
    .replace(/[&<>"']/g, (sign) => entities[sign] ?? '');
}

/** A coordinate with at most two decimals and no negative zero. */
export function coordinate(value: number): string {
  const text = String(Number(value.toFixed(2)));
  return text === '-0' ? '0' : text;
}

function written(attributes: Attributes): string {
  return Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(
      ([name, value]) =>
        ` ${name}="${typeof value === 'number' ? coordinate(value) : escapeXml(value ?? '')}"`,
    )
    .join('');
}

/** An element whose content is already markup; attributes are escaped. */
export function element(name: string, attributes: Attributes, content: readonly string[] = []): string {
  if (content.length === 0) return `<${name}${written(attributes)}/>`;
  return `<${name}${written(attributes)}>${content.join('')}</${name}>`;
}

/** A text element; its content is escaped. */
export function text(content: string, attributes: Attributes): string {
  return element('text', attributes, [escapeXml(content)]);
}

/** A path through points that are already in sheet millimetres. */
export function pathThrough(points: readonly { readonly x: number; readonly y: number }[]): string {
  return points
    .map((point, index) => `${index === 0 ? 'M' : 'L'}${coordinate(point.x)} ${coordinate(point.y)}`)
    .join('');
}
