import type { JobAtWork } from '../jobAtWork.ts';
import { Section } from '../Section.tsx';

export function AsLeft({ work }: { readonly work: JobAtWork }) {
  return (
    <div className="part beside">
      <Section work={work} />
      <div>
        <h2>AsLeft</h2>
        {work.figures.whole?.findings.map((finding) => (
          <p key={finding.says}>{finding.says}</p>
        ))}
      </div>
    </div>
  );
}
