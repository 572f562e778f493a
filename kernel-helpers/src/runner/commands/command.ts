import { basename, join, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { ShopError } from '../../measure/shop-error.js';
import type { Head } from '../../record/chain/entry.js';
import { localTime } from '../../record/chain/who-and-when.js';
import { newCommission } from '../../record/new-commission.js';
import { counted } from '../sheets/run-report.js';
import { check } from './check-again.js';
import { commissionNames, findCommission } from './find-commission.js';
import { lab } from './lab.js';
import { packCommission } from './pack.js';
import { progressOn } from './progress.js';
import { projectFolder } from './project-folder.js';
import { stopSignal } from './stop-signal.js';
import { unpackCommission } from './unpack.js';
import { work } from './work.js';

const USAGE: Record<string, string> = {
  start: 'npm start',
  new: 'npm run new -- "title" [--piece bookcase]',
  work: 'npm run work -- <commission> [--limit seconds] [--who name]',
  check: 'npm run check -- <commission> [--limit seconds] [--head number:fingerprint]',
  pack: 'npm run pack -- <commission>',
  unpack: 'npm run unpack -- <file.zip>',
  contents: 'npm run contents',
  lab: 'npm run lab',
};
const SECONDS_PER_CELL = 120;

const root = projectFolder();
const templates = join(root, 'worksheets', 'commission');
// npm runs commands in the project's folder; a path is meant from where the person stands.
const from = process.env.INIT_CWD ?? process.cwd();
const today = () => localTime(new Date()).slice(0, 10);

/** Runs one command of the daybook; gives the exit code. */
async function run(verb: string, args: string[]): Promise<number> {
  if (verb === 'lab') return lab(args).then(() => 0);
  const { given, who, head, seconds, piece } = readArguments(verb, args);

  if (verb === 'new') {
    const { folder, sheets } = newCommission({ root, title: given, date: today(), templates, piece });
    console.log(`Made ${folder}`);
    console.log(
      `Open ${sheets[0]} in it (npm run lab, or VS Code) and fill in its parameters, then the sheets after it.`,
    );
    console.log(`npm run work -- "${given}" runs them all.`);
    return 0;
  }

  if (verb === 'contents') {
    const { writeContents } = await import('./write-contents.js');
    const { path, count, sheets } = await writeContents(join(root, 'data', 'commissions'), join(root, 'worksheets'));
    console.log(
      `${counted(count, 'commission')} and ${counted(sheets, 'sheet')} to learn from on the page to open or print: ${path}`,
    );
    return 0;
  }
  if (verb === 'pack') return pack(commissionFolder(verb, given));
  if (verb === 'unpack') return unpack(given);

  const stop = stopSignal();
  const options = { seconds, signal: stop.signal, progress: progressOn(process.stdout) };
  const done =
    verb === 'start'
      ? await work({ ...options, folder: demonstrationFolder(), who: 'maker' })
      : verb === 'work'
        ? await work({ ...options, folder: commissionFolder(verb, given), who })
        : await check({ ...options, folder: commissionFolder(verb, given), head });
  return stop.exitCode() ?? (done ? 0 : 1);
}

function pack(folder: string): number {
  const { file, files, leftOut } = packCommission(folder, from);
  console.log(`Packed ${counted(files.length, 'file')} into ${file}`);
  if (leftOut.length > 0) console.log(`Left out: ${leftOut.join(', ')}`);
  if (!files.includes('index.html')) console.log('It holds no page: npm run work writes one.');
  console.log('On the other machine: npm run unpack with this file, then npm run check.');
  return 0;
}

function unpack(given: string): number {
  if (!given) throw new ShopError(`which file? ${USAGE.unpack}`);
  const { folder, outcome } = unpackCommission(resolve(from, given), join(root, 'data', 'commissions'));
  console.log(outcome === 'here' ? `Here already, with the same record: ${folder}` : `Unpacked into ${folder}`);
  console.log(`npm run check -- ${basename(folder)} runs its sheets again and compares.`);
  return 0;
}

interface Arguments {
  given: string;
  who?: string;
  head?: Head;
  seconds: number;
  piece?: string;
}

function readArguments(verb: string, args: string[]): Arguments {
  const usage = USAGE[verb];
  if (!usage) throw new ShopError(`"${verb}" is no command; possible: ${Object.values(USAGE).join(', ')}`);
  const { values, positionals } = parseArgs({
    args,
    strict: false,
    options: {
      limit: { type: 'string' },
      who: { type: 'string' },
      head: { type: 'string' },
      piece: { type: 'string' },
    },
  });
  const unknown = Object.keys(values).find((name) => !usage.includes(`--${name} `));
  if (unknown) throw new ShopError(`--${unknown} is not possible here; possible: ${usage}`);
  for (const [name, value] of Object.entries(values)) {
    if (typeof value !== 'string' || !value.trim()) throw new ShopError(`--${name} needs a value: ${usage}`);
  }
  const { limit, who, head, piece } = values as { limit?: string; who?: string; head?: string; piece?: string };
  const seconds = Number(limit ?? SECONDS_PER_CELL);
  if (!(seconds > 0 && seconds <= 86_400)) {
    throw new ShopError(`--limit is "${limit}"; possible: the seconds a cell may take, more than 0 and up to 86400`);
  }
  const given = positionals.join(' ').trim();
  if (verb === 'start' && given)
    throw new ShopError(`npm start takes no name; npm run work -- "${given}" works another`);
  if (verb === 'contents' && given)
    throw new ShopError(`npm run contents takes no name: it lists all commissions and lessons`);
  if (verb === 'new' && !given) throw new ShopError(`what is being made? ${usage}`);
  return { given, who, head: head === undefined ? undefined : readHead(head), seconds, piece };
}

/** `8:3fa4c0d19b2e`, as a quote or a receipt has it. */
function readHead(text: string): Head {
  const [, seq, hash] = /^(\d{1,6}):([0-9a-f]{12,64})$/.exec(text.trim()) ?? [];
  if (seq && hash) return { seq: Number(seq), hash };
  throw new ShopError(
    `--head is "${text}"; possible: an entry's number and at least 12 characters of its fingerprint, such as 8:3fa4c0d19b2e`,
  );
}

function commissionFolder(verb: string, given: string): string {
  if (given) return findCommission(root, given, from);
  const names = commissionNames(root);
  throw new ShopError(
    `which commission? ${USAGE[verb]}; there ${names.length > 0 ? `are: ${names.join(', ')}` : 'is none yet: npm run new -- "title" starts one'}`,
  );
}

/** The tea chest of the demonstration, made from the template sheets when it is not there. */
function demonstrationFolder(): string {
  const name = commissionNames(root).find((each) => /^\d{4}-\d\d-\d\d-tea-chest$/.test(each));
  if (name) return join(root, 'data', 'commissions', name);
  return newCommission({ root, title: 'Tea chest', date: today(), templates }).folder;
}

const [verb = '', ...args] = process.argv.slice(2);
try {
  process.exitCode = await run(verb, args);
} catch (error) {
  console.error(error);
  process.exitCode = 1;
}
