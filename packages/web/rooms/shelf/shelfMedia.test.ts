import { media as catalogue } from '@fettle/engine/catalogue/media.ts';
import { readShelf } from '@fettle/job/books/shelf.ts';
import { describe, expect, it } from 'vitest';
import type { Book } from '../../client/books.ts';
import { shortNameOf, shownMedia } from './shelfMedia.ts';

const book = {
  media: [{ medium: 'old-clay' }, { medium: 'foam-20ppi', amount: '4 L' }],
  ownMedia: {
    'old-clay': { like: 'expanded-clay-10mm', size: '9 mm' },
    'new-floss': { like: 'floss-loose' },
  },
};

const show = (of: Book, stage?: 'mechanical' | 'biological' | 'chemical') => {
  const reading = readShelf(of);
  return shownMedia(of, { problems: reading.ok ? [] : reading.problems, stage });
};

describe('the media of the shelf', () => {
  it('stand in the order of the shelf, and everything else can be put beside them', () => {
    const { onShelf, others } = show(book);
    expect(onShelf.map(({ id, place, isOwn }) => [id, place, isOwn])).toEqual([
      ['old-clay', 0, true],
      ['foam-20ppi', 1, false],
    ]);
    expect(others[0]).toMatchObject({ id: 'new-floss', place: undefined, isOwn: true });
    expect(others).toHaveLength(Object.keys(catalogue).length);
  });

  it('of one stage keep their places in the list', () => {
    const { onShelf, others } = show(book, 'mechanical');
    expect(onShelf.map(({ id, place }) => [id, place])).toEqual([['foam-20ppi', 1]]);
    expect(others.every(({ medium }) => medium?.stage === 'mechanical')).toBe(true);
  });

  it('of one’s own have the figures that are stated, and those of what they are like', () => {
    const [clay] = show(book).onShelf;
    const like = catalogue['expanded-clay-10mm']!;
    expect(clay?.medium).toMatchObject({ name: 'old-clay', resistance: { sizeM: { value: 0.009 } } });
    expect(clay?.medium?.areaPerM).toEqual(like.areaPerM);
  });

  it('are shown while one of them is half typed, or known to nobody', () => {
    const half = {
      media: [{ medium: 'old-clay' }, { medium: 'who-knows' }],
      ownMedia: { 'old-clay': { like: 'expanded-clay-10mm', size: '9 k' } },
    };
    const [clay, unknown] = show(half).onShelf;
    expect(clay?.medium?.resistance).toEqual(catalogue['expanded-clay-10mm']?.resistance);
    expect(unknown).toEqual({ id: 'who-knows', place: 1, medium: undefined, isOwn: false });
  });
});

describe('a name that somebody gives', () => {
  it.each([
    ['Old clay, 9 mm', 'old-clay-9-mm'],
    ['  Seal strip ', 'seal-strip'],
    ['Crème à 20 ppi!', 'cre-me-a-20-ppi'],
    ['3/4 clip', 'clip'],
    ['…', ''],
  ])('%j is kept as %j, which a shelf takes', (name, id) => {
    expect(shortNameOf(name)).toBe(id);
    if (id !== '') expect(readShelf({ parts: [{ part: id }] }).ok).toBe(true);
  });
});
