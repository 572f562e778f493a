import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Head } from '../../record/chain/entry.js';
import { readRecord } from '../../record/chain/record-file.js';
import { sha256 } from '../../record/chain/sha256.js';
import { pageName, pageShows } from '../../record/page-behind.js';
import { readDrafts } from '../../record/store/drafts-file.js';

/** A digest of a commission's sheets as they stand in their files. */
export function sheetsDigest(folder: string): string {
  return sha256(JSON.stringify(sheetFiles(folder).map((file) => [file, sha256(readFileSync(join(folder, file)))])));
}

/** What is known of a commission already, so that it need not be looked up. */
export interface PageAsked {
  /** Where its record ends. */
  head?: Head;
  /** To go by the times of the sheets' files first: one that is older than the page is taken not to have changed since. */
  quickly?: boolean;
}

/** Whether a commission has a page, and it does not show what record, sheets and drafts say now. */
export function isPageBehind(folder: string, { head, quickly = false }: PageAsked = {}): boolean {
  const page = join(folder, pageName);
  if (!existsSync(page)) return false;
  const html = readFileSync(page, 'utf8');
  if (!pageShows(html, head ?? readRecord(folder).head, readDrafts(folder)).all) return true;
  const written = statSync(page).mtimeMs;
  const unchanged = quickly && sheetFiles(folder).every((file) => statSync(join(folder, file)).mtimeMs <= written);
  return !unchanged && sheetsOfPage(html) !== sheetsDigest(folder);
}

const sheetsOfPage = (html: string) => /<header [^>]*data-sheets="([0-9a-f]{64})"/.exec(html)?.[1];

function sheetFiles(folder: string): string[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.ipynb'))
    .sort();
}
