import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { checkCommission } from '../../kernel-helpers/src/record/check/check.js';
import { notebookText, readNotebook } from '../../kernel-helpers/src/runner/sheets/notebook.js';
import { changeParameter, command, copyOf, decided, digests, workedCommission } from './setting.js';

let { original, worked, folder, remove } = {} as ReturnType<typeof workedCommission>;

beforeAll(() => {
  ({ original, worked, folder, remove } = workedCommission());
});
afterAll(() => remove());

const sheets = () => readdirSync(folder).filter((name) => name.endsWith('.ipynb'));
const whats = (commission: string) => checkCommission(commission).entries.map(({ what }) => what);

test('a new commission is worked from brief to record in one go', () => {
  expect(worked.stderr).toBe('');
  expect(worked.status).toBe(0);
  expect(whats(folder)).toEqual(decided);
  expect(checkCommission(folder)).toMatchObject({ faults: [], stale: [], incomplete: undefined });
  expect(checkCommission(folder).entries.every(({ who }) => who === 'the maker')).toBe(true);
});

test('every sheet is saved with what each of its cells showed', () => {
  for (const file of sheets()) {
    const cells = readNotebook(join(folder, file)).cells.filter(({ cell_type }) => cell_type === 'code');
    expect(cells.map(({ execution_count }) => execution_count)).toEqual(cells.map((_, i) => i + 1));
    expect(cells.some(({ outputs }) => outputs?.length)).toBe(true);
    expect(JSON.stringify(cells)).not.toContain('"stderr"');
  }
});

test('the page holds every sheet and the record, and says where the record ends', () => {
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  for (const file of sheets()) expect(page).toContain(`id="sheet-${file.replace('.ipynb', '')}"`);
  expect(page).toContain(checkCommission(folder).head?.hash);
  expect(worked.stdout).toContain(join(original, 'index.html'));
});

test('sanding takes in the hours (09) what the surface (08) says', () => {
  const results = (what: string) =>
    checkCommission(folder).entries.find((entry) => entry.what === what)?.results as Record<string, unknown>;
  const { sandingMinutes } = results('surface');
  const { byOperation } = results('quote').hours as { byOperation: { id: string; mean: number }[] };
  const hours = byOperation.filter(({ id }) => id.startsWith('sanding')).reduce((sum, { mean }) => sum + mean, 0);
  expect(60 * hours).toBeCloseTo(sandingMinutes as number, 9);
});

test("the client's quote is kept, and none of the record's inside figures is in it", () => {
  const { results } = readFileSync(join(folder, 'record.jsonl'), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line))
    .find(({ what }) => what === 'quote');
  const file = readFileSync(join(folder, 'quote.html'), 'utf8');
  const reference = /<span class="reference">(.*?)<\/span>/;
  const entry = checkCommission(folder).entries.find(({ what }) => what === 'quote');
  expect(reference.exec(file)?.[1]).toBe(`${entry?.seq}:${entry?.hash.slice(0, 12)}`);
  const page = file.replace(/<style>.*?<\/style>/s, '').replace(reference, '');
  const inPage = [...page.replace(/(?<=\d),(?=\d{3})/g, '').matchAll(/\d+(?:\.\d+)?/g)].map(([number]) =>
    Number(number),
  );
  expect(inPage).toContain(results.quote.price.minor / 100);
  const { cost, hours, quote } = results;
  const inside = [cost.total, ...cost.lines.map(({ amount }: { amount: object }) => amount)].map(
    ({ minor }) => minor / 100,
  );
  for (const figure of [...inside, hours.mean, hours.p80, hours.p95, quote.net.minor / 100 - cost.total.minor / 100])
    for (const written of [figure.toFixed(1), figure.toFixed(2)].map(Number))
      if (!Number.isInteger(written) || written >= 100) expect(inPage, `${figure}`).not.toContain(written);
});

test('the bench list is kept, with every step of the record and its cautions', () => {
  const list = readFileSync(join(folder, 'bench-list.html'), 'utf8');
  expect(list).toContain('Saw, chop and fit the joint');
  expect(list).toContain('Caution: Table saw');
  expect(list).toContain('come first.');
});

const outcomes = (stdout: string) =>
  Object.fromEntries(
    [...stdout.matchAll(/^ {2}(\d\d)-\S+ +(?:\d+\.\d s)? +(.+)$/gm)].map(([, sheet, said]) => [sheet, said]),
  );
const unchanged = (stdout: string) => Object.values(outcomes(stdout)).filter((said) => said === 'unchanged').length;

test('each sheet is told with what it came to', () => {
  expect(outcomes(worked.stdout)).toMatchObject({
    '02': '11 x 7 3/4 x 4 61/64 in overall (recorded, entry 2)',
    '11': 'nothing to decide yet',
  });
});

test('worked again, each sheet is unchanged, and no file changes', () => {
  const before = digests(folder);
  const again = command('work', folder, '--decide');
  expect(unchanged(again.stdout)).toBe(sheets().length);
  expect(again.stdout.trimEnd().split('\n').at(-1)).toBe(`The page to open or print: ${join(folder, 'index.html')}`);
  expect(digests(folder)).toEqual(before);
});

test('worked again with --all, it says same, adds nothing to the record, and after that no file changes', () => {
  const record = readFileSync(join(folder, 'record.jsonl'));
  const again = command('work', folder, '--decide', '--all');
  expect(unchanged(again.stdout)).toBe(0);
  expect(again.stdout).toContain('Same: the record says all of this already.');
  expect(readFileSync(join(folder, 'record.jsonl'))).toEqual(record);
  const before = digests(folder);
  command('work', folder, '--decide', '--all');
  expect(digests(folder)).toEqual(before);
});

test('a sheet whose outputs were cleared runs again, alone, and the page is as it was', () => {
  const other = copyOf(folder, 'cleared');
  const before = digests(other);
  const path = join(other, '05-joints.ipynb');
  const sheet = readNotebook(path);
  const cells = sheet.cells.map((cell) => ({ ...cell, ...(cell.outputs && { outputs: [], execution_count: null }) }));
  writeFileSync(path, notebookText({ ...sheet, cells }));
  expect(unchanged(command('work', other).stdout)).toBe(sheets().length - 1);
  expect(digests(other)).toEqual(before);
});

test('checked, it says same, and the folder is byte for byte as it was', () => {
  const before = digests(folder);
  const check = command('check', folder);
  expect(check.stdout).toMatch(new RegExp(`^Same: ${decided.length} decisions as recorded`, 'm'));
  expect(check.status).toBe(0);
  expect(digests(folder)).toEqual(before);
});

test('checked with another figure in a sheet, it names what moved and why, and changes nothing', () => {
  const other = copyOf(folder, 'moved');
  changeParameter(other, '02-sizing.ipynb', "stockThickness: '5/8 in'", "stockThickness: '11/16 in'");
  const before = digests(other);
  const check = command('check', other);
  expect(check.status).toBe(1);
  expect(check.stdout).toMatch(/^sizing moved:$/m);
  expect(check.stdout).toMatch(/stockThickness as typed: "5\/8 in", now "11\/16 in"/);
  expect(check.stdout).toMatch(/^stock moved:$/m);
  expect(check.stdout).toMatch(/because sizing moved/);
  expect(check.stdout.match(/^It began with .*$/gm)).toEqual([
    'It began with sizing: stockThickness as typed changed.',
  ]);
  expect(check.stdout).not.toMatch(/^brief/m);
  expect(digests(other)).toEqual(before);
});

test('worked with another figure in a sheet, that decision and those that rest on it are recorded anew', () => {
  const other = copyOf(folder, 'changed');
  changeParameter(other, '09-hours-cost-quote.ipynb', 'shop: {}', 'shop: { hourlyRate: 41 }');
  const work = command('work', other, '--decide');
  expect(work.stdout).toMatch(/^Recorded: 2 new decisions\.$/m);
  expect(unchanged(work.stdout)).toBe(8);
  expect(outcomes(work.stdout)).toMatchObject({
    '09': expect.stringMatching(/^\$.* \(recorded, entry 11\)$/),
    '10': expect.stringMatching(/^ready .* \(recorded, entry 12\)$/),
    '11': 'nothing to decide yet',
  });
  expect(whats(other)).toEqual([...decided, 'quote', 'days']);
});

test('a record that was edited is refused by line, by work and by check, and stays as it is', () => {
  const other = copyOf(folder, 'edited');
  const path = join(other, 'record.jsonl');
  writeFileSync(path, readFileSync(path, 'utf8').replace('"insideLength":9.5', '"insideLength":9.6'));
  const before = digests(other);
  for (const verb of ['work', 'check']) {
    const { status, stdout, stderr } = command(verb, other);
    expect(status).toBe(1);
    expect(stdout + stderr).toMatch(/line 1 was changed after it was written/);
  }
  expect(digests(other)).toEqual(before);
});
