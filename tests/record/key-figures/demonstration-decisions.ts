import { join } from 'node:path';
import { readRecord } from '../../../kernel-helpers/src/record/chain/record-file.js';
import type { Decisions } from '../../../kernel-helpers/src/record/decisions/decisions.js';

const folder = join(import.meta.dirname, '../../../data/commissions/2026-11-25-tea-chest');

/** What the demonstration's record says of each thing, in its latest form. */
export function demonstrationDecisions(): Decisions {
  const { entries } = readRecord(folder);
  return Object.fromEntries(entries.map(({ what, results }) => [what, results])) as unknown as Decisions;
}
