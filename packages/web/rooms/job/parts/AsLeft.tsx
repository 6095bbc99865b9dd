import type { JobAtWork } from '../jobAtWork.ts';
import { Packing } from './Repack.tsx';

/** What was built in the end. */
export function AsLeft({ work }: { readonly work: JobAtWork }) {
  return <Packing work={work} field="asLeft" name="As left" />;
}
