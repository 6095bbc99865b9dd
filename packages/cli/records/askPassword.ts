import { badInput } from '../exits.ts';
import { readInput } from '../input.ts';

const END = ['\r', '\n', '\u0004'];
const BREAK_OFF = '\u0003';
const BACK = ['\b', '\u007f'];

const brokenOff = () => badInput({ code: 'broken-off', path: '', says: 'Broken off; nothing was changed.' });

const noTerminal = () =>
  badInput({
    code: 'no-terminal',
    path: '',
    says: 'There is no terminal to ask for the password on.',
    allowed: '--password-from -, which reads it from standard input',
  });

/** What one typed sign does to the line so far; undefined where the line ends. */
const typed = (line: readonly string[], sign: string): readonly string[] | undefined => {
  if (END.includes(sign)) return undefined;
  if (BACK.includes(sign)) return line.slice(0, -1);
  return sign < ' ' ? line : [...line, sign];
};

/** Asks on the terminal without showing what is typed. */
const askUnseen = (question: string): Promise<string> =>
  new Promise((resolve, reject) => {
    const { stdin, stderr } = process;
    let line: readonly string[] = [];
    const end = (): void => {
      stdin.off('data', hear);
      stdin.setRawMode(false);
      stdin.pause();
      stderr.write('\n');
    };
    const hear = (piece: string): void => {
      for (const sign of piece) {
        if (sign === BREAK_OFF) {
          end();
          reject(brokenOff());
          return;
        }
        const next = typed(line, sign);
        if (next === undefined) {
          end();
          resolve(line.join(''));
          return;
        }
        line = next;
      }
    };
    // Asked only once nothing is shown any more: who types at once must not see it either.
    stdin.setEncoding('utf8');
    stdin.setRawMode(true);
    stdin.on('data', hear);
    stdin.resume();
    stderr.write(question);
  });

/** The first line of standard input. */
const readPassword = (): string => {
  const text = new TextDecoder().decode(readInput('-', { mostBytes: 10_000, kind: 'password' }));
  return text.split(/\r?\n/)[0] ?? '';
};

/**
 * A new password: from standard input, or typed twice on the terminal, where it is not shown.
 * @throws BadInput where there is no terminal, or the two differ
 */
export const newPassword = async (from: '-' | undefined): Promise<string> => {
  if (from === '-') return readPassword();
  if (!process.stdin.isTTY) throw noTerminal();
  const first = await askUnseen('Password (12 characters or more, not shown): ');
  if ((await askUnseen('The same once more: ')) === first) return first;
  throw badInput({
    code: 'passwords-differ',
    path: '',
    says: 'The two passwords differ; nothing was changed.',
  });
};
