/** A drawing in a document. */
export interface DrawingBlock {
  readonly kind: 'drawing';
  readonly id: string;
  /** Key into the document's `drawings`. */
  readonly drawing: string;
  readonly caption: string;
  /** What it shows, in words, for who does not see it. */
  readonly alternative: string;
  /** `true`: as large on paper as the drawing says, so that its scale holds. */
  readonly width: 'full' | 'half' | 'true';
}

/** A figure that stands for itself: what it is of, and the figure in metric and in US units. */
export interface KeyFigure {
  readonly label: string;
  readonly metric: string;
  /** Absent where it is the same in both systems. */
  readonly us?: string;
  /** Under which conditions, or how sure. */
  readonly note?: string;
}

export interface Column {
  readonly head: string;
  readonly align: 'left' | 'right';
  /** Share of the width against the other columns; 1 where absent. */
  readonly share?: number;
}

/** What is dangerous about something; decides nothing but the mark beside a caution. */
export type Danger =
  | 'mains'
  | 'water'
  | 'blade'
  | 'seal'
  | 'material'
  | 'stopped'
  | 'bacteria'
  | 'chemical'
  | 'skin';

/** A piece of a document. `id` is stable from one making to the next: a technician's own words hang on it. */
export type Block =
  | { readonly kind: 'heading'; readonly id: string; readonly level: 1 | 2 | 3; readonly text: string }
  | {
      readonly kind: 'paragraph';
      readonly id: string;
      /** Said before the text, in bold: what it is about. */
      readonly label?: string;
      readonly text: string;
      readonly tone?: 'lead' | 'soft';
    }
  | { readonly kind: 'list'; readonly id: string; readonly items: readonly string[] }
  | { readonly kind: 'steps'; readonly id: string; readonly first: number; readonly items: readonly string[] }
  | { readonly kind: 'caution'; readonly id: string; readonly danger: Danger; readonly text: string }
  | { readonly kind: 'figures'; readonly id: string; readonly figures: readonly KeyFigure[] }
  | {
      readonly kind: 'table';
      readonly id: string;
      readonly caption: string;
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly string[])[];
      /** Rows that are filled in by hand, and so want room. */
      readonly roomy?: boolean;
      /** A last row that sums up. */
      readonly foot?: readonly string[];
    }
  | DrawingBlock
  | {
      readonly kind: 'photographs';
      readonly id: string;
      readonly shown: readonly {
        /** Key into the document's `photographs`. */
        readonly photograph: string;
        readonly caption: string;
      }[];
    }
  /** Lines to be filled in by hand. */
  | { readonly kind: 'blanks'; readonly id: string; readonly labels: readonly string[] };

/** A photograph as it is published. */
export interface Photograph {
  readonly mediaType: 'image/jpeg' | 'image/png';
  /** Its bytes, in base 64. */
  readonly base64: string;
}

/** What leaves the workshop, before it is given a form: the same for paper, page and text. */
export interface Document {
  /** Short name, which its files bear: `sheet`, `build`. */
  readonly id: string;
  readonly title: string;
  readonly subtitle: string;
  /** What it says in a line or two, where it is listed or shared. */
  readonly description: string;
  /** BCP 47. */
  readonly language: string;
  readonly direction: 'ltr' | 'rtl';
  /** At the foot of every page. */
  readonly foot: string;
  readonly blocks: readonly Block[];
  /** SVG documents by the keys that blocks name. */
  readonly drawings: Readonly<Record<string, string>>;
  /** Photographs by the keys that blocks name. */
  readonly photographs?: Readonly<Record<string, Photograph>>;
}
