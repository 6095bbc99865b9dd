import type { PictureKeeper, WaitingPicture } from './keptPictures.ts';

/** How far a picture is on its way into the records. */
export type Way =
  | { readonly is: 'waiting' }
  | { readonly is: 'sending' }
  /** Not sent, but kept here: it can be tried again. */
  | { readonly is: 'failed'; readonly says: string }
  /** The job has the same picture already. */
  | { readonly is: 'there' };

export interface OutgoingPicture extends WaitingPicture {
  readonly way: Way;
}

/** What sending works with; a test gives others than the browser's. */
export interface OutgoingTools {
  readonly keeper: PictureKeeper;
  /**
   * Tells whether the job had the same picture already.
   * @throws where it was not taken; `isRefusal` says whether it never will be
   */
  readonly send: (picture: WaitingPicture) => Promise<{ readonly thereAlready: boolean }>;
  readonly isRefusal: (error: unknown) => boolean;
  /** Called after each change with all that are on their way. */
  readonly show: (pictures: readonly OutgoingPicture[]) => void;
}

/** A picture that was refused is shown again, and not sent again. */
const firstWayOf = ({ refused }: WaitingPicture): Way =>
  refused === undefined ? { is: 'waiting' } : { is: 'failed', says: refused };

/** A picture as it is kept, without how far it is. */
const bare = ({ id, job, name, picture }: WaitingPicture): WaitingPicture => ({ id, job, name, picture });

const anew = (picture: OutgoingPicture): OutgoingPicture => ({ ...bare(picture), way: { is: 'waiting' } });

/** Pictures of one job on their way into the records: one after the other, and none lost that fails. */
export class Outgoing {
  readonly #tools: OutgoingTools;
  #pictures: readonly OutgoingPicture[] = [];
  #isSending = false;

  constructor(tools: OutgoingTools) {
    this.#tools = tools;
  }

  /** Takes up what an earlier page left behind. */
  async takeUp(job: number): Promise<void> {
    const left = await this.#tools.keeper.of(job);
    const known = new Set(this.#pictures.map(({ id }) => id));
    this.#set([
      ...this.#pictures,
      ...left.filter(({ id }) => !known.has(id)).map((picture) => ({ ...picture, way: firstWayOf(picture) })),
    ]);
    await this.#sendAll();
  }

  async add(pictures: readonly WaitingPicture[]): Promise<void> {
    this.#set([
      ...this.#pictures,
      ...pictures.map((picture) => ({ ...picture, way: { is: 'waiting' } as const })),
    ]);
    await Promise.all(pictures.map((picture) => this.#tools.keeper.keep(picture)));
    await this.#sendAll();
  }

  async again(id: string): Promise<void> {
    this.#set(this.#pictures.map((picture) => (picture.id === id ? anew(picture) : picture)));
    await this.#sendAll();
  }

  /** Gives up a picture that was not sent. */
  async drop(id: string): Promise<void> {
    this.#set(this.#pictures.filter((picture) => picture.id !== id));
    await this.#tools.keeper.forget(id);
  }

  async #sendAll(): Promise<void> {
    if (this.#isSending) return;
    this.#isSending = true;
    try {
      for (let next = this.#next(); next !== undefined; next = this.#next()) await this.#sendOne(next);
    } finally {
      this.#isSending = false;
    }
  }

  async #sendOne(picture: OutgoingPicture): Promise<void> {
    this.#go(picture.id, { is: 'sending' });
    try {
      const { thereAlready } = await this.#tools.send(picture);
      if (!thereAlready) return await this.drop(picture.id);
      this.#go(picture.id, { is: 'there' });
      await this.#tools.keeper.forget(picture.id);
    } catch (error) {
      const says = error instanceof Error ? error.message : String(error);
      this.#go(picture.id, { is: 'failed', says });
      if (this.#tools.isRefusal(error)) await this.#tools.keeper.keep({ ...bare(picture), refused: says });
    }
  }

  #next(): OutgoingPicture | undefined {
    return this.#pictures.find(({ way }) => way.is === 'waiting');
  }

  #go(id: string, way: Way): void {
    this.#set(this.#pictures.map((picture) => (picture.id === id ? { ...picture, way } : picture)));
  }

  #set(pictures: readonly OutgoingPicture[]): void {
    this.#pictures = pictures;
    this.#tools.show(pictures);
  }
}
