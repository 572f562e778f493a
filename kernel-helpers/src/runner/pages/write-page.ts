import { basename, join } from 'node:path';
import { replaceFile } from '../../disk/replace-file.js';
import type { Brief } from '../../piece/brief.js';
import { readRecord } from '../../record/chain/record-file.js';
import { pageName } from '../../record/page-behind.js';
import { staleness, staleText, standing, standsFor } from '../../record/stale.js';
import { readDrafts } from '../../record/store/drafts-file.js';
import { commissionPage } from '../../show/page/commission-page.js';
import { titleOf } from '../find/find-commission.js';
import type { FinishedSheet } from '../sheets/run-sheets.js';
import { readGlossary } from './glossary.js';
import { sheetsDigest } from './page-ground.js';

/**
 * Writes the page of a whole commission, `index.html` in its folder.
 *
 * @param sheets  in their order, with what each showed when it ran last
 * @returns its path
 */
export async function writePage(
  folder: string,
  sheets: readonly Pick<FinishedSheet, 'file' | 'notebook'>[],
): Promise<string> {
  const name = basename(folder);
  const { entries, head, faults } = readRecord(folder);
  const drafts = readDrafts(folder);
  const brief = standsFor('brief', entries, drafts)?.results as Partial<Brief> | undefined;
  const stale = standing(entries).flatMap((entry) => staleness(entries, entry) ?? []);
  const html = commissionPage({
    title: brief?.piece ?? titleOf(name),
    client: brief?.client,
    date: /^\d{4}-\d\d-\d\d(?=-)/.exec(name)?.[0] ?? '',
    sheets: sheets.map(({ file, notebook }) => ({ name: basename(file, '.ipynb'), notebook })),
    record: {
      entries,
      head,
      drafts,
      problems: [...faults.map(({ problem }) => problem), ...stale.map(staleText)],
    },
    sheetsDigest: sheetsDigest(folder),
    glossary: readGlossary(),
  });
  const path = join(folder, pageName);
  replaceFile(path, html);
  return path;
}
