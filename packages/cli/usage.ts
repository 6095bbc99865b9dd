import type { Command, CommanderError } from 'commander';
import type { InputProblem } from './exits.ts';

const kebab = (code: string): string =>
  code.replace(/^commander\./, '').replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

const sentence = (text: string): string => {
  const whole = text.charAt(0).toUpperCase() + text.slice(1);
  return /[.?!]\)?$/.test(whole) ? whole : `${whole}.`;
};

const noCommand = (program: Command): InputProblem => ({
  code: 'command-line-missing-command',
  path: '',
  says: 'The command line names no command that there is.',
  allowed: `${program.commands.map((command) => command.name()).join(', ')}, or --help`,
});

/** What is wrong with the command line itself, from the library's message. */
export const usageProblem = (error: CommanderError, program: Command): InputProblem => {
  if (error.code === 'commander.help') return noCommand(program);
  const message = error.message.replace(/^error: /, '').replaceAll(/\s+/g, ' ');
  const [says = '', choices] = message.split(/ Allowed choices are (.*?)\.$/);
  return {
    code: `command-line-${kebab(error.code)}`,
    path: '',
    says: sentence(says),
    ...(choices ? { allowed: choices } : {}),
  };
};
