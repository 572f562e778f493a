import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkCommission } from '../../kernel-helpers/src/record/check/check.js';
import { newCommission } from '../../kernel-helpers/src/record/new-commission.js';
import { readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { changeParameter, command, decided, root, templateCommission } from './setting.js';

const kinds = ['bookcase', 'drawer', 'frame-and-panel', 'solid-top'];
let daybook: string;
const folderOf = (kind: string) => join(daybook, 'data', 'commissions', `2026-01-02-${kind}`);
const outcomes = new Map<string, { status: number | null; said: string }>();

function work(folder: string): Promise<{ status: number | null; said: string }> {
  const run = spawn(
    process.execPath,
    [join(root, 'kernel-helpers', 'dist', 'command.js'), 'work', folder, '--decide'],
    {
      cwd: root,
    },
  );
  let said = '';
  run.stdout.on('data', (text) => (said += text));
  run.stderr.on('data', (text) => (said += text));
  return new Promise((resolve) => run.on('close', (status) => resolve({ status, said })));
}

beforeAll(async () => {
  mkdirSync(join(root, 'tests', '.work'), { recursive: true });
  daybook = mkdtempSync(join(root, 'tests', '.work', 'pieces-'));
  const templates = join(root, 'worksheets', 'commission');
  // As they come: no parameter is changed.
  for (const piece of kinds) newCommission({ root: daybook, title: piece, date: '2026-01-02', templates, piece });
  for (const pair of [kinds.slice(0, 2), kinds.slice(2)])
    await Promise.all(pair.map(async (kind) => outcomes.set(kind, await work(folderOf(kind)))));
}, 240_000);
afterAll(() => rmSync(daybook, { recursive: true, force: true, maxRetries: 5 }));

describe.each(kinds)('a commission that is a %s', (kind) => {
  test('is worked from brief to record in one go', () => {
    expect(outcomes.get(kind)?.said).toMatch(/^Recorded: 6 new decisions\.$/m);
    expect(outcomes.get(kind)?.status).toBe(0);
    const { entries, faults, stale } = checkCommission(folderOf(kind));
    expect(entries.map(({ what }) => what)).toEqual(['brief', 'sizing', 'air', 'stock', 'quote', 'days']);
    expect([faults, stale]).toEqual([[], []]);
    expect(entries[1]?.results).toMatchObject({ kind });
  });

  test('pays for plywood where it has some, and only there', () => {
    const results = (what: string) =>
      checkCommission(folderOf(kind)).entries.find((entry) => entry.what === what)?.results as {
        parts: { material: string }[];
        cost: { lines: { what: string }[] };
      };
    const has = results('sizing').parts.some(({ material }) => material === 'plywood');
    expect(has).toBe(kind === 'bookcase' || kind === 'drawer');
    expect(results('quote').cost.lines.some(({ what }) => what.startsWith('Plywood '))).toBe(has);
  });

  test('keeps its drawing, its parts and its story stick beside its sheets', () => {
    expect(readFileSync(join(folderOf(kind), 'views.svg'), 'utf8')).toContain(
      '<svg xmlns="http://www.w3.org/2000/svg"',
    );
    for (const file of ['parts.dxf', 'story-stick.html', 'index.html'])
      expect(existsSync(join(folderOf(kind), file)), file).toBe(true);
  });

  test('no sheet of it is left with an error', () => {
    const sheets = readdirSync(folderOf(kind)).filter((name) => name.endsWith('.ipynb'));
    expect(sheets).toHaveLength(7);
    for (const file of sheets)
      expect(JSON.stringify(readNotebook(join(folderOf(kind), file)).cells)).not.toContain('"stderr"');
  });
});

describe('a chest wide enough to be glued up, 18 by 14 by 10 in inside', () => {
  let remove: () => void;
  let folder: string;
  let worked: ReturnType<typeof command>;
  const results = (what: string) =>
    checkCommission(folder).entries.findLast((entry) => entry.what === what)?.results as {
      panels: { part: string; edgeJoints: number }[];
      design: { lidGrooveDepth: number };
      counts: { 'edge joint': number };
    };
  const joints = () => results('stock').panels.reduce((sum, { edgeJoints }) => sum + edgeJoints, 0);

  // Its size is all that is typed.
  beforeAll(() => {
    ({ folder, remove } = templateCommission());
    for (const [from, to] of [
      ["'9 1/2 in'", "'18 in'"],
      ["'6 1/4 in'", "'14 in'"],
      ["'4 in'", "'10 in'"],
    ] as const)
      changeParameter(folder, '01-brief.ipynb', from, to);
    worked = command('work', folder, '--decide');
  });
  afterAll(() => remove());

  test('is worked from brief to record with nothing else typed, in grooves as deep as its wide lid asks', () => {
    expect(worked.stderr).toBe('');
    expect(worked.status).toBe(0);
    expect(checkCommission(folder).entries.map(({ what }) => what)).toEqual(decided);
    expect(results('sizing').design.lidGrooveDepth).toBe(5 / 16);
  });

  test('has five edge joints with a plywood bottom and six with a solid one, each counted in its hours', () => {
    expect(joints()).toBe(5);
    changeParameter(folder, '02-sizing.ipynb', "bottom: 'plywood'", "bottom: 'solid'");
    changeParameter(folder, '02-sizing.ipynb', "bottomGrooveDepth: '1/4 in'", "bottomGrooveDepth: '5/16 in'");
    expect(command('work', folder, '--decide').status).toBe(0);
    expect(joints()).toBe(6);
    expect(results('quote').counts['edge joint']).toBe(6);
  });
});
