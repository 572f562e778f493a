import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import { commissionFolder } from '../commission-folder.js';
import type { OpenedCommission } from '../open-commission.js';
import { noted, type Uses } from './uses.js';

const shape = z.record(z.string(), z.string());

/**
 * The same commission; where the runner asks for it, what the sheet looks at through it is noted, so that a sheet for which
 * nothing has moved can be left alone.
 *
 * @internal
 */
export function withUsesKept(job: OpenedCommission): OpenedCommission {
  const folder = process.env.COMMISSION_USED;
  if (!folder) return job;
  const { store } = commissionFolder(job.folder);
  return Object.assign(
    job,
    noted(job, store, (uses) => keepUses(folder, uses)),
  );
}

/** Keeps what a sheet looked at where the runner, which named the folder, finds it by the kernel's process. @internal */
export function keepUses(folder: string, uses: Uses): void {
  mkdirSync(folder, { recursive: true });
  writeFileSync(usesFile(folder, process.pid), JSON.stringify(uses));
}

/** What the sheet in a kernel looked at: nothing when it opened no commission; undefined when that is not known. @internal */
export function keptUses(folder: string, kernel: number): Uses | undefined {
  const path = usesFile(folder, kernel);
  if (!existsSync(path)) return {};
  try {
    return shape.parse(JSON.parse(readFileSync(path, 'utf8')));
  } catch {
    return undefined;
  }
}

function usesFile(folder: string, kernel: number): string {
  return join(folder, `${kernel}.json`);
}
