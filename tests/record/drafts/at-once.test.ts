import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout } from 'node:timers/promises';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readRecord } from '../../../kernel-helpers/src/record/chain/record-file.js';
import { readDrafts } from '../../../kernel-helpers/src/record/store/drafts-file.js';
import { commissionFolder } from '../setting.js';

let built: string;
beforeAll(async () => {
  built = mkdtempSync(join(tmpdir(), 'drafts-at-once-'));
  await build({
    entryPoints: [join(import.meta.dirname, 'draft-in-a-loop.ts')],
    outfile: join(built, 'draft.mjs'),
    bundle: true,
    format: 'esm',
    platform: 'node',
    banner: { js: "import { createRequire as r } from 'node:module'; const require = r(import.meta.url);" },
  });
});
afterAll(() => rmSync(built, { recursive: true, force: true }));

/** Programs that draft at once, each a decision of its own; started together once all are ready. */
async function programs(folder: string, whats: string[], times: number) {
  const all = whats.map((what) => {
    const child: ChildProcess = spawn(process.execPath, [join(built, 'draft.mjs'), folder, what, String(times)], {
      stdio: ['pipe', 'pipe', 'inherit'],
    });
    const lines = createInterface({ input: child.stdout as NodeJS.ReadableStream });
    return { child, ready: once(lines, 'line'), end: once(child, 'close').then(([code]) => code as number | null) };
  });
  await Promise.all(all.map(({ ready }) => ready));
  for (const { child } of all) child.stdin?.write('go\n');
  return all;
}

const drafted = (folder: string) =>
  Object.fromEntries(readDrafts(folder).map(({ what, results }) => [what, (results as { i: number }).i]));

describe('programs that draft and decide at once', () => {
  it('lose nothing: each has its last draft and its paper, and the record every decision', {
    timeout: 60_000,
  }, async () => {
    const folder = commissionFolder();
    const all = await programs(folder, ['brief', 'sizing', 'lid', 'joint'], 21);
    expect(await Promise.all(all.map(({ end }) => end))).toEqual([0, 0, 0, 0]);
    expect(drafted(folder)).toEqual({ brief: 21, sizing: 21, lid: 21, joint: 21 });
    for (const what of ['sizing', 'lid', 'joint'])
      expect(readFileSync(join(folder, 'drafts', `${what}.html`), 'utf8')).toContain(`${what} 21`);
    const { entries, faults } = readRecord(folder);
    expect(faults).toEqual([]);
    expect(entries.map(({ results }) => (results as { i: number }).i)).toEqual([2, 4, 6, 8, 10, 12, 14, 16, 18, 20]);
    expect(readdirSync(folder).sort()).toEqual(['brief.html', 'drafts', 'record.jsonl']);
  });

  it('leave whole drafts when they are killed at any moment, and the next goes on', { timeout: 60_000 }, async () => {
    const folder = commissionFolder();
    for (let round = 0; round < 4; round++) {
      const two = await programs(folder, ['sizing', 'lid'], 100_000);
      for (const { child } of two) {
        await setTimeout(20 + 60 * Math.random());
        child.kill('SIGKILL');
      }
      expect(await Promise.all(two.map(({ end }) => end))).toEqual([null, null]);
      expect(Object.keys(drafted(folder)).every((what) => ['sizing', 'lid'].includes(what))).toBe(true);
    }
    const [next] = await programs(folder, ['sizing'], 3);
    expect(await next?.end).toBe(0);
    expect(drafted(folder)).toMatchObject({ sizing: 3 });
    expect(readdirSync(folder).filter((name) => name.includes('.lock'))).toEqual([]);
  });
});
