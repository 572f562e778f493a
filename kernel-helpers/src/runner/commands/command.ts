import { basename, join } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { ShopError } from '../../measure/shop-error.js';
import type { Head } from '../../record/chain/entry.js';
import { localTime } from '../../record/chain/who-and-when.js';
import { newCommission } from '../../record/new-commission.js';
import { commissionNames, findCommission } from '../find/find-commission.js';
import { findPacked } from '../find/find-packed.js';
import { findSheet } from '../find/find-sheet.js';
import { projectFolder } from '../find/project-folder.js';
import { renewedText, renewPage } from '../pages/renew-page.js';
import { counted } from '../sheets/run-report.js';
import { type Arguments, commandNamed, isHelp, readArguments, wantsHelp } from './arguments.js';
import { check } from './check-again.js';
import { type Command, commandHelp, formOf, helpText } from './commands.js';
import { lab } from './lab.js';
import { packCommission } from './pack.js';
import { type Progress, progressOn } from './progress.js';
import { stopSignal } from './stop-signal.js';
import { undo } from './undo.js';
import { unpackCommission } from './unpack.js';
import { work } from './work.js';

const SECONDS_PER_CELL = 120;

const root = projectFolder();
const templates = join(root, 'worksheets', 'commission');
// npm runs commands in the project's folder; a path is meant from where the person stands.
const from = process.env.INIT_CWD ?? process.cwd();
const today = () => localTime(new Date()).slice(0, 10);

/** What each command does with what was typed behind it; gives the exit code. */
const runs: Record<string, (typed: Arguments, command: Command) => Promise<number> | number> = {
  start: () => working((options) => work({ ...options, folder: firstPiece(), who: 'maker', decide: true }), {}),
  async new({ given, values }, command) {
    if (!given) throw new ShopError(`what is being made? ${formOf(command)}`);
    const { begin } = await import('./begin.js');
    const asked = process.stdin.isTTY && process.stdout.isTTY;
    const begun = { root, templates, title: given, today: today(), values, say: (line: string) => console.log(line) };
    return (await begin({ ...begun, ...(asked && { terminal: {} }) })) ? 0 : 1;
  },
  lab: ({ given, said }) => lab(said, given && findSheet(root, given, from)).then(() => 0),
  work: ({ given, values, said }, command) =>
    working(
      (options) =>
        work({
          ...options,
          folder: commissionFolder(command, given),
          who: values.who,
          decide: said.has('decide'),
          card: said.has('card'),
          all: said.has('all'),
        }),
      values,
    ),
  check({ given, values }, command) {
    const reference = values.reference === undefined ? undefined : readReference(values.reference);
    return working(
      (options) => check({ ...options, folder: commissionFolder(command, given), head: reference }),
      values,
    );
  },
  async undo({ given, said }, command) {
    const folder = commissionFolder(command, given);
    const done = await undo({
      folder,
      yes: said.has('yes'),
      ask: process.stdin.isTTY ? ask : undefined,
      say: console.log,
    });
    return done ? 0 : 1;
  },
  async contents() {
    const { writeContents } = await import('../pages/write-contents.js');
    const { path, count, sheets, renewed } = await writeContents(
      join(root, 'data', 'commissions'),
      join(root, 'worksheets'),
    );
    for (const each of renewed) console.log(renewedText(each));
    console.log(
      `${counted(count, 'commission')} and ${counted(sheets, 'sheet')} to learn from on the page to open or print: ${path}`,
    );
    return 0;
  },
  pack: ({ given }, command) => pack(commissionFolder(command, given)),
  unpack: ({ given }, command) => unpack(given, command),
};

/** Asks on the terminal. */
async function ask(question: string): Promise<string> {
  const terminal = createInterface({ input: process.stdin, output: process.stdout });
  return terminal.question(question).finally(() => terminal.close());
}

/** Runs one command of the daybook; gives the exit code. */
async function run(typed: string[]): Promise<number> {
  const [name = '', ...behind] = typed;
  if (wantsHelp(typed)) {
    const asked = typed.find((word) => !isHelp(word));
    console.log(asked === undefined ? helpText() : commandHelp(commandNamed(asked)));
    return 0;
  }
  const command = commandNamed(name);
  return (runs[name] as (typeof runs)[string])(readArguments(command, behind), command);
}

/** Runs sheets with progress on the terminal, until done or stopped; gives the exit code. */
async function working(
  task: (options: { seconds: number; signal: AbortSignal; progress: Progress }) => Promise<boolean>,
  { limit }: Record<string, string>,
): Promise<number> {
  const seconds = Number(limit ?? SECONDS_PER_CELL);
  if (!(seconds > 0 && seconds <= 86_400)) {
    throw new ShopError(`--limit is "${limit}"; possible: the seconds a cell may take, more than 0 and up to 86400`);
  }
  const stop = stopSignal();
  const done = await task({ seconds, signal: stop.signal, progress: progressOn(process.stdout) });
  return stop.exitCode() ?? (done ? 0 : 1);
}

async function pack(folder: string): Promise<number> {
  const renewed = await renewPage(folder);
  if (renewed) console.log(renewedText(renewed));
  const { file, files, leftOut } = packCommission(folder, from);
  console.log(`Packed ${counted(files.length, 'file')} into ${file}`);
  if (leftOut.length > 0) console.log(`Left out: ${leftOut.join(', ')}`);
  if (!files.includes('index.html')) console.log('It holds no page: npm run work writes one.');
  console.log('On the other machine: npm run unpack with this file, then npm run check.');
  return 0;
}

function unpack(given: string, command: Command): number {
  if (!given) throw new ShopError(`which file? ${formOf(command)}`);
  const { folder, outcome } = unpackCommission(findPacked(given, from), join(root, 'data', 'commissions'));
  console.log(outcome === 'here' ? `Here already, with the same record: ${folder}` : `Unpacked into ${folder}`);
  console.log(`npm run check -- ${basename(folder)} runs its sheets again and compares.`);
  return 0;
}

/** `8:3fa4c0d19b2e`, as a quote or a receipt has it. */
function readReference(text: string): Head {
  const [, seq, hash] = /^(\d{1,6}):([0-9a-f]{12,64})$/.exec(text.trim()) ?? [];
  if (seq && hash) return { seq: Number(seq), hash };
  throw new ShopError(
    `--reference is "${text}"; possible: an entry's number and at least 12 of its letters, as a quote or a receipt has it, such as 8:3fa4c0d19b2e`,
  );
}

function commissionFolder(command: Command, given: string): string {
  if (given) return findCommission(root, given, from);
  const names = commissionNames(root);
  throw new ShopError(
    `which commission? ${formOf(command)}; there ${names.length > 0 ? `are: ${names.join(', ')}` : 'is none yet: npm run new -- "title" starts one'}`,
  );
}

/**
 * A first piece to see worked, the demonstration's tea chest begun today: in a daybook of its own, so that the shop's commissions,
 * stock and book know nothing of it.
 */
function firstPiece(): string {
  const daybook = join(root, 'first-piece');
  const [name] = commissionNames(daybook);
  if (name) return join(daybook, 'data', 'commissions', name);
  return newCommission({ root: daybook, title: 'Tea chest', date: today(), templates }).folder;
}

try {
  process.exitCode = await run(process.argv.slice(2));
} catch (error) {
  console.error(error);
  process.exitCode = 1;
}
