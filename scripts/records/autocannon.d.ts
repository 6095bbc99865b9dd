/** As much of the load generator as we use; it carries no types of its own. */
declare module 'autocannon' {
  export interface LoadRequest {
    method: string;
    path: string;
    headers: Record<string, string>;
    body?: string;
  }

  export interface LoadContext {
    job?: number;
  }

  export interface LoadOptions {
    readonly url: string;
    readonly connections: number;
    /** In seconds. */
    readonly duration: number;
    /** Requests a second over all connections. */
    readonly overallRate: number;
    readonly ignoreCoordinatedOmission: boolean;
    readonly timeout?: number;
    readonly requests: readonly {
      readonly setupRequest: (request: LoadRequest, context: LoadContext) => LoadRequest;
      readonly onResponse?: (
        status: number,
        body: string,
        context: LoadContext,
        headers: Readonly<Record<string, string>>,
      ) => void;
    }[];
  }

  export interface LoadResult {
    /** In milliseconds. */
    readonly latency: Readonly<Record<'p50' | 'p90' | 'p99' | 'max' | 'average', number>>;
    readonly requests: { readonly total: number; readonly average: number };
    readonly errors: number;
    readonly timeouts: number;
    readonly statusCodeStats: Readonly<Record<string, { readonly count: number }>>;
  }

  /** What a run gives before its latencies are put together. */
  export interface RawResult {
    readonly latencies: unknown;
  }

  function autocannon(options: LoadOptions & { readonly skipAggregateResult: true }): Promise<RawResult>;
  namespace autocannon {
    /** Puts the latencies of several runs together. */
    function aggregateResult(results: readonly RawResult[], options: { readonly url: string }): LoadResult;
  }

  export default autocannon;
}
