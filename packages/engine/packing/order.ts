import { throatM } from '../catalogue/throat.ts';
import type { Medium } from '../model/medium.ts';
import type { Portion } from './arrange.ts';

type Media = Readonly<Record<string, Medium>>;

const STAGE_RANK = { mechanical: 0, biological: 1, chemical: 2 } as const;

/** Pore openings this close, as a ratio, count as equally fine. */
export const EQUALLY_FINE_RATIO = 1.15;

const stageRank = (portion: Portion, media: Media): number => STAGE_RANK[media[portion.medium]!.stage];

/** Trade order: mechanical, biological, chemical; coarse before fine among the mechanical. */
export const tradeOrder = (portions: readonly Portion[], media: Media): Portion[] =>
  coarseFirst(
    portions.toSorted((a, b) => stageRank(a, media) - stageRank(b, media)),
    media,
  );

/** The same order of stages, with the mechanical portions changing places among themselves: coarse first. */
export const coarseFirst = (portions: readonly Portion[], media: Media): Portion[] => {
  const mechanical = portions
    .filter((portion) => media[portion.medium]!.stage === 'mechanical')
    .sort((a, b) => throatM(media[b.medium]!) - throatM(media[a.medium]!));
  return portions.map((portion) =>
    media[portion.medium]!.stage === 'mechanical' ? mechanical.shift()! : portion,
  );
};

/** Mechanical portions moved ahead of biological ones; chemical ones keep their places at the end or between. */
export const mechanicalFirst = (portions: readonly Portion[], media: Media): Portion[] => [
  ...portions.filter((portion) => media[portion.medium]!.stage === 'mechanical'),
  ...portions.filter((portion) => media[portion.medium]!.stage !== 'mechanical'),
];

/** Chemical portions moved behind all others. */
export const chemicalLast = (portions: readonly Portion[], media: Media): Portion[] => [
  ...portions.filter((portion) => media[portion.medium]!.stage !== 'chemical'),
  ...portions.filter((portion) => media[portion.medium]!.stage === 'chemical'),
];

/** Whether a finer mechanical portion stands ahead of a clearly coarser one. */
export const fineBeforeCoarse = (
  portions: readonly Portion[],
  media: Media,
): { readonly fine: Portion; readonly coarse: Portion } | undefined => {
  const mechanical = portions.filter((portion) => media[portion.medium]!.stage === 'mechanical');
  for (const [i, fine] of mechanical.entries()) {
    const limit = EQUALLY_FINE_RATIO * throatM(media[fine.medium]!);
    const coarse = mechanical.slice(i + 1).find((later) => throatM(media[later.medium]!) > limit);
    if (coarse) return { fine, coarse };
  }
  return undefined;
};

/** The first portion of a stage that stands ahead of one of another stage. */
export const stageBefore = (
  portions: readonly Portion[],
  media: Media,
  stages: { readonly early: Medium['stage']; readonly late: Medium['stage'] },
): { readonly early: Portion; readonly late: Portion } | undefined => {
  const early = portions.findIndex((portion) => media[portion.medium]!.stage === stages.early);
  if (early < 0) return undefined;
  const late = portions.slice(early + 1).find((portion) => media[portion.medium]!.stage === stages.late);
  return late ? { early: portions[early]!, late } : undefined;
};

/** Whether portions stand in the trade's order: mechanical, biological, chemical; coarse before fine. */
export const followsTrade = (portions: readonly Portion[], media: Media): boolean =>
  !(
    stageBefore(portions, media, { early: 'biological', late: 'mechanical' }) ??
    stageBefore(portions, media, { early: 'chemical', late: 'mechanical' }) ??
    stageBefore(portions, media, { early: 'chemical', late: 'biological' }) ??
    fineBeforeCoarse(portions, media)
  );
