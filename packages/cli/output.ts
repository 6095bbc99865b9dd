import type { System } from '@fettle/engine/quantities/displayUnits.ts';

/** What a command writes to. */
export interface Output {
  readonly json: boolean;
  readonly system: System;
  /** Whether standard output is a terminal that wants colour. */
  readonly colour: boolean;
  write(text: string): void;
}

/** Options that every command has. */
export interface CommonOptions {
  readonly json?: boolean;
  readonly units?: System;
}

/** What a terminal would carry out instead of showing it; line ends, tabs and our own bold are left. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const commands = /(?![\n\t]|\u001b\[(?:1|22)m)\p{Cc}/gu;

/**
 * What a command writes to, as its options say.
 * @param usual the system of units where no option names one
 */
export const outputFor = (options: CommonOptions, usual: System = 'metric'): Output => ({
  json: options.json ?? false,
  system: options.units ?? usual,
  colour: Boolean(process.stdout.isTTY) && !process.env.NO_COLOR,
  write: (text) => {
    const shown = options.json ? text : text.replaceAll(commands, '?');
    process.stdout.write(shown.endsWith('\n') ? shown : `${shown}\n`);
  },
});

export const writeJson = (output: Output, value: unknown): void =>
  output.write(JSON.stringify(value, null, 2));

/** Writes a list: what it says of itself and its lines, or what there is to say of an empty one. */
export const writeList = (
  output: Output,
  list: {
    readonly json: unknown;
    readonly none: string;
    readonly head: string;
    readonly lines: readonly string[];
  },
): void => {
  if (output.json) writeJson(output, list.json);
  else output.write(list.lines.length === 0 ? list.none : [list.head, ...list.lines].join('\n'));
};
