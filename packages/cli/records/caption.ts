import { mostCaption } from '@fettle/store/contract/attachments.ts';
import { badInput } from '../exits.ts';

/**
 * Demands a caption that is taken whole.
 * @throws BadInput
 */
export const demandShort = (caption: string): void => {
  if (caption.length <= mostCaption) return;
  throw badInput({
    code: 'too-long',
    path: 'caption',
    says: `The caption has ${caption.length} characters; at most ${mostCaption} are allowed.`,
  });
};
