/** One thing that is wrong with a field, as the server tells it. */
export interface FieldProblem {
  readonly code: string;
  readonly path: string;
  readonly says: string;
  readonly allowed?: string;
}

/** Problem details (RFC 9457) with the members that the server adds. */
export interface ProblemDetails {
  readonly status: number;
  readonly title: string;
  readonly detail: string;
  readonly code: string;
  readonly problems?: readonly FieldProblem[];
  readonly [more: string]: unknown;
}

/** The server answered, and would not do it. */
export class Refused extends Error {
  readonly problem: ProblemDetails;

  constructor(problem: ProblemDetails) {
    super(problem.detail);
    this.name = 'Refused';
    this.problem = problem;
  }
}

/** No answer came: no network, or no server. */
export class Unreached extends Error {
  constructor(cause: unknown) {
    super('The server cannot be reached.', { cause });
    this.name = 'Unreached';
  }
}

export interface Answer<Body> {
  readonly body: Body;
  /** Empty where the answer has none. */
  readonly etag: string;
  readonly status: number;
}

/** What a request sends beside its address. */
export interface Sends {
  readonly method?: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** Plain data, sent as JSON. */
  readonly json?: unknown;
  /** A file, sent as it is. */
  readonly file?: Blob;
  readonly ifMatch?: string;
  /** Goes out even if the page is being left; at most 64 KiB. */
  readonly keepAlive?: boolean;
  readonly signal?: AbortSignal;
}

const headersOf = ({ json, file, ifMatch }: Sends): Record<string, string> => ({
  Accept: 'application/json',
  ...(json === undefined ? {} : { 'Content-Type': 'application/json' }),
  ...(file === undefined ? {} : { 'Content-Type': file.type }),
  ...(ifMatch === undefined ? {} : { 'If-Match': ifMatch }),
});

const bodyOf = ({ json, file }: Sends): BodyInit | undefined =>
  json === undefined ? file : JSON.stringify(json);

const send = async (path: string, sends: Sends): Promise<Response> => {
  const body = bodyOf(sends);
  try {
    return await fetch(path, {
      method: sends.method ?? 'GET',
      headers: headersOf(sends),
      credentials: 'same-origin',
      keepalive: sends.keepAlive ?? false,
      ...(body === undefined ? {} : { body }),
      ...(sends.signal === undefined ? {} : { signal: sends.signal }),
    });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') throw error;
    throw new Unreached(error);
  }
};

const problemOf = async (response: Response): Promise<ProblemDetails> => {
  const told: unknown = await response.json().catch(() => undefined);
  const { status, statusText } = response;
  const usual = { status, title: statusText, detail: `The server answered ${status}.`, code: 'not-told' };
  return typeof told === 'object' && told !== null ? { ...usual, ...told } : usual;
};

/**
 * Asks the server.
 *
 * @param path address from the root, with its query
 * @returns the answer's body as the API describes it
 * @throws Refused with problem details; Unreached where no answer came
 */
export async function request<Body>(path: string, sends: Sends = {}): Promise<Answer<Body>> {
  const response = await send(path, sends);
  if (!response.ok) throw new Refused(await problemOf(response));
  const isJson = response.headers.get('Content-Type')?.includes('json') ?? false;
  // The API's description, which the server's own tests hold it to, says what the body is.
  const body = (isJson ? await response.json() : await response.text()) as Body;
  return { body, etag: response.headers.get('ETag') ?? '', status: response.status };
}
