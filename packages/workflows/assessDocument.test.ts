import { fullJob } from '@fettle/job/testing/fullJob.ts';
import { describe, expect, it } from 'vitest';
import { assessDocument } from './assessDocument.ts';

const filling = (seconds: number) => ({
  kind: 'timed-volume',
  id: 'fill-as-left',
  state: 'as-left',
  volume: '5 L ± 1 %',
  times: [`${seconds} s`, `${seconds} s`, `${seconds} s`],
});

const assessed = (state: 'as-found' | 'planned' | 'as-left', seconds = 30) => {
  const outcome = assessDocument({ document: { ...fullJob, tests: [filling(seconds)] } }, { state });
  if (!outcome.ok) throw new Error(outcome.problems.map(({ says }) => says).join(' '));
  return outcome.result;
};

describe('a filling that was timed after the re-pack', () => {
  const clean = assessed('as-left').dutyPoint.flow.value;
  const secondsAt = (flowLPerH: number): number => 18_000 / flowLPerH;

  it('proves the packing that was built: it is held against its clean flow', () => {
    const { tests, findings } = assessed('as-left', secondsAt(clean));
    expect(tests).toHaveLength(1);
    expect(tests[0]).toMatchObject({ verdict: 'agrees', computed: { value: clean } });
    expect(findings.map(({ id }) => id)).not.toContain('measured-differs');
  });

  it('that gives half of what was computed is a finding', () => {
    const { tests, findings } = assessed('as-left', secondsAt(clean / 2));
    expect(tests[0]?.verdict).toBe('differs');
    expect(findings.find(({ id }) => id === 'measured-differs')?.place).toBe('fill-as-left');
  });

  it('says nothing of the packing that was found', () => {
    const { tests, findings } = assessed('as-found', secondsAt(clean / 2));
    expect(tests[0]?.verdict).toBe('not-compared');
    expect(findings.map(({ id }) => id)).not.toContain('measured-differs');
  });
});

describe('an assessment', () => {
  it.each(['as-found', 'planned', 'as-left'] as const)('says that it is of the filter %s', (state) => {
    expect(assessed(state).state).toBe(state);
  });
});
