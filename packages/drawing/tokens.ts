/**
 * How a drawing is inked: on paper by day, in the workshop at night, in one colour for print; or as the page says that
 * it stands in, by the page's own variables, so that the same drawing follows day, night and print.
 */
export type Theme = 'light' | 'dark' | 'print' | 'page';

/** The inks whose colours are known beforehand. */
export const themes = ['light', 'dark', 'print'] as const;

/** The inks of one theme. Each is told apart by shape or pattern too, never by colour alone. */
export interface Palette {
  readonly paper: string;
  /** Outlines and text. */
  readonly ink: string;
  /** Dimension lines and notes. */
  readonly softInk: string;
  /** Hatching of media: fainter than the arrows of water over it. */
  readonly hatch: string;
  /** Ribbons of water. */
  readonly water: string;
  /** Water spread over the width of a medium, under its hatching. */
  readonly waterTint: string;
  /** Water that misses media, and what is wrong. */
  readonly fault: string;
}

export const palettes: Readonly<Record<Theme, Palette>> = {
  light: {
    paper: '#fbf8f0',
    ink: '#22272c',
    softInk: '#5c6064',
    hatch: '#72777a',
    water: '#17708e',
    waterTint: '#d2e0de',
    fault: '#a8361a',
  },
  dark: {
    paper: '#171b1f',
    ink: '#ece7da',
    softInk: '#a6a89f',
    hatch: '#8f938d',
    water: '#58b9d6',
    waterTint: '#243b44',
    fault: '#ff9474',
  },
  print: {
    paper: '#ffffff',
    ink: '#000000',
    softInk: '#4a4a4a',
    hatch: '#7a7a7a',
    water: '#4c4c4c',
    waterTint: '#e2e2e2',
    fault: '#000000',
  },
  page: {
    paper: 'var(--drawn-paper)',
    ink: 'var(--drawn-ink)',
    softInk: 'var(--drawn-softInk)',
    hatch: 'var(--drawn-hatch)',
    water: 'var(--drawn-water)',
    waterTint: 'var(--drawn-waterTint)',
    fault: 'var(--drawn-fault)',
  },
};

/** Sizes on the sheet in millimetres. At 358 CSS pixels of width the text still stands 11 pixels high. */
export const sizes = {
  sheetWidth: 100,
  margin: 3,
  /** Tallest section. */
  sectionHeight: 118,
  text: 3.2,
  title: 4.3,
  lineHeight: 4.6,
  wall: 2,
  thickLine: 0.45,
  line: 0.3,
  thinLine: 0.2,
  /** Widest ribbon: the whole flow. */
  ribbon: 4,
  tagWidth: 8.6,
  tagHeight: 5,
  /** Lane beside the section for tags and shares that do not fit inside. */
  labelLane: 13,
  dimensionLane: 15.5,
  swatchWidth: 9,
} as const;

/** First the face of printed text, so that a drawing on paper is set like the words round it; on a screen the page decides. */
export const fontFamily = "'IBM Plex Sans', 'DejaVu Sans', Verdana, 'Segoe UI', system-ui, sans-serif";
