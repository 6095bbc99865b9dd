import { said } from '../wording/said.ts';
import { holdAgainstOurs } from './againstOurs.ts';
import { type Computed, type Holding, holding } from './holding.ts';
import { holdAgainstEarlier, holdPairs } from './pairs.ts';
import type { Claim } from './readClaims.ts';

function notChecked(claim: Claim): Holding {
  const { quantities } = claim;
  const asked = quantities.find((each) => each.asks !== undefined);
  const nothing = said(quantities.length === 0 ? 'claim.no-quantity' : 'claim.nothing-to-hold');
  const held = holding(claim, { verdict: 'not-checked', said: asked?.asksSaid ?? nothing });
  // The reader of quantities asks more exactly, in English alone.
  return asked?.asks === undefined ? held : { ...held, detail: asked.asks };
}

/**
 * Holds a maker's statements against themselves, each other and what was measured or computed.
 *
 * A quantity given twice in one statement, or in two statements on one subject and under the same conditions, must
 * agree within the rounding of what is written. Ours meets a claim within a tenth (`claimTolerance`), a
 * flow also within the doubt of ours. An area above
 * 3 m² per litre is explained as one that bacteria cannot use.
 *
 * @returns at least one entry for each statement, in their order
 */
export function holdClaims(request: {
  readonly claims: readonly Claim[];
  readonly computed: Computed;
}): readonly Holding[] {
  const { claims, computed } = request;
  return claims.flatMap((claim, at) => {
    const held = [
      ...holdPairs(claim),
      ...holdAgainstEarlier(claim, claims.slice(0, at)),
      ...holdAgainstOurs(claim, computed),
    ];
    return held.length > 0 ? held : [notChecked(claim)];
  });
}
