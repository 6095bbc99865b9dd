import type { Layout } from '../../families/layout.ts';
import type { Model } from '../../model/model.ts';
import type { Fall, Link } from '../../network/links.ts';
import type { HeadShare } from '../assessment.ts';
import type { WaterState } from './water.ts';

/** What a link is, for the head budget. */
export interface LinkRole {
  readonly link: string;
  readonly part: HeadShare['part'];
  readonly place: string;
}

/** Node of the tank's surface. */
export const TANK = 'tank';

/** A network in the making, with what it is made from. */
export interface Draft {
  readonly model: Model;
  readonly layout: Layout;
  readonly water: WaterState;
  readonly links: Link[];
  readonly roles: LinkRole[];
  readonly falls: Fall[];
  readonly fixedHeadsM: Record<string, number>;
}

/** Adds a link, and what it counts as where it takes a part of the pump's head. */
export const add = (draft: Draft, link: Link, role?: { part: HeadShare['part']; place: string }): void => {
  draft.links.push(link);
  if (role) draft.roles.push({ link: link.id, ...role });
};
