import type { OwnerLink } from '@fettle/store/contract/people.ts';
import { wrap } from './layout.ts';
import { momentText } from './moments.ts';

/** Whether a link still leads somewhere, and until when. */
const stateOf = ({ endsAt, withdrawnAt }: OwnerLink, now: Date): string => {
  if (withdrawnAt !== undefined) return `withdrawn ${momentText(withdrawnAt)}`;
  if (endsAt === undefined) return 'without end';
  return `${new Date(endsAt) > now ? 'until' : 'ended'} ${momentText(endsAt)}`;
};

/** A link on a line of its own, by the id that names it; never the secret in it. */
export const ownerLinkLine = (link: OwnerLink, now: Date): string =>
  wrap(`  ${link.id}  made ${momentText(link.madeAt)} by ${link.madeBy}, ${stateOf(link, now)}`, 4);
