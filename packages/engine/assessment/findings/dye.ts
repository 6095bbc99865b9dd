import { quantity } from '../../wording/facts.ts';
import { compareDye, type DyeComparison } from '../residence/dye.ts';
import { COMPUTED_DOUBT } from './measured.ts';
import { type FindingRule, type Sighting, saysAndCure } from './rule.ts';

/** How much less than computed a time was measured, beyond both doubts, s; 0 or less where it was not. */
const shortOf = ({ measured, doubt, computed }: DyeComparison, key: 't10S' | 'meanS'): number =>
  computed === undefined ? 0 : computed[key] * (1 - COMPUTED_DOUBT) - (measured[key] + doubt[key]);

/** Dye came sooner than the map lets it: there is a way past the media that is not on the map. */
export const dyeEarly: FindingRule = {
  id: 'dye-early',
  look({ model }): readonly Sighting[] {
    return compareDye(model).flatMap((one) => {
      if (one.computed === undefined || shortOf(one, 't10S') <= 0) return [];
      const evidence = {
        measured: quantity(one.measured.t10S, 'time'),
        computed: quantity(one.computed.t10S, 'time'),
      };
      return [{ place: one.test.id, ...saysAndCure('dye-early', evidence), severity: 'marked' }];
    });
  },
};

/** Dye stayed for less time than the filter's water takes: part of it stands still. */
export const dyeDeadRoom: FindingRule = {
  id: 'dye-dead-room',
  look({ model }): readonly Sighting[] {
    return compareDye(model).flatMap((one) => {
      const { computed, deadShare, isCutOff } = one;
      // A curve that ends too soon makes the mean short by itself.
      if (computed === undefined || deadShare === undefined || isCutOff || shortOf(one, 'meanS') <= 0)
        return [];
      const evidence = {
        measured: quantity(one.measured.meanS, 'time'),
        computed: quantity(computed.meanS, 'time'),
        share: { share: deadShare },
      };
      return [{ place: one.test.id, ...saysAndCure('dye-dead-room', evidence), severity: 'slight' }];
    });
  },
};
