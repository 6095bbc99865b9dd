import type { Document } from '@fettle/writeup/content/document.ts';
import { contentMarkup } from '@fettle/writeup/forms/html/page.ts';
import { contentStyle } from '@fettle/writeup/forms/html/style.ts';
import { useEffect, useRef } from 'react';

/** The look of a document apart from that of the workbench; the inks come from the workbench, by day and by night. */
const look = (): CSSStyleSheet => {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(contentStyle);
  return sheet;
};

/**
 * The markup of a document within a room: its headings come below the room's own, and no style stands at a drawing,
 * for the workbench allows none within its page; what it asks for stands in the style sheet too.
 */
const markupOf = (written: Document): string =>
  contentMarkup(written)
    .replace(/(<svg[^>]*?) style="[^"]*"/g, '$1')
    .replace(/<(\/?)h([1-3])(?=[ >])/g, (_, end: string, level: string) => `<${end}h${Number(level) + 2}`);

/** What will be published, as it will look. */
export function Preview({
  document: written,
  onChoose,
}: {
  readonly document: Document;
  /** A block was pointed at, by its name. */
  readonly onChoose: (id: string) => void;
}) {
  const host = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const { current } = host;
    if (current === null) return;
    const root = current.shadowRoot ?? current.attachShadow({ mode: 'open' });
    if (root.adoptedStyleSheets.length === 0) root.adoptedStyleSheets = [look()];
    root.innerHTML = markupOf(written);
  }, [written]);
  useEffect(() => {
    const root = host.current?.shadowRoot;
    if (!root) return;
    const ids = new Set(written.blocks.map(({ id }) => id));
    const choose = (event: Event): void => {
      const { target } = event;
      const block = target instanceof Element ? target.closest('[id]') : null;
      if (block !== null && ids.has(block.id)) onChoose(block.id);
    };
    root.addEventListener('click', choose);
    return () => root.removeEventListener('click', choose);
  }, [written, onChoose]);
  return (
    <div ref={host} className="written" role="document" lang={written.language} dir={written.direction} />
  );
}
