import { hatchId, hatchings } from '@fettle/drawing/hatching.ts';
import { palettes } from '@fettle/drawing/tokens.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';

/** How a medium looks in section, as the drawings hatch it; 11 mm of it at their scale. */
export function Hatch({ medium }: { readonly medium: Medium }) {
  const prefix = `shelf-${medium.id.replaceAll('.', '-')}`;
  const markup = { __html: hatchings([medium], { palette: palettes.page, prefix }) };
  return (
    <svg className="hatch" viewBox="0 0 11 11" aria-hidden="true">
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing code, which holds no words of others */}
      <g dangerouslySetInnerHTML={markup} />
      <rect width="11" height="11" fill={`url(#${hatchId(medium, prefix)})`} />
    </svg>
  );
}
