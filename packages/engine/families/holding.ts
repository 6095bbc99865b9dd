import type { ComesAs } from '../model/medium.ts';

/** A basket, tray or box that water passes through: all that lies still in it. */
export const heldInBasket: readonly ComesAs[] = ['block', 'sheet', 'floss', 'grains', 'pieces', 'bagged'];
