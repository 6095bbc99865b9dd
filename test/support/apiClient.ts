import { Ajv2020 } from 'ajv/dist/2020.js';
import { type OpenAPIClient, OpenAPIClientAxios, type OpenAPIV3_1 } from 'openapi-client-axios';

/** What an operation answered. */
export interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  // What it is depends on the operation; that it fits its schema was checked.
  readonly data: Told;
}

/** The members of answers that tests look into. */
export interface Told {
  readonly [member: string]: unknown;
  readonly number: number;
  readonly revision: number;
  readonly id: string;
  readonly state: string;
  readonly code: string;
}

/** What is sent with an operation. */
export interface Sent {
  readonly parameters?: Readonly<Record<string, string | number>>;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
  /** Whether the answer is wanted as it came, unread. */
  readonly raw?: boolean;
}

/** A client that is made from the server's own description and nothing else. */
export interface ApiClient {
  /** Names of all operations. */
  readonly operations: readonly string[];
  /**
   * Calls an operation by its name.
   * @throws Error where the answer does not fit what the description says of it
   */
  call(operation: string, sent?: Sent): Promise<Answer>;
  /** Operations that were called so far. */
  readonly called: ReadonlySet<string>;
}

const pointer = (...steps: readonly string[]): string =>
  steps.map((step) => `/${step.replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

/** Throws where an answer is of a status, type or shape that the description does not tell. */
const checker = (description: OpenAPIV3_1.Document, client: OpenAPIClient) => {
  const validator = new Ajv2020({ allErrors: true, strict: false, validateFormats: false });
  validator.addSchema(description, 'api');
  return (operation: string, { status, headers, data }: Answer, isRaw: boolean): void => {
    const found = client.api.getOperation(operation);
    if (found === undefined) throw new Error(`${operation} is not described`);
    const at = ['paths', found.path, found.method, 'responses', String(status)];
    const told = found.responses?.[String(status)];
    if (told === undefined || '$ref' in told)
      throw new Error(`${operation} answered ${status}, which is not described`);
    const [type = ''] = (headers['content-type'] ?? '').split(';');
    if (told.content === undefined) return;
    if (!(type in told.content))
      throw new Error(`${operation} answered ${status} as ${type}, which is not described`);
    if (isRaw || !type.endsWith('json')) return;
    const validate = validator.getSchema(`api#${pointer(...at, 'content', type, 'schema')}`);
    if (validate === undefined) throw new Error(`${operation} ${status} has no schema`);
    if (!validate(data)) throw new Error(`${operation} ${status}: ${validator.errorsText(validate.errors)}`);
  };
};

/** Asks a server for its description and makes a client from it. */
export const apiClient = async (address: string): Promise<ApiClient> => {
  const description: OpenAPIV3_1.Document = JSON.parse(
    await (await fetch(`${address}/api/openapi.json`)).text(),
  );
  const api = new OpenAPIClientAxios({
    definition: structuredClone(description),
    axiosConfigDefaults: { baseURL: address, validateStatus: () => true },
  });
  const client = await api.init();
  const check = checker(description, client);
  const called = new Set<string>();
  return {
    operations: api.getOperations().map(({ operationId }) => operationId ?? ''),
    called,
    async call(operation, { parameters = {}, body, headers = {}, raw = false } = {}) {
      const method = client[operation];
      if (method === undefined) throw new Error(`no operation is called ${operation}`);
      called.add(operation);
      const config = { headers, ...(raw ? { responseType: 'arraybuffer' as const } : {}) };
      const answered = await method(parameters, body, config);
      const answer: Answer = {
        status: answered.status,
        headers: Object.fromEntries(
          Object.entries(answered.headers).map(([name, value]) => [name.toLowerCase(), String(value)]),
        ),
        data: answered.data,
      };
      check(operation, answer, raw);
      return answer;
    },
  };
};
