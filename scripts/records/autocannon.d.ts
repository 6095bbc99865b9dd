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

  /** A run: it resolves when it has ended, and tells of each answer and of each request without one. */
  export interface Run extends PromiseLike<unknown> {
    on(
      event: 'response',
      hear: (client: unknown, status: number, bytes: number, milliseconds: number) => void,
    ): this;
    on(event: 'reqError', hear: (error: unknown) => void): this;
  }

  export default function autocannon(options: LoadOptions): Run;
}
