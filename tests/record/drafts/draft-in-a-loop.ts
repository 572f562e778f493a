/**
 * A process of the test of several programs at once: waits for a line on its standard input, then drafts one decision time
 * after time, or, as `brief`, drafts and decides it in turn.
 */
import { readSync, writeSync } from 'node:fs';
import * as z from 'zod';
import { commissionIn } from '../../../kernel-helpers/src/record/commission.js';
import { commissionFolder } from '../../../kernel-helpers/src/record/commission-folder.js';
import { noticesTo } from '../../../kernel-helpers/src/record/notices.js';

const [folder = '', what = 'brief', times = '1'] = process.argv.slice(2);
const job = commissionIn<Record<string, unknown>>({
  ...commissionFolder(folder),
  schemas: { [what]: z.unknown() },
  versions: { node: process.versions.node, helpers: '0.1.0', build: 'source', data: {} },
  notices: noticesTo(() => {}),
});
writeSync(1, 'ready\n');
readSync(0, Buffer.alloc(16));
for (let i = 1; i <= Number(times); i++) {
  const notes = 'walnut '.repeat(Math.floor(4000 * Math.random() ** 2));
  job.save(`${what}.html`, `<body>${what} ${i}</body>`);
  job.decide(what, { inputs: { decided: what === 'brief' && i % 2 === 0 }, results: { i, notes } });
  writeSync(1, `${i}\n`);
}
