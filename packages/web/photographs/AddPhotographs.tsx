import { useRef } from 'react';

interface AddProps {
  readonly add: (files: readonly File[]) => void;
}

interface PickerProps extends AddProps {
  readonly says: string;
  /** Takes one from the phone's camera instead of files. */
  readonly camera?: boolean;
}

/** A button that opens the camera, or the files, of the device. */
function Picker({ says, camera = false, add }: PickerProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className={camera ? 'main' : ''} onClick={() => input.current?.click()}>
        {says}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept="image/*"
        aria-label={says}
        multiple={!camera}
        {...(camera ? { capture: 'environment' as const } : {})}
        onChange={({ target }) => {
          add([...(target.files ?? [])]);
          // The same picture may be chosen again.
          target.value = '';
        }}
      />
    </>
  );
}

/** New photographs, from the camera or from files. */
export function AddPhotographs({ add }: AddProps) {
  return (
    <div className="buttons noprint">
      <Picker says="Take a photograph" camera add={add} />
      <Picker says="Add pictures from files" add={add} />
    </div>
  );
}
