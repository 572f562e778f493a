import { briefQuestions } from './brief-questions.js';

/** A command of the daybook, as its line in the help says it. */
export interface Command {
  /** What it is called by: `npm run work`. */
  name: string;
  /** What stands behind its name, if anything: `<commission>`. */
  takes?: string;
  /** What it does, in one line. */
  does: string;
  options?: readonly Option[];
}

/** What can be added to a command. */
export interface Option {
  name: string;
  /** What stands behind it, as in `--limit seconds`; one without a value is said or left out. */
  value?: string;
  does: string;
}

const limit: Option = { name: 'limit', value: 'seconds', does: 'how long one cell may take; 120 when left out' };

/** All of them, in the order in which a maker comes to them. */
export const commands: readonly Command[] = [
  { name: 'start', does: 'works a first piece, a tea chest of our own invention, from brief to record' },
  {
    name: 'new',
    takes: '"title"',
    does: 'begins a commission: asks for its brief, and makes the dated folder with its sheets',
    options: [
      { name: 'piece', value: 'bookcase', does: 'what is made; a box when left out' },
      ...briefQuestions.map(({ option, example, asks }) => ({ name: option, value: example, does: asks })),
    ],
  },
  {
    name: 'lab',
    takes: '<sheet>',
    does: 'opens the sheets in JupyterLab, until Ctrl-C: a sheet or a commission by its name, or all',
    options: [
      { name: 'no-browser', does: 'prints the address and opens nothing' },
      { name: 'register', does: 'lets VS Code find the kernel of the sheets, and starts nothing' },
      { name: 'unregister', does: 'takes that back' },
    ],
  },
  {
    name: 'work',
    takes: '<commission>',
    does: 'runs the sheets of a commission that anything moved for, in their order, and writes its page',
    options: [
      limit,
      { name: 'who', value: 'name', does: 'who decides, for the record; who is logged in when left out' },
      { name: 'decide', does: 'decides what the sheets only draft, each one' },
      { name: 'all', does: 'runs every sheet, moved or not' },
      { name: 'card', does: 'takes the shop card as it is now; a commission keeps the one it began with' },
    ],
  },
  {
    name: 'check',
    takes: '<commission>',
    does: 'runs them again, keeps nothing, and says "same", or which figure moved and why',
    options: [
      limit,
      {
        name: 'reference',
        value: '8:3fa4c0d19b2e',
        does: 'an entry as a quote or a receipt names it, to be held against the record',
      },
    ],
  },
  {
    name: 'undo',
    takes: '<commission>',
    does: 'withdraws the last decision, once it has shown which; nothing is deleted',
    options: [{ name: 'yes', does: 'does not ask first' }],
  },
  { name: 'contents', does: 'writes one page over all commissions and lessons' },
  { name: 'pack', takes: '<commission>', does: 'puts a commission into one zip file, for another machine' },
  { name: 'unpack', takes: '<file.zip>', does: 'takes in a commission that was packed' },
  { name: 'help', takes: '<command>', does: 'prints these lines, or what can be added to one command' },
];

/** How a command is written: `npm run work -- <commission> [--limit seconds] [--who name]`. */
export function formOf({ name, takes, options = [] }: Command): string {
  const behind = [...(takes ? [takes] : []), ...options.map((option) => `[${written(option)}]`)];
  return [called(name), ...(behind.length > 0 ? ['--', ...behind] : [])].join(' ');
}

/** All commands, one line each: how it is written, what it does, what can be added. */
export function helpText(): string {
  const widest = Math.max(...commands.map((command) => formOf(bare(command)).length));
  const line = (command: Command) => {
    const added = (command.options ?? []).map(({ name }) => `--${name}`).join(' ');
    return `${formOf(bare(command)).padEnd(widest)}  ${command.does}${added && ` (${added})`}`;
  };
  return commands.map(line).join('\n');
}

/** One command: how it is written, what it does, and each thing that can be added. */
export function commandHelp(command: Command): string {
  const options = command.options ?? [];
  const widest = Math.max(...options.map((option) => written(option).length));
  const added = options.map((option) => `  ${written(option).padEnd(widest)}  ${option.does}`);
  return [`${formOf(command)}`, `${command.does}`, ...added].join('\n');
}

const called = (name: string) => (name === 'start' ? 'npm start' : `npm run ${name}`);
const bare = (command: Command): Command => ({ ...command, options: [] });
const written = ({ name, value }: Option) => (value ? `--${name} ${value}` : `--${name}`);
