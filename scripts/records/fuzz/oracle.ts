/** An answer as the rules look at it. */
export interface Answer {
  readonly status: number;
  readonly type: string;
  readonly text: string;
  /** Whether the answer may have no body, as one to HEAD. */
  readonly mayBeEmpty: boolean;
}

const mayFail: ReadonlySet<number> = new Set([503, 507]);

/** One sentence on one line: begins with something, ends with a full stop or its like. */
const isSentence = (text: unknown): boolean =>
  typeof text === 'string' && text.length <= 4000 && /^\S[^\n\r]*[.!?)”"]$/.test(text);

/** What is wrong with an answer, whatever was asked; undefined where nothing is. */
export function faultOf(answer: Answer, isPage: boolean): string | undefined {
  const { status, type, text } = answer;
  if (status >= 500 && !mayFail.has(status)) return `status ${status}: ${text.slice(0, 300)}`;
  if (status < 100 || status > 599) return `status ${status} is none`;
  if (/\bat [\w.<>]+ \(?(?:file:|\/)|node_modules|SQLITE_|SqliteError/.test(text))
    return `status ${status} tells of the inside: ${text.slice(0, 300)}`;
  if (status < 400) return undefined;
  if (text === '') return answer.mayBeEmpty ? undefined : `status ${status} without a word`;
  if (isPage && /^text\/(?:html|plain)/.test(type)) return undefined;
  if (!type.startsWith('application/problem+json'))
    return `status ${status} as ${type}: ${text.slice(0, 200)}`;
  return problemFault(status, text);
}

function problemFault(status: number, text: string): string | undefined {
  let problem: unknown;
  try {
    problem = JSON.parse(text);
  } catch {
    return `problem details that are no JSON: ${text.slice(0, 200)}`;
  }
  if (typeof problem !== 'object' || problem === null) return `problem details that are no fields: ${text}`;
  const { type, title, status: said, detail } = problem as Readonly<Record<string, unknown>>;
  if (said !== status) return `status ${status} says ${String(said)}`;
  if (typeof type !== 'string' || !type.startsWith('urn:fettle:problem:')) return `type ${String(type)}`;
  if (typeof title !== 'string' || title === '') return `no title at status ${status}`;
  return isSentence(detail)
    ? undefined
    : `no proper sentence at status ${status}: ${String(detail).slice(0, 200)}`;
}
