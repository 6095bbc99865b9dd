import { handlingKind, worksInTank } from '@fettle/engine/planning/handling.ts';
import type { Writer } from './writer.ts';

/** How a flow is taken: in a vessel held under the outlet, or in a bag over an outlet that is under water. */
export const flowWay = ({ source }: Pick<Writer, 'source'>): 'vessel' | 'bag' =>
  worksInTank(handlingKind(source.found)) ? 'bag' : 'vessel';
