import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readDrafts } from '../../../kernel-helpers/src/record/store/drafts-file.js';
import { commission } from '../setting.js';

const root = join(import.meta.dirname, '..', '..', '..');

function command(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'kernel-helpers', 'dist', 'command.js'), ...args],
    { cwd: root, encoding: 'utf8' },
  );
  return { code: status, said: stdout + stderr };
}

const open = "import { openCommission } from 'kernel-helpers';\nconst job = openCommission();";
/** A sheet that tries an answer, with a paper. */
const answer = (day: string) => `job.save('quote.html', '<body>for the ${day}th</body>');
job.decide('answer', {
  inputs: { decided: false }, results: { answer: 'accepted', date: '2026-02-${day}', reason: '' },
});`;
const sheet = (day: string, ...more: string[]) => ({ '01-a.ipynb': [open, answer(day), ...more] });
const change = (folder: string, cells: Record<string, string[]>) =>
  cpSync(join(commission(cells), '01-a.ipynb'), join(folder, '01-a.ipynb'));

test('tried time after time, then decided in one act, then withdrawn: the record holds what was decided', () => {
  const folder = commission(sheet('11'));
  const record = () => readFileSync(join(folder, 'record.jsonl'), 'utf8');
  for (const day of ['11', '12', '13']) {
    change(folder, sheet(day));
    const { code, said } = command('work', folder);
    expect(said).toContain('(draft)');
    expect(said).toContain('Drafts, not decided: answer.');
    expect(code).toBe(0);
  }
  expect(existsSync(join(folder, 'record.jsonl'))).toBe(false);
  expect(readFileSync(join(folder, 'drafts', 'quote.html'), 'utf8')).toMatch(/DRAFT[\s\S]*for the 13th/);

  change(folder, sheet('14', "throw new Error('no glue');"));
  expect(command('work', folder).said).toContain('Nothing of this sheet was kept.');
  expect(readDrafts(folder)).toMatchObject([{ results: { date: '2026-02-13' } }]);
  expect(readFileSync(join(folder, 'drafts', 'quote.html'), 'utf8')).toContain('for the 13th');

  change(folder, sheet('13'));
  expect(command('work', folder, '--decide').said).toContain('(recorded, entry 1)');
  expect(existsSync(join(folder, 'drafts'))).toBe(false);
  expect(readFileSync(join(folder, 'quote.html'), 'utf8')).toBe('<body>for the 13th</body>');
  const decided = record();
  expect(command('work', folder, '--all').said).toContain('Same: the record says all of this already.');
  expect(record()).toBe(decided);

  expect(command('undo', folder).said).toContain('Nothing is withdrawn: nobody can be asked here.');
  const undone = command('undo', folder, '--yes');
  expect(undone.said).toContain('Withdrawn: answer, entry 1, by entry 2.');
  expect(undone.code).toBe(0);
  expect(record().startsWith(decided)).toBe(true);
  expect(command('work', folder).said).toContain('Drafts, not decided: answer.');
  const check = command('check', folder);
  expect(check.said).toContain('Not decided yet, so not compared: answer.');
  expect(check.code).toBe(0);
}, 180_000);
