import { refusal, type ShopError } from '../../measure/shop-error.js';
import type { Appended, Entry, EntryContent } from '../chain/entry.js';
import type { Draft } from '../drafts/draft.js';
import type { CardStore } from '../shop-card/commission-card.js';

/** Where a commission is kept: its record, its drafts, its papers, the files it reads, and the shop's stock beside it. */
export interface Store {
  /** All entries, oldest first. @throws ShopError when the record is damaged or cannot be read */
  entries(): Entry[];
  /**
   * Appends one entry, with no other writer between reading the record and writing to it.
   *
   * @param compose  gives the new entry from the record as it stands, or undefined for none
   * @throws ShopError  when it cannot be written; the record is then as it was
   */
  append(compose: (entries: Entry[]) => EntryContent | undefined): Appended;
  /** A file that a sheet works from, by its name in the commission. @throws ShopError when it cannot be read */
  read(file: string): KeptFile;
  /** Whether there is a file of that name. */
  has(file: string): boolean;
  /** Keeps a paper, whole or not at all. @throws ShopError when it cannot be written */
  save(file: string, text: string): void;
  /** Drafts, in the order in which they were made. @throws ShopError when they are damaged or cannot be read */
  drafts(): Draft[];
  /**
   * Keeps a draft and its papers in place of the one of the same decision; those of other decisions stay, whoever writes.
   *
   * @param papers  texts by name; they are found as `drafts/<name>`
   * @throws ShopError  when it cannot be written
   */
  putDraft(draft: Draft, papers: ReadonlyMap<string, string>): void;
  /** Takes a draft and its papers away, unless another took its place since it was read. @throws ShopError when it cannot */
  removeDraft(draft: Draft): void;
  stock: StockStore;
  shopCard: CardStore;
}

/** A file's text, and the SHA-256 of its bytes. */
export interface KeptFile {
  text: string;
  digest: string;
}

/** The shop's stock, as data: `readShopStock` says what it holds. */
export interface StockStore {
  /** Where it is kept, for messages: of what was refused in it, with the line where it has lines. */
  placeOf(error: ShopError): string;
  /** The stock, or undefined when there is none yet. @throws ShopError when it cannot be read */
  read(): unknown;
  /**
   * Puts a new stock in place of the old, with no other writer between reading and writing.
   *
   * @throws ShopError  when it cannot be written, and what `next` throws; the stock is then as it was
   */
  change(next: (before: unknown) => unknown): void;
}

/** The refusal of a file that a sheet was told to work from. @internal */
export function noFile(file: string, place: string): ShopError {
  return refusal({ path: ['file'], given: file, possible: `possible: the name of a file that lies in ${place}` });
}
