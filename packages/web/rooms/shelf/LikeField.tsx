import { media as catalogue } from '@fettle/engine/catalogue/media.ts';
import { stages } from '@fettle/engine/model/medium.ts';
import { Framed } from '../../forms/Framed.tsx';

/** Which medium of the catalogue an own one is most like. */
export function LikeField({
  like,
  of,
  choose,
}: {
  readonly like: string;
  readonly of?: string;
  readonly choose: (like: string) => void;
}) {
  return (
    <Framed
      name="Most like"
      {...(of === undefined ? {} : { of })}
      how="Its figures stand wherever you state none."
    >
      {(input) => (
        <select {...input} value={like} onChange={({ target }) => choose(target.value)}>
          {stages.map((stage) => (
            <optgroup key={stage} label={stage}>
              {Object.values(catalogue)
                .filter((medium) => medium.stage === stage)
                .map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
            </optgroup>
          ))}
        </select>
      )}
    </Framed>
  );
}
