/**
 * A process of the kill tests: waits for a line on its standard input, then makes decisions one after another and,
 * after each, writes the entry's number and hash to its standard output.
 */
import { readSync, writeSync } from 'node:fs';
import * as z from 'zod';
import { commissionIn } from '../../kernel-helpers/src/record/commission.js';
import { commissionFolder } from '../../kernel-helpers/src/record/commission-folder.js';
import { noticesTo } from '../../kernel-helpers/src/record/notices.js';

const [folder = '', times = '1'] = process.argv.slice(2);
const job = commissionIn<{ brief: unknown }>({
  ...commissionFolder(folder),
  schemas: { brief: z.unknown() },
  versions: { node: process.versions.node, helpers: '0.1.0', build: 'source', data: {} },
  notices: noticesTo(() => {}),
});
writeSync(1, 'ready\n');
readSync(0, Buffer.alloc(16));
for (let i = 0; i < Number(times); i++) {
  // Up to some 30 KB, so that a line takes more than one page of the disk.
  const results = { by: process.pid, i, notes: 'walnut '.repeat(Math.floor(4000 * Math.random() ** 2)) };
  const { entry } = job.decide('brief', { inputs: {}, results });
  writeSync(1, `${entry?.seq} ${entry?.hash}\n`);
}
