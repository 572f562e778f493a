import { parseArgs } from 'node:util';
import { closest } from 'fastest-levenshtein';
import { ShopError } from '../../measure/shop-error.js';
import { type Command, commands, formOf } from './commands.js';

/** What was typed behind a command. */
export interface Arguments {
  /** Words without dashes: a title, a commission, a file. */
  given: string;
  /** Text behind each option that was given: `{ limit: '60' }`. */
  values: Record<string, string>;
  /** Options without a value that were given. */
  said: ReadonlySet<string>;
}

/** Whether a word asks for help, as it is known everywhere. */
export function isHelp(word: string): boolean {
  return word === 'help' || word === '--help' || word === '-h';
}

/** Whether help is asked for: nothing was typed, a command of that name, or `--help` behind another. */
export function wantsHelp(typed: readonly string[]): boolean {
  return isHelp(typed[0] ?? 'help') || typed.includes('--help') || typed.includes('-h');
}

/**
 * The command of this name.
 *
 * @throws ShopError  there is none: the nearest, and where all are told
 */
export function commandNamed(name: string): Command {
  const command = commands.find((each) => each.name === name);
  if (command) return command;
  const nearest = commands.find(
    (each) =>
      each.name ===
      closest(
        name,
        commands.map((known) => known.name),
      ),
  ) as Command;
  throw new ShopError(`"${name}" is no command; nearest: ${formOf(nearest)}. npm run help prints all of them.`);
}

/**
 * Reads what was typed behind a command.
 *
 * @throws ShopError  an option that the command has not, or one without its value: names what is possible
 */
export function readArguments(command: Command, typed: string[]): Arguments {
  const options = command.options ?? [];
  const { values, positionals } = parseArgs({
    args: typed,
    strict: false,
    options: Object.fromEntries(
      options.map(({ name, value }) => [name, { type: value ? 'string' : 'boolean' } as const]),
    ),
  });
  const read: Arguments & { said: Set<string> } = { given: positionals.join(' ').trim(), values: {}, said: new Set() };
  for (const [name, value] of Object.entries(values)) {
    const option = options.find((each) => each.name === name);
    if (!option) throw new ShopError(`${dashed(name)} is not possible here; possible: ${formOf(command)}`);
    if (!option.value) {
      if (value !== true) throw new ShopError(`--${name} takes no value: ${formOf(command)}`);
      read.said.add(name);
      continue;
    }
    if (typeof value !== 'string' || !value.trim()) throw new ShopError(`--${name} needs a value: ${formOf(command)}`);
    read.values[name] = value;
  }
  if (read.given && !command.takes)
    throw new ShopError(`"${read.given}" is not possible here; possible: ${formOf(command)}`);
  return read;
}

const dashed = (name: string) => (name.length === 1 ? `-${name}` : `--${name}`);
