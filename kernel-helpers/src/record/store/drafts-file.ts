import { existsSync, mkdirSync, readdirSync, readFileSync, rmdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import * as z from 'zod';
import { diskError } from '../../disk/disk-error.js';
import { sweepLock, withLock } from '../../disk/lock.js';
import { replaceFile } from '../../disk/replace-file.js';
import { ShopError } from '../../measure/shop-error.js';
import { findingSchema, headSchema } from '../chain/entry.js';
import { deepFreeze } from '../chain/json-value.js';
import type { Draft } from '../drafts/draft.js';
import { isPaperName } from '../drafts/paper-name.js';

/** The folder of drafts and of their papers, in a commission's. @internal */
export const draftsFolder = 'drafts';

const shape: z.ZodType<Draft[]> = z.array(
  z.object({
    at: z.iso.datetime({ offset: true }),
    who: z.string(),
    what: z.string().min(1),
    needs: z.record(z.string(), z.union([headSchema, z.object({ draft: z.string() })])),
    inputs: z.unknown(),
    results: z.unknown(),
    findings: z.array(findingSchema),
    overrides: z.record(z.string(), z.string()),
    seed: z.number().optional(),
    papers: z.array(z.string().refine(isPaperName)).optional(),
  }),
);

// A sheet asks for the drafts a dozen times, and they are mostly as they were.
let last: { text: string; drafts: Draft[] } | undefined;

/**
 * The drafts in a commission's folder, in the order in which they were made.
 *
 * @throws ShopError  when their file is damaged or cannot be read
 * @internal
 */
export function readDrafts(folder: string): Draft[] {
  const path = fileIn(folder);
  let text: string;
  try {
    if (!existsSync(path)) return [];
    text = readFileSync(path, 'utf8');
  } catch (error) {
    throw diskError(error, `${path} cannot be read`);
  }
  try {
    if (last?.text !== text) last = { text, drafts: deepFreeze(shape.parse(JSON.parse(text))) };
    return last.drafts;
  } catch (error) {
    const wrong = error instanceof SyntaxError ? 'it was cut short or changed' : 'it is not as the daybook wrote it';
    throw new ShopError(
      `${path}: ${wrong}. It holds drafts only, nothing that was decided: remove it and run the sheets again. The record is as it was.`,
    );
  }
}

/**
 * Changes the drafts, with no other writer between reading and writing; papers that no draft names any more are taken away.
 *
 * @param papers  of the new drafts, by name
 * @throws ShopError  when the disk refuses; the drafts are then as they were
 * @internal
 */
export function changeDrafts(
  folder: string,
  change: (drafts: readonly Draft[]) => Draft[],
  papers: ReadonlyMap<string, string> = new Map(),
): void {
  const own = join(folder, draftsFolder);
  // Beside the folder of drafts, not in it: that one goes with its last draft.
  const lock = join(folder, `${draftsFolder}.lock`);
  try {
    withLock(lock, () => {
      sweepLock(lock);
      const before = readDrafts(folder);
      const after = change(before);
      if (after.length > 0) mkdirSync(own, { recursive: true });
      for (const [file, text] of papers) replaceFile(join(own, file), text);
      const left = papersOf(before).filter((file) => !papersOf(after).includes(file));
      if (after.length > 0) replaceFile(fileIn(folder), fileText(after));
      else rmSync(fileIn(folder), { force: true });
      for (const file of left) rmSync(join(own, file), { force: true });
      if (after.length === 0 && existsSync(own) && readdirSync(own).length === 0) rmdirSync(own);
    });
  } catch (error) {
    throw diskError(error, `The drafts in ${folder} cannot be written`);
  }
}

const fileIn = (folder: string) => join(folder, draftsFolder, 'drafts.json');
const papersOf = (drafts: readonly Draft[]) => drafts.flatMap(({ papers }) => papers ?? []);
const fileText = (drafts: readonly Draft[]) => `[\n${drafts.map((draft) => JSON.stringify(draft)).join(',\n')}\n]\n`;
