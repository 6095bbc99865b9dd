import type { DirtDrawn } from '../computing/assessed.ts';
import { Drawn } from '../drawing/Drawn.tsx';

/** How dirt comes into a packing: small dated sections, and what they show in a sentence. */
export function DirtRow({ dirt, name }: { readonly dirt: DirtDrawn; readonly name: string }) {
  return (
    <section className="dirt" aria-label={`Dirt over time, ${name}`}>
      <h3>Dirt over time, {name.toLowerCase()}</h3>
      <figure className="section">
        <Drawn svg={dirt.drawing} />
      </figure>
      <p>{dirt.says}</p>
      <p className="soft">
        At the tank’s feed, stated or estimated, from clean beds, without a rinse in between. Times are known
        within a factor of three.
      </p>
    </section>
  );
}
