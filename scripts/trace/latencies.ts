interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly ts: number;
  readonly pid: number;
  readonly id2?: { readonly local?: string };
  readonly args?: { readonly event_latency?: { readonly event_type?: string } };
}

/**
 * How long the input events of a kind took in a browser's trace, from the hand to the frame on which they are seen, ms.
 * @param kind as the trace names it: `MOUSE_DRAGGED`
 */
export function latenciesIn(trace: Buffer, kind: string): readonly number[] {
  const { traceEvents }: { traceEvents: readonly TraceEvent[] } = JSON.parse(trace.toString());
  const begun = new Map<string, TraceEvent>();
  const took: number[] = [];
  for (const event of traceEvents) {
    if (event.name !== 'EventLatency') continue;
    const key = `${event.pid} ${event.id2?.local}`;
    const begin = begun.get(key);
    if (event.ph === 'b') begun.set(key, event);
    else if (event.ph === 'e' && begin !== undefined) {
      begun.delete(key);
      if (begin.args?.event_latency?.event_type === kind) took.push((event.ts - begin.ts) / 1000);
    }
  }
  return took;
}
