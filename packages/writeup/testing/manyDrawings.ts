import type { Block, Document } from '../content/document.ts';
import { writeUpDocument } from '../writeUp.ts';
import { demoSource } from './sources.ts';

/** A build sheet with forty drawings more, no two of them alike, nor like those of another `mark`. */
export const withFortyDrawings = (mark = ''): Document => {
  const document = writeUpDocument(demoSource('tall-drum', 'planned'), { name: 'build', theme: 'print' });
  const cut = document.blocks.find(({ id }) => id === 'build-cut-1')!;
  const names = Array.from({ length: 40 }, (_, at) => `more-${at}${mark}`);
  const drawn = document.drawings['cut-1']!;
  const drawings = Object.fromEntries(names.map((name) => [name, drawn.replaceAll('Cut 1', `Cut ${name}`)]));
  const blocks = names.map((name) => ({ ...cut, id: name, drawing: name }) as Block);
  return {
    ...document,
    blocks: [...document.blocks, ...blocks],
    drawings: { ...document.drawings, ...drawings },
  };
};
