import type { Layout } from '../../families/layout.ts';
import { comingNames, type Medium } from '../../model/medium.ts';
import type { Bed, Model } from '../../model/model.ts';
import { isMadeFor } from '../../packing/holding.ts';
import { quantity } from '../../wording/facts.ts';
import { said } from '../../wording/said.ts';
import { pieceOf } from '../hydraulics/bed.ts';
import { type FindingContext, type FindingRule, type Sighting, saysAndCure } from './rule.ts';

const DAY_S = 86_400;
/** Layers of cells or pieces below which one loose spot opens a hole (common practice, no source). */
const FEWEST_LAYERS = { foam: 5, grains: 5, hollow: 2, fibre: 0 } as const;

const mediumOf = (context: FindingContext, id: string): Medium => context.model.media[id]!;

const nameOf = ({ name }: Medium) => ({ name });

const changeBed = (model: Model, id: string, change: Partial<Bed>): Model => ({
  ...model,
  packing: Object.fromEntries(
    Object.entries(model.packing).map(([chamber, beds]) => [
      chamber,
      beds.map((bed) => (bed.id === id ? { ...bed, ...change } : bed)),
    ]),
  ),
});

const chamberArea = ({ assessment }: FindingContext, id: string): number =>
  assessment.layout.chambers.find((chamber) => chamber.id === id)!.areaM2;

/** Depth of a chamber that no bed takes up, m. */
const roomIn = ({ assessment, model }: FindingContext, id: string): number => {
  const chamber = assessment.layout.chambers.find((one) => one.id === id)!;
  return (model.packing[id] ?? []).reduce((room, { depthM }) => room - depthM, chamber.depthM);
};

/** A bed is only a few pieces deep. */
export const bedTooShallow: FindingRule = {
  id: 'bed-too-shallow',
  look(context): readonly Sighting[] {
    const { assessment, model } = context;
    return assessment.beds.flatMap((bed): Sighting[] => {
      const medium = mediumOf(context, bed.medium);
      const layers = bed.depthM / pieceOf(medium);
      const fewest = FEWEST_LAYERS[medium.resistance.law];
      if (layers >= fewest) return [];
      const cleanSpeed = assessment.dutyPoint.flowM3PerS / chamberArea(context, bed.chamber);
      const says = said('fault.bed-too-shallow', {
        medium: nameOf(medium),
        depth: quantity(bed.depthM, 'length'),
        speed: quantity(cleanSpeed, 'velocity'),
        piece: quantity(pieceOf(medium), 'length'),
        fewest,
      });
      const depthM = 2 * fewest * pieceOf(medium);
      if (depthM > bed.depthM + roomIn(context, bed.chamber)) {
        const cure = said('cure.bed-too-shallow.no-room');
        return [{ place: bed.id, says, cure, severity: 'note' }];
      }
      const cure = said('cure.bed-too-shallow', { depth: quantity(depthM, 'length') });
      return [{ place: bed.id, says, cure, cured: changeBed(model, bed.id, { depthM }) }];
    });
  },
};

/** A bed lies where the chamber is made for other media. */
export const outOfPlace: FindingRule = {
  id: 'media-out-of-place',
  look({ model, assessment }): readonly Sighting[] {
    return assessment.layout.chambers.flatMap((chamber) =>
      (model.packing[chamber.id] ?? []).flatMap((bed): Sighting[] => {
        if (isMadeFor(chamber, bed, model.media)) return [];
        const evidence = {
          medium: nameOf(model.media[bed.medium]!),
          chamber: { name: chamber.label },
          holds: { all: chamber.holds.map((one) => ({ name: comingNames[one] })) },
        };
        return [{ place: bed.id, ...saysAndCure('media-out-of-place', evidence), severity: 'marked' }];
      }),
    );
  },
};

/** A chamber holds nothing. */
export const deadChamber: FindingRule = {
  id: 'dead-chamber',
  look(context): readonly Sighting[] {
    const { assessment } = context;
    return assessment.layout.chambers.flatMap((chamber) => {
      if (assessment.beds.some((bed) => bed.chamber === chamber.id)) return [];
      const evidence = {
        volume: quantity(chamber.areaM2 * chamber.depthM, 'volume'),
        chamber: { name: chamber.label },
      };
      return [{ place: chamber.id, ...saysAndCure('dead-chamber', evidence), severity: 'slight' }];
    });
  },
};

/** Replacing a medium sooner than this is often, s (our own choice). */
const OFTEN_S = 45 * DAY_S;

/** What stands in for a throw-away layer when its cost is weighed. */
const WASHABLE = 'foam-30ppi';

/** A medium has to be replaced often because it clogs. */
export const replacedOften: FindingRule = {
  id: 'replaced-often',
  look(context): readonly Sighting[] {
    const { assessment, model } = context;
    const { currency, media } = assessment.cost;
    const often = media.filter(({ because, everyS }) => because === 'clogs' && everyS <= OFTEN_S);
    return often.map(({ bed, medium, everyS, perYear }) => {
      const says = said('fault.replaced-often', {
        medium: nameOf(mediumOf(context, medium)),
        often: { spanS: everyS },
        cost: Math.round(perYear),
        currency,
      });
      // What takes something out of the water has no washable foam that does the same.
      if (mediumOf(context, medium).stage === 'chemical')
        return { place: bed, says, cure: said('cure.replaced-often.chemical'), severity: 'marked' };
      const { chamber: id } = assessment.beds.find((one) => one.id === bed)!;
      const chamber = assessment.layout.chambers.find((one) => one.id === id)!;
      if (!isMadeFor(chamber, { medium: WASHABLE }, model.media))
        return { place: bed, says, cure: said('cure.replaced-often.ahead'), severity: 'marked' };
      const cured = model.media[WASHABLE] ? { cured: changeBed(model, bed, { medium: WASHABLE }) } : {};
      return { place: bed, says, cure: said('cure.replaced-often'), ...cured };
    });
  },
};

/** The water's own limits for media, by what they take out (common practice, no source). */
const HARD_WATER_KG_PER_M3 = 0.1;
const SALTED = 1;

/** A medium does not suit the tank's water. */
export const mediaUnsuited: FindingRule = {
  id: 'media-unsuited',
  look(context): readonly Sighting[] {
    const { tank } = context.model;
    return context.assessment.beds.flatMap((bed): Sighting[] => {
      const medium = mediumOf(context, bed.medium);
      const substance = medium.removes?.substance;
      if (substance === 'ammonium' && tank.salinity > SALTED) {
        const evidence = { medium: nameOf(medium) };
        return [{ place: bed.id, ...saysAndCure('ammonium-in-salt-water', evidence), severity: 'marked' }];
      }
      if (substance === 'hardness' && tank.alkalinityKgPerM3 > HARD_WATER_KG_PER_M3) {
        const evidence = {
          medium: nameOf(medium),
          alkalinity: quantity(tank.alkalinityKgPerM3, 'alkalinity'),
        };
        return [{ place: bed.id, ...saysAndCure('softener-in-hard-water', evidence), severity: 'slight' }];
      }
      return [];
    });
  },
};

/** A chemical medium is full long before it is due to be replaced. */
export const fullEarly: FindingRule = {
  id: 'full-before-replaced',
  look(context): readonly Sighting[] {
    return context.assessment.chemical.flatMap(({ bed, lastsS, openFraction }) => {
      const state = context.assessment.beds.find(({ id }) => id === bed)!;
      const medium = mediumOf(context, state.medium);
      const due = medium.lifeS?.value ?? Number.POSITIVE_INFINITY;
      if (lastsS > 0.5 * due) return [];
      const evidence = {
        medium: nameOf(medium),
        lasts: { spanS: lastsS },
        due: { spanS: due },
        share: { share: openFraction },
      };
      return [{ place: bed, ...saysAndCure('full-before-replaced', evidence), severity: 'slight' }];
    });
  },
};

/** One chamber on a lift tube, or one that tumbles, holds one medium that catches dirt and carries bacteria alike. */
const servesBothStages = ({ chambers, liftTube }: Layout): boolean =>
  chambers.length === 1 && (liftTube !== undefined || chambers[0]!.moved !== undefined);

/** A stage is missing. */
export const stageMissing: FindingRule = {
  id: 'stage-missing',
  look({ assessment }): readonly Sighting[] {
    if (servesBothStages(assessment.layout)) return [];
    const missing = (['mechanical', 'biological'] as const).filter(
      (stage) => !assessment.beds.some((bed) => bed.stage === stage),
    );
    return missing.map((stage) => ({
      place: 'packing',
      ...saysAndCure(`no-${stage}`),
      severity: stage === 'biological' ? 'marked' : 'slight',
    }));
  },
};

/** Share of the dirt, and rate that it leaves the bacteria, from which it is worth a word (our own choice). */
const MUCH_DIRT = 0.3;
const LITTLE_LEFT = 0.7;

/** One bed catches most of what is caught and is not meant to. */
export const dirtInBiology: FindingRule = {
  id: 'dirt-in-biological-bed',
  look(context): readonly Sighting[] {
    const { beds, layout } = context.assessment;
    if (servesBothStages(layout)) return [];
    const all = beds.reduce((sum, bed) => sum + bed.dirtKg, 0);
    return beds.flatMap((bed): Sighting[] => {
      const share = all > 0 ? bed.dirtKg / all : 0;
      if (bed.stage !== 'biological' || share < MUCH_DIRT || bed.carbonFactor > LITTLE_LEFT) return [];
      const evidence = {
        medium: nameOf(mediumOf(context, bed.medium)),
        dirt: { share },
        rate: { share: bed.carbonFactor },
      };
      return [{ place: bed.id, ...saysAndCure('dirt-in-biological-bed', evidence), severity: 'slight' }];
    });
  },
};
