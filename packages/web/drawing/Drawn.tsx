import { useMemo } from 'react';

/** Attributes of style are for files that stand alone: a page has its own, and may carry none. */
const withoutStyle = (svg: string): string => svg.replace(/ style="[^"]*"/, '');

/** A drawing in the page. It comes from our own drawing code, which escapes every word in it. */
export function Drawn({ svg }: { readonly svg: string }) {
  const markup = useMemo(() => ({ __html: withoutStyle(svg) }), [svg]);
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the drawing code writes SVG, escaped throughout
  return <div className="drawn" dangerouslySetInnerHTML={markup} />;
}
