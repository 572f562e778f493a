import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { recordName } from './chain/record-file.js';

/**
 * The demonstration commission's folder, looked for in `data/commissions` of this folder and of each one above it:
 * the earliest tea chest that has a record. Undefined when the demonstration was never run.
 *
 * @internal
 */
export function demonstration(folder: string): string | undefined {
  const commissions = join(folder, 'data', 'commissions');
  if (existsSync(commissions)) {
    const name = readdirSync(commissions)
      .sort()
      .find((name) => /^\d{4}-\d\d-\d\d-tea-chest$/.test(name) && existsSync(join(commissions, name, recordName)));
    if (name) return join(commissions, name);
  }
  const above = dirname(folder);
  return above === folder ? undefined : demonstration(above);
}
