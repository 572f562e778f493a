import { basename, join } from 'node:path';
import { ShopError } from '../../measure/shop-error.js';
import { soundEntries } from '../../record/chain/record-file.js';
import { sheetLinks } from '../../record/sheets.js';
import { readNotebook } from '../sheets/notebook.js';
import { sheetOrder } from '../sheets/order.js';
import { isPageBehind, type PageAsked } from './page-ground.js';

/** A page that was behind: written anew, or why it could not be. */
export interface Renewed {
  /** The commission's folder. */
  folder: string;
  problem?: string;
}

/**
 * Writes a commission's page anew from its sheets as they were saved last, where it has one that is behind.
 *
 * @returns nothing when it is not behind, or there is none
 */
export async function renewPage(folder: string, asked: PageAsked = {}): Promise<Renewed | undefined> {
  try {
    if (!isPageBehind(folder, asked)) return undefined;
    const recorded = new Set(soundEntries(folder).map(({ what }) => what));
    const sheets = sheetOrder(sheetLinks(folder), recorded).map(({ file }) => ({
      file,
      notebook: readNotebook(join(folder, file)),
    }));
    const { writePage } = await import('./write-page.js');
    await writePage(folder, sheets);
    return { folder };
  } catch (error) {
    if (error instanceof ShopError) return { folder, problem: error.message };
    throw error;
  }
}

/** What became of a page, in one line. */
export function renewedText({ folder, problem }: Renewed): string {
  const name = basename(folder);
  if (problem) return `The page of ${name} is behind, and could not be written anew: ${problem}`;
  return `The page of ${name} was behind; it was written anew from its sheets as they were saved last.`;
}
