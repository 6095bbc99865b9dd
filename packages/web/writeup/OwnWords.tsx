import type { Block, Document } from '@fettle/writeup/content/document.ts';
import { ownPlace } from '@fettle/writeup/ownWords.ts';
import { useId } from 'react';
import { Field } from '../forms/Field.tsx';

/** How a block is called where one is chosen: its first words. */
const calledAs = (block: Block): string => {
  const words =
    block.kind === 'heading' || block.kind === 'paragraph' || block.kind === 'caution'
      ? block.text
      : block.kind === 'table' || block.kind === 'drawing'
        ? block.caption
        : block.kind === 'list' || block.kind === 'steps'
          ? (block.items[0] ?? '')
          : block.id;
  return words.length > 60 ? `${words.slice(0, 57)}…` : words;
};

/** The technician's own words at one block: in its place where that can be, before it, after it. */
export function OwnWords({
  written,
  chosen,
  onChoose,
}: {
  readonly written: Document;
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}) {
  const select = useId();
  const places = written.blocks.flatMap((block) => {
    const place = ownPlace(block);
    return place === undefined ? [] : [{ ...place, says: calledAs(block) }];
  });
  const unique = places.filter(({ id }, at) => places.findIndex((one) => one.id === id) === at);
  const here = unique.find(({ id }) => id === chosen) ?? unique[0];
  if (here === undefined) return null;
  return (
    <section className="own-words" aria-labelledby="own-words">
      <h3 id="own-words">Your own words</h3>
      <p className="soft">
        Choose a paragraph here, or point at it in the page. What you write stays when the page is made anew.
      </p>
      <label htmlFor={select}>Paragraph</label>
      <select id={select} value={here.id} onChange={({ target }) => onChoose(target.value)}>
        {unique.map(({ id, says }) => (
          <option key={id} value={id}>
            {says}
          </option>
        ))}
      </select>
      <div className="fields" key={here.id}>
        {here.replaceable ? (
          <Field path={['writeUp', 'words', here.id, 'instead']} label="In its place" />
        ) : null}
        <Field path={['writeUp', 'words', here.id, 'before']} label="Before it" />
        <Field path={['writeUp', 'words', here.id, 'after']} label="After it" />
      </div>
    </section>
  );
}
