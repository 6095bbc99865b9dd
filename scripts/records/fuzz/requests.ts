import type { Chance } from '../chance.ts';
import { inventedPicture } from '../inventedPictures.ts';
import type { Endpoint } from './endpoints.ts';
import {
  anyBytes,
  hostileBodies,
  hostileNames,
  hostilePictures,
  hostileTexts,
  mutatedBytes,
  mutatedData,
  mutatedText,
} from './hostile.ts';

/** One request as it will be sent. */
export interface FuzzRequest {
  readonly endpoint: Endpoint;
  readonly method: string;
  /** With its query. */
  readonly address: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: Buffer | string;
}

/** What there is in the records to hit upon. */
export interface Targets {
  readonly numbers: readonly number[];
  /** Ids of work, links and tokens, whatever they are of. */
  readonly ids: readonly string[];
  readonly pictures: readonly { readonly job: number; readonly id: string }[];
  /** Newest revision of each job. */
  readonly revisions: ReadonlyMap<number, number>;
  /** Texts of jobs, YAML, and the documents of jobs. */
  readonly jobTexts: readonly string[];
  readonly jobs: readonly unknown[];
}

const plausibleBodies: readonly unknown[] = [
  { to: 1 },
  { budget: 15, favour: 'flow', cap: 50, count: 3 },
  { budget: '15 EUR', cap: 20 },
  { kind: 'jug-flow', day: '2026-11-05', value: '480 L/h', note: 'as before' },
  { kind: 'nitrite', day: '2026-11-06', value: '0.25 mg/L', note: '' },
  { caption: 'the seal' },
  { media: [{ medium: 'foam-20ppi', price: '4 EUR/L' }] },
  { currency: 'EUR', tariff: '0.29 EUR/kWh' },
  { name: 'yevva', role: 'helper', password: 'a long enough pass phrase' },
  { role: 'reader' },
  { endsAt: '2027-01-01' },
  { days: 30 },
];

const accepted = [
  '*/*',
  'application/json',
  'application/yaml',
  'text/html',
  'image/svg+xml',
  '',
  'a/b;q=9',
  ',',
];

function filledPath(path: string, targets: Targets, chance: Chance): { path: string; number: number } {
  const picture = path.includes('/attachments/') ? chance.among(targets.pictures) : undefined;
  const number = picture?.job ?? chance.among(targets.numbers);
  const filled = path.replace(/\{(\w+)\}/g, (_, name: string) => {
    if (chance.share() < 0.25) return chance.among(hostileNames);
    if (name === 'number') return String(number);
    if (name === 'revision') return String(chance.between(1, 3));
    if (name === 'name') return 'shelf';
    if (picture !== undefined) return picture.id;
    return targets.ids.length > 0 ? chance.among(targets.ids) : 'abcdefgh12345678';
  });
  return { path: filled, number };
}

function query(endpoint: Endpoint, chance: Chance): string {
  const names = [...endpoint.query, ...(chance.share() < 0.05 ? ['__proto__', 'count', 'x[]'] : [])];
  const parts = names
    .filter(() => chance.share() < 0.35)
    .map((name) => {
      const usual = ['1', '20', 'drum', 'planned', 'urgent', 'promised', '2026-11-05', 'fields', 'yes'];
      const value = chance.among(chance.share() < 0.5 ? hostileTexts : usual);
      return `${encodeURIComponent(name)}=${chance.share() < 0.05 ? '%E0%A4' : encoded(value)}`;
    });
  return parts.length > 0 ? `?${parts.join('&')}` : '';
}

/** Percent signs for all that needs them; a half of a character as its three bytes, which no text may hold. */
const encoded = (text: string): string => {
  try {
    return encodeURIComponent(text);
  } catch {
    return '%ED%A0%80';
  }
};

function ifMatch(number: number, targets: Targets, chance: Chance): Readonly<Record<string, string>> {
  const right = `"${targets.revisions.get(number) ?? 0}"`;
  if (chance.share() < 0.6) return { 'If-Match': right };
  const kinds = ['"1"', '"0"', '*', 'W/"1"', '1', '""', '"', '"1", "2"', '"9999999999999999999"'];
  if (chance.share() < 0.15) return {};
  return { 'If-Match': chance.share() < 0.1 ? 'x'.repeat(3000) : chance.among(kinds) };
}

function body(
  { endpoint, type }: { readonly endpoint: Endpoint; readonly type: string },
  targets: Targets,
  chance: Chance,
): Buffer | string {
  const kind = chance.share();
  if (kind < 0.15) return chance.among(hostileBodies);
  if (kind < 0.2) return anyBytes(400, chance);
  if (type.startsWith('image/') || type === '*/*') {
    if (kind < 0.4) return chance.among(hostilePictures);
    return mutatedBytes(inventedPicture(chance.between(1, 9)), chance);
  }
  if (type.includes('form')) {
    const names = ['name', 'password', 'kind', 'day', 'value', 'note', '__proto__'];
    return names.map((name) => `${name}=${encoded(chance.among(hostileTexts))}`).join('&');
  }
  const isJob = /\/jobs(?:\/\{number\})?$/.test(endpoint.path);
  if (isJob && type.includes('yaml')) return mutatedText(chance.among(targets.jobTexts), chance);
  const value = isJob ? chance.among(targets.jobs) : chance.among(plausibleBodies);
  if (kind < 0.45) return mutatedText(JSON.stringify(value), chance);
  return JSON.stringify(kind < 0.7 ? mutatedData(value, chance) : value);
}

const otherTypes = [
  '',
  'text/plain',
  'application/xml',
  'multipart/form-data; boundary=x',
  'application/json; charset=utf-16',
];

/** A request by chance: mostly near to what is right, never to be relied on. */
export function inventedRequest(
  endpoints: readonly Endpoint[],
  targets: Targets,
  chance: Chance,
): FuzzRequest {
  const endpoint = chance.among(endpoints);
  const { path, number } = filledPath(endpoint.path, targets, chance);
  const stray = chance.share() < 0.04;
  const method = stray
    ? chance.among(['GET', 'PUT', 'POST', 'PATCH', 'DELETE', 'OPTIONS', 'HEAD'])
    : endpoint.method;
  const takes = chance.share() < 0.08 ? otherTypes : endpoint.takes;
  const declared = takes.length > 0 ? chance.among(takes) : '';
  const hasBody = method !== 'GET' && method !== 'HEAD' && declared !== '';
  const type = declared.replace('image/*', 'image/png').replace('*/*', 'image/jpeg');
  return {
    endpoint,
    method,
    address: path + query(endpoint, chance),
    headers: {
      ...(chance.share() < 0.2 ? { Accept: chance.among(accepted) } : {}),
      ...(hasBody && type !== '' ? { 'Content-Type': type } : {}),
      ...(method === 'GET' || method === 'HEAD' ? {} : ifMatch(number, targets, chance)),
      ...(chance.share() < 0.03 ? { 'If-None-Match': chance.among(['"1"', '*', '"', 'W/"1"']) } : {}),
      ...(chance.share() < 0.03 ? { Range: chance.among(['bytes=0-0', 'bytes=9-1', 'bytes=-', 'x']) } : {}),
      ...(chance.share() < 0.03
        ? { Cookie: chance.among(['fettle=x', '=', ';;;', `a=${'b'.repeat(2000)}`]) }
        : {}),
    },
    ...(hasBody ? { body: body({ endpoint, type: declared }, targets, chance) } : {}),
  };
}
