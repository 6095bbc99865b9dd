import type { JobAtWork } from '../jobAtWork.ts';
import { LaterPacking } from './Repack.tsx';

/** What was built in the end. */
export function AsLeft({ work }: { readonly work: JobAtWork }) {
  return <LaterPacking work={work} field="asLeft" name="As left" />;
}
