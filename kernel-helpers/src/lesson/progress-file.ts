import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import { appendLine } from '../disk/append-line.js';
import { diskError, isSystemError } from '../disk/disk-error.js';
import { sweepLock, withLock } from '../disk/lock.js';

/** The name of the apprentice's own file beside the lessons. @internal */
export const progressName = 'progress.jsonl';

/** One figure that was tried in a lesson. */
export interface Attempt {
  /** Local date and time with its offset, `2026-03-12T19:30:00-05:00`. */
  at: string;
  who: string;
  /** `01-reading-a-tape` */
  lesson: string;
  what: string;
  yours: number;
  computed: number;
  unit: string;
  hit: boolean;
  /** How it compared, in words. */
  note: string;
}

const attemptShape = z.object({
  at: z.iso.datetime({ offset: true }),
  who: z.string(),
  lesson: z.string(),
  what: z.string(),
  yours: z.number(),
  computed: z.number(),
  unit: z.string(),
  hit: z.boolean(),
  note: z.string(),
});

/** All that was tried, oldest first. A line that the power cut short, or that someone spoilt, is passed over. @internal */
export function readProgress(folder: string): Attempt[] {
  return textOf(folder)
    .split('\n')
    .flatMap((line) => attemptIn(line) ?? []);
}

/**
 * Adds one line, whole or not at all, unless the last try at the same figure says the same.
 *
 * @returns whether it was added
 * @throws ShopError  a disk that refuses
 * @internal
 */
export function appendAttempt(folder: string, attempt: Attempt): boolean {
  const path = join(folder, progressName);
  const lock = `${path}.lock`;
  try {
    return withLock(lock, () => {
      sweepLock(lock);
      const before = readProgress(folder).findLast(
        ({ lesson, what, who }) => lesson === attempt.lesson && what === attempt.what && who === attempt.who,
      );
      if (before && before.yours === attempt.yours && before.computed === attempt.computed) return false;
      const text = textOf(folder);
      const lead = text === '' || text.endsWith('\n') ? '' : '\n';
      appendLine(path, Buffer.from(`${lead}${JSON.stringify(attempt)}\n`));
      return true;
    });
  } catch (error) {
    throw diskError(error, `${path} cannot be written`);
  }
}

function textOf(folder: string): string {
  try {
    return readFileSync(join(folder, progressName), 'utf8');
  } catch (error) {
    if (isSystemError(error) && error.code === 'ENOENT') return '';
    throw diskError(error, `${progressName} in ${folder} cannot be read`);
  }
}

function attemptIn(line: string): Attempt | undefined {
  try {
    return attemptShape.safeParse(JSON.parse(line)).data;
  } catch {
    return undefined;
  }
}
