import { keepCard, keptCard, shopCardPath } from './card-file.js';
import { type CardMove, cardMoves } from './card-words.js';
import { readShopCard, type ShopCard, usualShop } from './shop-card.js';

/** A card that was looked at and, if asked for, kept. */
export interface KeptCard {
  card: ShopCard;
  /** What differs from the card kept before, or from the usual one where there was none: field, before, now; in words. */
  moved: CardMove[];
  /** What became of it, in a sentence. */
  note: string;
}

/**
 * Looks the shop card over as it was typed and keeps it in data/shop.json. Commissions begun before keep the copy they have.
 *
 * @param typed  fields of the card
 * @param keep  false to look only
 * @param folder  where the sheet stands
 * @throws ShopError  one line: the field, the value given, what is possible, why; the card kept before is then as it was
 */
export function keepShopCard(
  typed: object,
  { keep, folder = process.cwd() }: { keep: boolean; folder?: string },
): KeptCard {
  const card = readShopCard(typed);
  const path = shopCardPath(folder);
  const kept = keptCard(path);
  const before = kept ?? usualShop();
  const moved = cardMoves(before, card);
  if (!keep) return { card, moved, note: 'Looked over and not kept: set keep: true and run the sheet again.' };
  keepCard(path, card);
  const same = kept !== undefined && moved.length === 0;
  return {
    card,
    moved,
    note: same
      ? 'Same: the shop card says all of this already.'
      : 'Kept. Commissions begun from now on take it; those begun before keep the copy they have.',
  };
}
