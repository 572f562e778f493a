import { join } from 'node:path';
import { dataFolder } from '../../disk/daybook-folder.js';
import { readJsonFile } from '../../disk/json-file.js';
import { replaceFile } from '../../disk/replace-file.js';
import { readShopCard, type ShopCard } from './shop-card.js';

/** The shop card's file: the shop's own in data/, and the copy of each commission in its folder. @internal */
export const cardName = 'shop.json';

/** Where the shop's own card is kept, seen from a commission or from a folder of sheets. @internal */
export function shopCardPath(folder: string): string {
  return join(dataFolder(folder), cardName);
}

/**
 * A shop card as it was kept.
 *
 * @returns undefined where there is none
 * @throws ShopError  one line: the file, the line, the field and its value, what is possible
 * @internal
 */
export function keptCard(path: string): ShopCard | undefined {
  return readJsonFile(path, {
    read: readShopCard,
    possible: 'fields of a shop card in braces; worksheets/my-shop.ipynb writes them',
  });
}

/** Keeps a card, whole or not at all. @throws ShopError  when the disk refuses @internal */
export function keepCard(path: string, card: ShopCard): void {
  replaceFile(path, cardText(card));
}

/** A card as its file holds it. @internal */
export function cardText(card: ShopCard): string {
  return `${JSON.stringify(card, null, 2)}\n`;
}
