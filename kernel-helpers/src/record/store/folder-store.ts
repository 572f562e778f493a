import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { diskError, isSystemError } from '../../disk/disk-error.js';
import { replaceFile } from '../../disk/replace-file.js';
import { appendEntry, soundEntries } from '../chain/record-file.js';
import { sha256 } from '../chain/sha256.js';
import { withDraft, withoutDraft } from '../drafts/draft.js';
import { cardName, keepCard, keptCard, shopCardPath } from '../shop-card/card-file.js';
import { changeDrafts, readDrafts } from './drafts-file.js';
import { stockFile } from './stock-file.js';
import { noFile, type Store } from './store.js';

/** A commission in its folder; the shop's stock is `stock.json` in data/, above the commissions. @internal */
export function folderStore(folder: string): Store {
  const cardPath = join(folder, cardName);
  return {
    entries: () => soundEntries(folder),
    append: (compose) => appendEntry(folder, compose),
    read(file) {
      const path = resolve(folder, file);
      try {
        const bytes = readFileSync(path);
        return { text: bytes.toString('utf8'), digest: sha256(bytes) };
      } catch (error) {
        if (isSystemError(error) && error.code === 'ENOENT') throw noFile(file, folder);
        throw diskError(error, `${path} cannot be read`);
      }
    },
    has: (file) => existsSync(resolve(folder, file)),
    save: (file, text) => replaceFile(join(folder, file), text),
    drafts: () => readDrafts(folder),
    putDraft: (draft, papers) => changeDrafts(folder, (drafts) => withDraft(drafts, draft), papers),
    removeDraft: (draft) => changeDrafts(folder, (drafts) => withoutDraft(drafts, draft)),
    shopCard: {
      own: () => keptCard(shopCardPath(folder)),
      copy: () => keptCard(cardPath),
      keep: (card) => keepCard(cardPath, card),
    },
    stock: stockFile(join(dirname(dirname(folder)), 'stock.json')),
  };
}
