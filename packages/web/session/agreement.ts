import type { KeptSession, SessionKeeper } from './kept.ts';
import { isSameStand, rebased, type Stand } from './rebased.ts';
import { lineOf, sameUntil, splitAt } from './stepLine.ts';
import type { OtherWindows, WindowNews } from './windows.ts';

/** Between two times that windows agree on a job under a moving hand, ms. */
const spreadEveryMs = 400;

/** What a window brings to the agreement. */
export interface Party {
  readonly keeper: SessionKeeper;
  readonly windows: (number: number, onNews: (news: WindowNews) => void) => OtherWindows;
  /** The job as this window shows it. */
  readonly shown: () => Stand;
  /** Shows what the windows agree on, with what was done here since; `hasOwn` where that is something. */
  readonly show: (stand: Stand, hasOwn: boolean) => void;
}

/** What is new with a state that is kept, to those who know the one before. */
const newsOf = (agreed: KeptSession, before: KeptSession): WindowNews => {
  const { turn, revision, base, document, past } = agreed;
  const line = lineOf(agreed);
  const from = sameUntil(lineOf(before), line);
  return { turn, revision, base, document, done: past.length, from, steps: line.slice(from) };
};

/**
 * What the windows of one browser agree on about one job: what is kept in the browser's own database, which they
 * change one at a time. A window that was not the first to change it lays what was done in it over what the first
 * kept; so all come to stand where the last change that was kept stands, in whatever order they hear of it. A window
 * that hears of a change that is not the next one looks up what is kept.
 *
 * A browser that keeps nothing has no agreement: its windows are then to each other what two machines are, and the
 * records put their changes together.
 */
export class Agreement {
  readonly #party: Party;
  readonly #windows: OtherWindows;
  #known: KeptSession;
  /** Being kept or looked up just now. */
  #work: Promise<void> | undefined;
  /** Heard while something was kept or looked up. */
  #heard: WindowNews | undefined;
  /** What this window wanted to be kept last: a browser that keeps nothing is not asked again for the same. */
  #offered: Stand | undefined;
  #pause: ReturnType<typeof setTimeout> | undefined;
  /** Once everything is known that was agreed while the job was being opened. */
  readonly begun: Promise<void>;

  constructor(known: KeptSession, party: Party) {
    this.#known = known;
    this.#party = party;
    this.#windows = party.windows(known.number, (news) => this.#hear(news));
    this.begun = this.#begin(() => this.#catchUp());
  }

  /** Agrees on what was done here: at once, then no more often than a hand needs that moves on. */
  soon(): void {
    if (this.#pause !== undefined) return;
    void this.now();
    this.#pause = setTimeout(() => {
      this.#pause = undefined;
      if (this.#hasOwn() && this.#offered !== this.#party.shown()) this.soon();
    }, spreadEveryMs);
  }

  /** What the windows agree on, as far as this one has heard. */
  readonly known = (): Stand => this.#known;

  /** Agrees on what was done here by now. */
  async now(): Promise<void> {
    while (this.#work !== undefined) await this.#work;
    if (this.#hasOwn()) await this.#begin(() => this.#keep());
  }

  /** Takes in what the windows agree on by now, also where this one has not heard of it yet. */
  async lookUp(): Promise<void> {
    while (this.#work !== undefined) await this.#work;
    await this.#begin(() => this.#catchUp());
  }

  /** Leaves the agreement with what was done here by now. */
  async close(): Promise<void> {
    await this.now();
    clearTimeout(this.#pause);
    this.#windows.close();
  }

  readonly #hasOwn = (): boolean => !isSameStand(this.#party.shown(), this.#known);

  #begin(work: () => Promise<void>): Promise<void> {
    this.#work = work().finally(() => {
      this.#work = undefined;
      const heard = this.#heard;
      this.#heard = undefined;
      if (heard !== undefined) this.#hear(heard);
    });
    return this.#work;
  }

  async #keep(): Promise<void> {
    const known = this.#known;
    let seen = this.#party.shown();
    let onto = known;
    this.#offered = seen;
    const agreed = await this.#party.keeper.agree(known, (kept) => {
      seen = this.#party.shown();
      this.#offered = seen;
      onto = kept;
      const { revision, base, document, past, future } = rebased(seen, { since: known, onto });
      const turn = Math.max(kept.turn, known.turn) + 1;
      return { number: known.number, turn, revision, base, document, past, future };
    });
    if (agreed === undefined) return;
    this.#windows.tell(newsOf(agreed, onto));
    if (onto === known) {
      this.#known = agreed;
      if (this.#hasOwn()) this.soon();
    } else this.#takeIn(agreed, seen);
  }

  async #catchUp(): Promise<void> {
    const kept = await this.#party.keeper.find(this.#known.number);
    if (kept !== undefined && kept.turn > this.#known.turn) this.#takeIn(kept, this.#known);
  }

  /** Stands where the windows agree to stand, with what was done here since a state that has a part in it. */
  #takeIn(agreed: KeptSession, since: Stand): void {
    const stand = rebased(this.#party.shown(), { since, onto: agreed });
    this.#known = agreed;
    const hasOwn = !isSameStand(stand, agreed);
    this.#party.show(stand, hasOwn);
    if (hasOwn) this.soon();
  }

  #hear(news: WindowNews): void {
    // A window of an edition before this one tells of no turn; what it does is found where it is kept.
    if (!(news.turn > this.#known.turn)) return;
    if (this.#work !== undefined) {
      if (this.#heard === undefined || this.#heard.turn < news.turn) this.#heard = news;
      return;
    }
    const line = lineOf(this.#known);
    // A window that slept has missed a turn, and one that was opened meanwhile may have other steps.
    if (news.turn !== this.#known.turn + 1 || news.from > line.length) {
      void this.#begin(() => this.#catchUp());
      return;
    }
    const { turn, revision, base, document, done, from, steps } = news;
    const { past, future } = splitAt([...line.slice(0, from), ...steps], done);
    const { number } = this.#known;
    this.#takeIn({ number, turn, revision, base, document, past, future }, this.#known);
  }
}
