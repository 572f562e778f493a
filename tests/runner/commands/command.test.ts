import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { findPacked } from '../../../kernel-helpers/src/runner/find/find-packed.js';
import { content, recordBytes } from '../../record/setting.js';
import { commission, pidIn, runs, testFolder, writePid } from '../setting.js';

const root = join(import.meta.dirname, '..', '..', '..');

/** One command of the daybook, in a process of its own. */
const command = (...args: string[]) => commandFrom(undefined, ...args);

/** The same, typed in a folder. */
function commandFrom(folder: string | undefined, ...args: string[]) {
  const child = spawn(process.execPath, [join(root, 'kernel-helpers', 'dist', 'command.js'), ...args], {
    cwd: root,
    env: { ...process.env, INIT_CWD: folder },
  });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  let said = '';
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
  }
  const end = once(child, 'close').then(([code, signal]) => ({ code: code as number | null, signal, said }));
  return { child, end };
}

const kernelIn = (folder: string) => vi.waitUntil(() => pidIn(folder), { timeout: 50_000 });
const gone = (pid: number) => expect.poll(() => runs(pid), { timeout: 10_000 }).toBe(false);

test.each([
  [['wrok'], /^"wrok" is no command; nearest: npm run work -- <commission>.* npm run help prints all of them/],
  [['work'], /^which commission\? npm run work -- <commission>/],
  [['work', 'no such thing'], /^there is no commission "no such thing"/],
  [['work', 'worksheets/commission'], /is no commission: those stand in data\/commissions/],
  [['work', 'x', '--limit', '0'], /^--limit is "0"; possible: the seconds a cell may take/],
  [['work', 'x', '--limit', 'soon'], /^--limit is "soon"/],
  [['work', 'x', '--limit'], /^--limit needs a value/],
  [['work', 'x', '--fast'], /^--fast is not possible here; possible: npm run work/],
  [['check', 'x', '--who', 'me'], /^--who is not possible here/],
  [['new'], /^what is being made\? npm run new -- "title"/],
  [['new', '!!!'], /^The title is '!!!'/],
  [
    ['check', 'x', '--reference', '8'],
    /^--reference is "8"; possible: an entry's number and at least 12 of its letters/,
  ],
  [['pack'], /^which commission\? npm run pack/],
  [['pack', 'no such thing'], /^there is no commission "no such thing"/],
  [['unpack'], /^which file\? npm run unpack/],
  [['unpack', 'no-such-file.zip'], /^There is no file .*no-such-file\.zip/],
  [['contents', 'tea-chest'], /^"tea-chest" is not possible here; possible: npm run contents/],
  [
    ['new', 'Bed', '--piece', 'bed'],
    /^piece: "bed" given; possible: box, bookcase, drawer, frame-and-panel, solid-top$/m,
  ],
  [['start', 'tea-chest'], /^"tea-chest" is not possible here; possible: npm start/],
  [['lab', '--nothing'], /^--nothing is not possible here; possible: npm run lab -- <sheet> \[--no-browser\]/],
])('%j is answered with one line that says what is possible', async (args, message) => {
  const { code, said } = await command(...args).end;
  expect(code).toBe(1);
  expect(said).toMatch(message);
  expect(said.trimEnd().split('\n')).toHaveLength(1);
});

test('a commission is worked, and its page written; a failing one says where and leaves its page alone', async () => {
  const folder = commission({ '01-a.ipynb': ["console.log('shown')"] });
  const good = await command('work', folder).end;
  expect(good.said).toMatch(/01-a +\d+\.\d s {2}nothing to decide yet\n/);
  expect(good.code).toBe(0);
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  expect(page).toContain('shown');
  expect(good.said).toContain(join(folder, 'index.html'));

  const bad = commission({ '01-a.ipynb': ['1', "\nthrow new Error('no glue')"] });
  const { code, said } = await command('work', bad).end;
  expect(code).toBe(1);
  expect(said).toContain(
    "Stopped at 01-a.ipynb, cell 2 of 2.\n  line 2:  throw new Error('no glue')\n  Error: no glue\nThe record is whole: 0 entries, nothing new.",
  );
  expect(JSON.parse(readFileSync(join(bad, '01-a.ipynb'), 'utf8')).cells[0].execution_count).toBeNull();
}, 60_000);

test('a sheet that fails after its decision leaves record and papers as they were', async () => {
  const open = "import { openCommission } from 'kernel-helpers';\nconst job = openCommission();";
  const answer = (day: string, paper: string) => `job.save('answer.html', '${paper}');
job.decide('answer', { inputs: {}, results: { answer: 'accepted', date: '2026-02-${day}', reason: '' } });`;
  const folder = commission({ '01-a.ipynb': [open, answer('01', 'good'), 'job.entries().length'] });
  const said = (await command('work', folder).end).said;
  expect(said).toContain('(recorded, entry 1)');
  const record = readFileSync(join(folder, 'record.jsonl'));
  const shown = JSON.stringify(JSON.parse(readFileSync(join(folder, '01-a.ipynb'), 'utf8')).cells[2].outputs);
  expect(shown, 'a sheet sees its own entry').toContain('1');

  const bad = { '01-a.ipynb': [open, answer('02', 'bad'), "throw new Error('no glue')"] };
  cpSync(join(commission(bad), '01-a.ipynb'), join(folder, '01-a.ipynb'));
  const failed = await command('work', folder).end;
  expect(failed.said).toContain('The record is whole: 1 entry, nothing new. Nothing of this sheet was kept.');
  expect(readFileSync(join(folder, 'record.jsonl'))).toEqual(record);
  expect(readFileSync(join(folder, 'answer.html'), 'utf8')).toBe('good');
}, 60_000);

test('a commission worked again says what moved; a sheet that fails leaves its page marked; pack writes it anew', async () => {
  const open = "import { openCommission } from 'kernel-helpers';\nconst job = openCommission();";
  const answer = (kind: string) =>
    `job.decide('answer', { inputs: {}, results: { answer: '${kind}', date: '2026-02-01', reason: '' } });`;
  const folder = commission({ '01-a.ipynb': [open, answer('declined')] });
  const rewrite = (...cells: string[]) =>
    cpSync(join(commission({ '01-a.ipynb': cells }), '01-a.ipynb'), join(folder, '01-a.ipynb'));
  expect((await command('work', folder).end).said).not.toContain('What moved');
  rewrite(open, answer('accepted'));
  const { said } = await command('work', folder).end;
  expect(said).toMatch(/^ {2}What moved +before +now\n {2}answer +Answer +declined +accepted$/m);

  rewrite(open, answer('declined'));
  const page = () => readFileSync(join(folder, 'index.html'), 'utf8');
  cpSync(join(commission({ '02-b.ipynb': ["throw new Error('no glue')"] }), '02-b.ipynb'), join(folder, '02-b.ipynb'));
  expect((await command('work', folder).end).code).toBe(1);
  expect(page()).toContain('This page is behind. It shows what was decided up to entry 2. Since then: answer, entry 3');

  const into = testFolder();
  const packed = await commandFrom(into, 'pack', folder).end;
  expect(packed.said).toContain('The page of 2026-01-02-footstool was behind; it was written anew');
  expect(page()).not.toContain('This page is behind');
  expect(findPacked('footstool.zip', into)).toBe(join(into, '2026-01-02-footstool.zip'));
}, 120_000);

test('a draft with a paper is unchanged when it is worked again, and runs again when its paper is gone', async () => {
  const open = "import { openCommission } from 'kernel-helpers';\nconst job = openCommission();";
  const draft = `job.save('answer.html', '<html><head></head><body>yes</body></html>');
job.decide('answer', { inputs: { decided: false }, results: { answer: 'accepted', date: '2026-02-01', reason: '' } });`;
  const folder = commission({ '01-a.ipynb': [open, draft] });
  expect((await command('work', folder).end).said).toMatch(/01-a .*\(draft\)\n/);
  expect((await command('work', folder).end).said).toMatch(/01-a +unchanged\n/);
  rmSync(join(folder, 'drafts', 'answer.html'));
  expect((await command('work', folder).end).said).toMatch(/01-a .*\(draft\)\n/);
}, 60_000);

test('a record that was cut short since it was worked is named, by check and by the next work, and stays as it is', async () => {
  const decide = `const job = openCommission();
job.decide('answer', { inputs: {}, results: { answer: 'accepted', date: '2026-02-01', reason: '' } });`;
  const folder = commission({
    '01-a.ipynb': ["import { openCommission } from 'kernel-helpers';", decide],
    '02-b.ipynb': ["import { openCommission } from 'kernel-helpers';", decide.replace('accepted', 'declined')],
  });
  expect((await command('work', folder).end).code).toBe(0);
  expect(JSON.parse(readFileSync(join(folder, '..', 'last-entries.json'), 'utf8'))).toMatchObject({
    '2026-01-02-footstool': { seq: 2 },
  });
  const record = join(folder, 'record.jsonl');
  const [first] = readFileSync(record, 'utf8').split('\n');
  writeFileSync(record, `${first}\n`);
  const check = await command('check', folder).end;
  expect(check.code).toBe(1);
  expect(check.said).toContain(
    'The record: entry 2, known from elsewhere, is missing: the end of the record was cut off.',
  );
  const work = await command('work', folder).end;
  expect(work.code).toBe(1);
  expect(work.said).toMatch(
    /does not hold entry 2 as last-entries\.json knows it: its end was cut off, or it was written anew/,
  );
  expect(readFileSync(record, 'utf8')).toBe(`${first}\n`);
}, 60_000);

test('a reference from a quote is held against the record', async () => {
  const folder = commission({ '01-a.ipynb': ['1'] });
  writeFileSync(join(folder, 'record.jsonl'), recordBytes([content({ what: 'brief' })]));
  const { code, said } = await command('check', folder, '--reference', `1:${'a'.repeat(12)}`).end;
  expect(code).toBe(1);
  expect(said).toContain(
    'The record: entry 1 is not the one whose reference is 1:aaaaaaaaaaaa: the record was written anew.',
  );
});

test.skipIf(process.platform === 'win32').each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
  '%s stops the run cleanly, says where, and leaves no kernel',
  async (signal) => {
    const folder = commission({ '01-a.ipynb': ['1', `${writePid} for (;;);`], '02-b.ipynb': ['1'] });
    const { child, end } = command('work', folder);
    const kernel = await kernelIn(folder);
    child.kill(signal);
    const { code, said } = await end;
    expect(code).toBe({ SIGINT: 130, SIGTERM: 143, SIGHUP: 129 }[signal]);
    expect(said).toContain('Stopped at 01-a.ipynb, cell 2 of 2.');
    expect(runs(kernel)).toBe(false);
  },
  60_000,
);

test('a runner that is killed in the middle of a busy cell leaves no kernel', async () => {
  const folder = commission({ '01-a.ipynb': [`${writePid} for (;;);`], '02-b.ipynb': ['1'] });
  const { child, end } = command('work', folder);
  const kernel = await kernelIn(folder);
  const others = childrenOf(child);
  child.kill('SIGKILL');
  await end;
  for (const pid of [kernel, ...others]) await gone(pid);
}, 60_000);

/** The processes that a process has started; where the system does not tell, none. */
function childrenOf({ pid }: ChildProcess): number[] {
  try {
    return readFileSync(`/proc/${pid}/task/${pid}/children`, 'utf8').split(' ').filter(Boolean).map(Number);
  } catch {
    return [];
  }
}
