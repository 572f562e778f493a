import { nextLine, readChain, refuseDamaged } from '../chain/chain.js';
import type { EntryContent } from '../chain/entry.js';
import { deepFreeze } from '../chain/json-value.js';
import { sha256 } from '../chain/sha256.js';
import { type Draft, withDraft, withoutDraft } from '../drafts/draft.js';
import type { ShopCard } from '../shop-card/shop-card.js';
import { noFile, type Store } from './store.js';

/** A store that holds everything itself: what was kept can be read back from it. @internal */
export interface MemoryStore extends Store {
  /** The record, as `record.jsonl` would hold it. */
  record(): Uint8Array;
  /** Files to read and papers kept, by name. */
  readonly files: ReadonlyMap<string, string>;
}

/**
 * A commission that is kept nowhere but in this object.
 *
 * @param from.record  the bytes of a record to begin with
 * @param from.files  files to read, by name
 * @param from.stock  the shop's stock
 * @param from.shopCard  the shop's own card
 * @internal
 */
export function memoryStore(
  from: {
    name?: string;
    record?: Uint8Array;
    files?: Record<string, string>;
    stock?: unknown;
    shopCard?: ShopCard;
  } = {},
): MemoryStore {
  const { name = 'this commission' } = from;
  let record = from.record ?? new Uint8Array();
  let stock = from.stock;
  let copy: ShopCard | undefined;
  let drafts: Draft[] = [];
  const files = new Map(Object.entries(from.files ?? {}));
  const sound = () => {
    const chain = readChain(record);
    refuseDamaged(name, chain.faults);
    return chain;
  };
  const changeDrafts = (next: Draft[]) => {
    const named = new Set(next.flatMap(({ papers }) => papers ?? []));
    for (const file of drafts.flatMap(({ papers }) => papers ?? []))
      if (!named.has(file)) files.delete(`drafts/${file}`);
    drafts = next;
  };
  return {
    files,
    record: () => record,
    entries: () => sound().entries,
    append(compose: (entries: ReturnType<Store['entries']>) => EntryContent | undefined) {
      const { entries, head, unterminated, incomplete } = sound();
      const content = compose(entries);
      if (!content) return {};
      const whole = record.subarray(0, record.length - (incomplete?.length ?? 0));
      const line = nextLine(head, content);
      record = joined(whole, unterminated ? newline : new Uint8Array(), line, newline);
      return { entry: sound().entries.at(-1) };
    },
    read(file) {
      const text = files.get(file);
      if (text === undefined) throw noFile(file, name);
      return { text, digest: sha256(text) };
    },
    has: (file) => files.has(file),
    save: (file, text) => void files.set(file, text),
    drafts: () => drafts,
    putDraft(draft, papers) {
      changeDrafts(withDraft(drafts, deepFreeze(draft)));
      for (const [file, text] of papers) files.set(`drafts/${file}`, text);
    },
    removeDraft: (draft) => changeDrafts(withoutDraft(drafts, draft)),
    shopCard: {
      own: () => from.shopCard,
      copy: () => copy,
      keep(card) {
        copy = card;
      },
    },
    stock: {
      placeOf: () => "the shop's stock",
      read: () => stock,
      change(next) {
        stock = next(stock);
      },
    },
  };
}

const newline = Uint8Array.of(0x0a);

function joined(...pieces: Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
