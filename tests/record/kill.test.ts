import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout } from 'node:timers/promises';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readRecord } from '../../kernel-helpers/src/record/chain/record-file.js';
import { commissionFolder, must } from './setting.js';

// Bundled once: loading the sources in each of the many processes would take most of the test's time.
let built: string;
beforeAll(async () => {
  built = mkdtempSync(join(tmpdir(), 'record-kill-'));
  await build({
    entryPoints: [join(import.meta.dirname, 'decide-in-a-loop.ts')],
    outfile: join(built, 'decide.mjs'),
    bundle: true,
    format: 'esm',
    platform: 'node',
    banner: { js: "import { createRequire as r } from 'node:module'; const require = r(import.meta.url);" },
  });
});
afterAll(() => rmSync(built, { recursive: true, force: true }));

/** A process that decides in a loop once it is told to begin. */
class Decider {
  /** What it acknowledged: an entry's number and hash, written after its decision returned. */
  readonly acknowledged: { seq: number; hash: string }[] = [];
  readonly ready: Promise<unknown>;
  /** Its first acknowledgement. */
  readonly first: Promise<unknown>;
  /** Its exit code, null when it was killed; all that it wrote is read by then. */
  readonly end: Promise<number | null>;
  private readonly child: ChildProcess;

  constructor(folder: string, times: number) {
    this.child = spawn(process.execPath, [join(built, 'decide.mjs'), folder, String(times)], {
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    const lines = createInterface({ input: must(this.child.stdout) });
    this.ready = once(lines, 'line');
    this.first = this.ready.then(() => once(lines, 'line'));
    lines.on('line', (line) => {
      const [seq, hash] = line.split(' ');
      if (hash) this.acknowledged.push({ seq: Number(seq), hash });
    });
    this.end = Promise.all([once(this.child, 'close'), once(lines, 'close')]).then(([[code]]) => code);
  }

  begin(): void {
    this.child.stdin?.write('go\n');
  }

  kill(): void {
    this.child.kill('SIGKILL');
  }
}

async function deciders(count: number, folder: string, times: number): Promise<Decider[]> {
  const all = Array.from({ length: count }, () => new Decider(folder, times));
  await Promise.all(all.map((each) => each.ready));
  return all;
}

function ends(all: Decider[]): Promise<(number | null)[]> {
  return Promise.all(all.map((each) => each.end));
}

function expectAllThere(folder: string, acknowledged: { seq: number; hash: string }[]): void {
  const { entries, faults } = readRecord(folder);
  expect(faults).toEqual([]);
  const there = entries.map(({ seq, hash }) => ({ seq, hash }));
  expect(there).toEqual(expect.arrayContaining(acknowledged));
  expect(new Set(acknowledged.map(({ seq }) => seq)).size).toBe(acknowledged.length);
}

// Six kills a round; `npm run bench` asks for 204 in all.
const rounds = Number(process.env.KILL_ROUNDS ?? 6);

describe('a sheet killed while it decides', () => {
  it(`loses no decision that it was told is recorded, at ${6 * rounds} random moments`, {
    timeout: 10_000 * rounds,
  }, async () => {
    for (let round = 0; round < rounds; round++) {
      const folder = commissionFolder();
      const acknowledged: { seq: number; hash: string }[] = [];
      for (let kill = 0; kill < 3; kill++) {
        const two = await deciders(2, folder, 100_000);
        for (const each of two) each.begin();
        await Promise.race(two.map((each) => each.first));
        for (const each of two) {
          await setTimeout(25 * Math.random());
          each.kill();
        }
        expect(await ends(two)).toEqual([null, null]);
        acknowledged.push(...two.flatMap((each) => each.acknowledged));
        expectAllThere(folder, acknowledged);
      }
      // And the next sheet goes on as if nothing had happened.
      const [next] = await deciders(1, folder, 1);
      next?.begin();
      expect(await next?.end).toBe(0);
      expectAllThere(folder, [...acknowledged, ...must(next).acknowledged]);
      expect(readRecord(folder).incomplete).toBeUndefined();
      expect(readdirSync(folder).filter((name) => name.includes('.lock'))).toEqual([]);
    }
  });
});

describe('several sheets that decide at once', () => {
  it('lose none of their decisions', { timeout: 60_000 }, async () => {
    const folder = commissionFolder();
    const four = await deciders(4, folder, 20);
    for (const each of four) each.begin();
    expect(await ends(four)).toEqual([0, 0, 0, 0]);
    const acknowledged = four.flatMap((each) => each.acknowledged);
    expect(acknowledged).toHaveLength(80);
    expect(readRecord(folder).entries).toHaveLength(80);
    expectAllThere(folder, acknowledged);
  });

  it('share out a lock that a dead sheet left, one at a time', { timeout: 60_000 }, async () => {
    for (let round = 0; round < 5; round++) {
      const folder = commissionFolder();
      const { pid } = spawnSync(process.execPath, ['-e', '']);
      const dead = { pid, host: hostname(), token: `${pid}-dead`, since: '2026-03-12T19:30:00Z' };
      writeFileSync(join(folder, 'record.jsonl.lock'), JSON.stringify(dead));
      const two = await deciders(2, folder, 3);
      for (const each of two) each.begin();
      expect(await ends(two)).toEqual([0, 0]);
      expect(readRecord(folder).entries).toHaveLength(6);
      expectAllThere(
        folder,
        two.flatMap((each) => each.acknowledged),
      );
      expect(readdirSync(folder)).toEqual(['record.jsonl']);
    }
  });
});
