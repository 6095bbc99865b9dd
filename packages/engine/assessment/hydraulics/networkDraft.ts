import type { Layout } from '../../families/layout.ts';
import type { Model } from '../../model/model.ts';
import type { Fall, Link, LinkLaw } from '../../network/links.ts';
import type { HeadShare } from '../assessment.ts';
import type { Constants } from '../constants.ts';
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
  readonly constants: Constants;
  readonly links: Link[];
  readonly roles: LinkRole[];
  readonly falls: Fall[];
  readonly fixedHeadsM: Record<string, number>;
}

/** A loss by its law, so many times as great. */
export const scaledLoss = <Law extends LinkLaw>(law: Law, ratio: number): Law => {
  if (ratio === 1) return law;
  if (law.kind === 'conduit') return { ...law, minorK: law.minorK * ratio };
  return 'quadratic' in law ? { ...law, linear: law.linear * ratio, quadratic: law.quadratic * ratio } : law;
};

/** Adds a link, and what it counts as where it takes a part of the pump's head. */
export const add = (draft: Draft, link: Link, role?: { part: HeadShare['part']; place: string }): void => {
  draft.links.push(link);
  if (role) draft.roles.push({ link: link.id, ...role });
};
