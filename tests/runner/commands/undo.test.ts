import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { checkCommission } from '../../../kernel-helpers/src/record/check/check.js';
import { knownHead } from '../../../kernel-helpers/src/record/known-heads.js';
import { undo } from '../../../kernel-helpers/src/runner/commands/undo.js';
import { brief, commissionFolder, open, otherBrief, writeSheet } from '../../record/setting.js';

/** A commission whose brief was decided twice, and what an undo of it says. */
function decidedTwice() {
  const folder = commissionFolder();
  writeSheet(folder, '01-brief.ipynb', "job.decide('brief', {})");
  for (const decision of [brief, otherBrief(12)]) {
    const job = open(folder);
    job.save('quote.html', '<body>Quote</body>');
    job.decide('brief', decision);
  }
  const said: string[] = [];
  const record = () => readFileSync(join(folder, 'record.jsonl'), 'utf8');
  return { folder, said, record, say: (line: string) => said.push(line) };
}

const today = '\\d{4}-\\d\\d-\\d\\d';

describe('npm run undo', () => {
  it('shows the last decision and what stands again, asks, and withdraws it on a yes', async () => {
    const { folder, said, say } = decidedTwice();
    let asked = '';
    const ask = async (question: string) => {
      asked = question;
      return ' Yes ';
    };
    expect(await undo({ folder, ask, yes: false, say })).toBe(true);
    expect(asked).toBe('Withdraw it? yes or no: ');
    expect(said.join('\n')).toMatch(
      new RegExp(
        [
          `^Blanket box: the last decision is brief as of entry 2 \\(${today}\\), by .+\\.`,
          'It changed: inside: 10, now 12',
          `Without it, brief as of entry 1 \\(${today}\\) stands again\\.`,
          'Its papers will say that it was withdrawn: quote\\.html',
          'Withdrawn: brief, entry 2, by entry 3\\. Nothing is deleted: the record shows both\\.',
          '01-brief\\.ipynb decides it again when it runs, unless it says decided: false\\.$',
        ].join('\n'),
      ),
    );
    expect(open(folder).need('brief').inside).toBe(10);
    expect(readFileSync(join(folder, 'quote.html'), 'utf8')).toContain('brief (entry 2) was withdrawn in entry 3');
    expect(knownHead(folder)?.seq).toBe(3);
    expect(checkCommission(folder).faults).toEqual([]);
  });

  it.each(['', 'no', 'n', 'yesterday'])('withdraws nothing on %j', async (answer) => {
    const { folder, said, record, say } = decidedTwice();
    const before = record();
    expect(await undo({ folder, ask: async () => answer, yes: false, say })).toBe(false);
    expect(said.at(-1)).toBe('Nothing is withdrawn.');
    expect(record()).toBe(before);
  });

  it('is done unasked with --yes, and where nobody can be asked only with it', async () => {
    const { folder, record, say } = decidedTwice();
    const before = record();
    await expect(undo({ folder, yes: false, say })).rejects.toThrow('nobody can be asked here. With --yes');
    expect(record()).toBe(before);
    expect(await undo({ folder, yes: true, say })).toBe(true);
  });

  it('says when nothing is left to withdraw', async () => {
    const { folder, say } = decidedTwice();
    for (let i = 0; i < 2; i++) await undo({ folder, yes: true, say });
    const third = undo({ folder, yes: true, say });
    await expect(third).rejects.toThrow(ShopError);
    await expect(third).rejects.toThrow('Nothing is decided in 2026-03-12-blanket-box: there is nothing to withdraw.');
  });
});
