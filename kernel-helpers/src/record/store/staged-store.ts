import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { basename, join } from 'node:path';
import { replaceFile } from '../../disk/replace-file.js';
import { deepFreeze } from '../chain/json-value.js';
import { appendStaged, recordName } from '../chain/record-file.js';
import { type Draft, withDraft, withoutDraft } from '../drafts/draft.js';
import { changeDrafts, draftsFolder } from './drafts-file.js';
import { folderStore } from './folder-store.js';
import type { Store } from './store.js';

/**
 * A commission in its folder, whose new entries, drafts and papers wait in another until the sheet that makes them has run to its end:
 * {@link takeOver} puts them in their place, and what is left there when a sheet fails was never kept.
 *
 * @param folder  the commission's
 * @param waiting  a folder of nothing else
 * @internal
 */
export function stagedStore(folder: string, waiting: string): Store {
  const kept = folderStore(folder);
  const staged = folderStore(waiting);
  const record = join(waiting, recordName);
  const stage = (change: DraftChange) => {
    mkdirSync(waiting, { recursive: true });
    replaceFile(join(waiting, changesName), JSON.stringify([...readChanges(waiting), change]));
  };
  return {
    ...kept,
    entries: () => (existsSync(record) ? staged : kept).entries(),
    append(compose) {
      mkdirSync(waiting, { recursive: true });
      if (!existsSync(record) && existsSync(join(folder, recordName))) copyFileSync(join(folder, recordName), record);
      return staged.append(compose);
    },
    has: (file) => staged.has(file) || kept.has(file),
    read: (file) => (staged.has(file) ? staged : kept).read(file),
    save(file, text) {
      mkdirSync(waiting, { recursive: true });
      staged.save(file, text);
    },
    drafts() {
      const changes = readChanges(waiting);
      return changes.length > 0 ? deepFreeze(changed(kept.drafts(), changes)) : kept.drafts();
    },
    putDraft: (draft, papers) => stage({ draft, papers: Object.fromEntries(papers) }),
    removeDraft: (draft) => stage({ without: draft }),
  };
}

/** What a sheet does to the drafts: kept as a change, since other programs may draft while it runs. */
type DraftChange = { draft: Draft; papers: Record<string, string> } | { without: Draft };

const changesName = `${draftsFolder}.json`;

function readChanges(waiting: string): DraftChange[] {
  const path = join(waiting, changesName);
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : [];
}

function changed(drafts: readonly Draft[], changes: DraftChange[]): Draft[] {
  return changes.reduce<Draft[]>(
    (so, change) => ('draft' in change ? withDraft(so, change.draft) : withoutDraft(so, change.without)),
    [...drafts],
  );
}

/**
 * Takes over what waits: the entries in one write, then the papers, then the drafts.
 *
 * @throws ShopError  when the record was written to meanwhile, or the disk refuses; nothing that waits is kept then
 * @internal
 */
export function takeOver(folder: string, waiting: string): void {
  if (!existsSync(waiting)) return;
  try {
    const files = readdirSync(waiting);
    if (files.includes(recordName)) appendStaged(folder, readFileSync(join(waiting, recordName)));
    for (const file of files.filter((file) => !basename(file).startsWith(recordName) && file !== changesName))
      replaceFile(join(folder, file), readFileSync(join(waiting, file)));
    const changes = readChanges(waiting);
    const papers = changes.flatMap((change) => ('draft' in change ? Object.entries(change.papers) : []));
    if (changes.length > 0) changeDrafts(folder, (drafts) => changed(drafts, changes), new Map(papers));
  } finally {
    rmSync(waiting, { recursive: true, force: true, maxRetries: 3 });
  }
}
