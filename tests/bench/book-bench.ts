/**
 * The shop book over invented shops of growing size, cold (no index) and warm; a check of one commission against its run; and
 * sheets killed at 200 random moments. `npm run bench` runs it; alone: `npx tsx tests/bench/book-bench.ts [-- --rounds 3]`.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { command, root, templateCommission } from '../sheets/setting.js';
import { inventShop } from '../shop/invented-shop.js';

const rounds = Number(parseArgs({ options: { rounds: { type: 'string', default: '3' } } }).values.rounds);
const median = (values: number[]) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;
const line = (what: string, figure: string) => console.log(`${what.padEnd(58)} ${figure}`);
const seconds = (values: number[]) =>
  `${median(values).toFixed(2)} s  (${Math.min(...values).toFixed(2)} to ${Math.max(...values).toFixed(2)})`;

/** Opens the shop book in a process of its own, as a sheet would: what it took, and its memory. */
function openBook(commissions: string): { seconds: number; processor: number; megabytes: number; count: number } {
  const index = join(root, 'kernel-helpers', 'dist', 'index.js');
  const code = `import { shopBook } from ${JSON.stringify(`file://${index}`)};
    const processor = process.cpuUsage();
    const began = performance.now();
    const book = shopBook(${JSON.stringify(commissions)});
    console.log(JSON.stringify({ seconds: (performance.now() - began) / 1000, count: book.commissions.length,
      processor: Object.values(process.cpuUsage(processor)).reduce((a, b) => a + b) / 1e6, megabytes: process.resourceUsage().maxRSS / 1024 }));`;
  const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', code], { encoding: 'utf8' });
  if (!stdout) throw new Error(stderr);
  return JSON.parse(stdout);
}

for (const count of [1250, 2500, 5000, 10_000]) {
  const shop = mkdtempSync(join(tmpdir(), 'book-bench-'));
  const commissions = join(shop, 'data', 'commissions');
  mkdirSync(commissions, { recursive: true });
  try {
    inventShop(commissions, { count });
    const cold: number[] = [];
    const warm: number[] = [];
    const processor: number[] = [];
    let megabytes = 0;
    for (let round = 0; round < rounds; round++) {
      rmSync(join(commissions, '.shop-index.json'), { force: true });
      cold.push(openBook(commissions).seconds);
      const opened = openBook(commissions);
      if (opened.count !== count) throw new Error(`${opened.count} of ${count} commissions in the book`);
      warm.push(opened.seconds);
      processor.push(opened.processor);
      megabytes = Math.max(megabytes, opened.megabytes);
    }
    const records = readdirSync(commissions).filter((name) => !name.startsWith('.'));
    const bytes = records.reduce((sum, name) => sum + statSync(join(commissions, name, 'record.jsonl')).size, 0);
    line(`Shop book, ${count} commissions, no index yet`, seconds(cold));
    line(
      `Shop book, ${count} commissions`,
      `${seconds(warm)}, processor ${median(processor).toFixed(2)} s, ${megabytes.toFixed(0)} MB`,
    );
    line(
      `  records of ${(bytes / count / 1000).toFixed(1)} kB; for each commission`,
      `${((1e6 * median(warm)) / count).toFixed(0)} µs`,
    );
  } finally {
    rmSync(shop, { recursive: true, force: true });
  }
}

const work: number[] = [];
const check: number[] = [];
for (let round = 0; round < rounds; round++) {
  const { folder, remove } = templateCommission();
  try {
    for (const [verb, times] of [
      ['work', work],
      ['check', check],
    ] as const) {
      const began = performance.now();
      const { status, stdout, stderr } = command(verb, folder);
      if (status !== 0) throw new Error(stdout + stderr);
      times.push((performance.now() - began) / 1000);
    }
  } finally {
    remove();
  }
}
line('Whole commission worked', seconds(work));
line('The same checked', seconds(check));
line('Check against run', (median(check) / median(work)).toFixed(2));

const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
const kills = spawnSync(
  process.execPath,
  [
    vitest,
    'run',
    '--config',
    join(root, 'tests', 'vitest.config.ts'),
    '--project',
    'core',
    'tests/record/kill.test.ts',
    '-t',
    'random moments',
  ],
  { cwd: root, encoding: 'utf8', env: { ...process.env, KILL_ROUNDS: '34' } },
);
line('Killed at 204 random moments, no finished entry lost', kills.status === 0 ? 'held' : 'FAILED');
if (kills.status !== 0) throw new Error(kills.stdout + kills.stderr);
