import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { ShopError } from '../measure/shop-error.js';
import { newCommission } from '../record/new-commission.js';
import { localTime } from '../record/who-and-when.js';
import { check } from './check.js';
import { commissionNames, findCommission } from './find-commission.js';
import { lab } from './lab.js';
import { progressOn } from './progress.js';
import { projectFolder } from './project-folder.js';
import { stopSignal } from './stop-signal.js';
import { work } from './work.js';

const USAGE: Record<string, string> = {
  start: 'npm start',
  new: 'npm run new -- "title" [--piece bookcase]',
  work: 'npm run work -- <commission> [--limit seconds] [--who name]',
  check: 'npm run check -- <commission> [--limit seconds]',
  lab: 'npm run lab',
};
const SECONDS_PER_CELL = 120;

const root = projectFolder();
const templates = join(root, 'worksheets', 'commission');
const today = () => localTime(new Date()).slice(0, 10);

/** Runs one command of the daybook; gives the exit code. */
async function run(verb: string, args: string[]): Promise<number> {
  if (verb === 'lab') return lab(args).then(() => 0);
  const { given, who, seconds, piece } = readArguments(verb, args);

  if (verb === 'new') {
    const { folder, sheets } = newCommission({ root, title: given, date: today(), templates, piece });
    console.log(`Made ${folder}`);
    console.log(
      `Open ${sheets[0]} in it (npm run lab, or VS Code) and fill in its parameters, then the sheets after it.`,
    );
    console.log(`npm run work -- "${given}" runs them all.`);
    return 0;
  }

  const stop = stopSignal();
  const options = { seconds, signal: stop.signal, progress: progressOn(process.stdout) };
  const done =
    verb === 'start'
      ? await work({ ...options, folder: demonstrationFolder(), who: 'maker' })
      : verb === 'work'
        ? await work({ ...options, folder: commissionFolder(verb, given), who })
        : await check({ ...options, folder: commissionFolder(verb, given) });
  return stop.exitCode() ?? (done ? 0 : 1);
}

function readArguments(verb: string, args: string[]): { given: string; who?: string; seconds: number; piece?: string } {
  const usage = USAGE[verb];
  if (!usage) throw new ShopError(`"${verb}" is no command; possible: ${Object.values(USAGE).join(', ')}`);
  const { values, positionals } = parseArgs({
    args,
    strict: false,
    options: { limit: { type: 'string' }, who: { type: 'string' }, piece: { type: 'string' } },
  });
  const unknown = Object.keys(values).find((name) => !usage.includes(`--${name} `));
  if (unknown) throw new ShopError(`--${unknown} is not possible here; possible: ${usage}`);
  for (const [name, value] of Object.entries(values)) {
    if (typeof value !== 'string' || !value.trim()) throw new ShopError(`--${name} needs a value: ${usage}`);
  }
  const { limit, who, piece } = values as { limit?: string; who?: string; piece?: string };
  const seconds = Number(limit ?? SECONDS_PER_CELL);
  if (!(seconds > 0 && seconds <= 86_400)) {
    throw new ShopError(`--limit is "${limit}"; possible: the seconds a cell may take, more than 0 and up to 86400`);
  }
  const given = positionals.join(' ').trim();
  if (verb === 'start' && given)
    throw new ShopError(`npm start takes no name; npm run work -- "${given}" works another`);
  if (verb === 'new' && !given) throw new ShopError(`what is being made? ${usage}`);
  return { given, who, seconds, piece };
}

function commissionFolder(verb: string, given: string): string {
  // npm runs commands in the project's folder; a path is meant from where the person stands.
  if (given) return findCommission(root, given, process.env.INIT_CWD ?? process.cwd());
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
  if (!(error instanceof ShopError)) throw error;
  console.error(error.message);
  process.exitCode = 1;
}
