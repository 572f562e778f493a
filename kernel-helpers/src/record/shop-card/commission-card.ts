import { differences } from '../chain/differences.js';
import { type CardMove, cardMoves, cardWords, fieldWords } from './card-words.js';
import { type ShopCard, usualShop, withOwn } from './shop-card.js';

/** The shop card: the shop's own, and the commission's copy of it. */
export interface CardStore {
  /** Undefined where none was kept. @throws ShopError when it cannot be read */
  own(): ShopCard | undefined;
  copy(): ShopCard | undefined;
  /** Keeps a copy. @throws ShopError when it cannot be written */
  keep(card: ShopCard): void;
}

/** What a sheet takes from the shop card. @internal */
export interface CommissionCard {
  /** See `Commission.shop`. */
  take<Field extends keyof ShopCard>(own: object, fields: readonly Field[]): Pick<ShopCard, Field>;
  /** All that was taken, as it counts here. */
  taken(): Partial<ShopCard>;
}

/**
 * The shop card as a commission has it: its own copy, made from the shop's card when it first takes from it, so that it runs the
 * same years later.
 *
 * @param from.keep  whether a copy may be made: not in practice, nor in a run that only compares
 * @param from.say  takes what was taken, in one line, and what the shop's card says otherwise since
 * @internal
 */
export function commissionCard(from: {
  store: CardStore;
  name: string;
  keep: boolean;
  say: (line: string) => void;
}): CommissionCard {
  const { store, say } = from;
  const taken: Partial<ShopCard> = {};
  let read: { here: ShopCard; now: ShopCard } | undefined;

  function cards() {
    const own = store.own();
    const copy = store.copy();
    // A shop without a card of its own has not changed its mind.
    if (copy) return { here: copy, now: own ?? copy };
    const card = own ?? usualShop();
    if (from.keep) store.keep(card);
    return { here: card, now: card };
  }

  return {
    taken: () => taken,
    take(own, fields) {
      read ??= cards();
      const { here, now } = read;
      const card = withOwn(here, own);
      const picked = Object.fromEntries(fields.map((field) => [field, card[field]])) as Pick<
        ShopCard,
        (typeof fields)[number]
      >;
      Object.assign(taken, picked);
      const said = (from: ShopCard, list: readonly (keyof ShopCard)[]) =>
        list.map((field) => `${fieldWords(field)} ${cardWords(from[field])}`).join('; ');
      const differ = (a: ShopCard, b: ShopCard) =>
        fields.filter((field) => differences(a[field], b[field], field).length > 0);
      const otherwise = differ(card, here);
      const asCard = fields.filter((field) => !otherwise.includes(field));
      if (asCard.length > 0) say(`From the shop card: ${said(card, asCard)}.`);
      if (otherwise.length > 0) say(`Otherwise than the shop card, for this piece: ${said(card, otherwise)}.`);
      const moved = differ(now, here);
      if (moved.length > 0)
        say(
          `The shop card has changed since this commission took its copy: ${said(now, moved)}. npm run work -- ${from.name} --card takes it as it is now.`,
        );
      return picked;
    },
  };
}

/**
 * Takes the shop's card as it is now in place of a commission's copy.
 *
 * @returns what differs from the copy it had
 * @throws ShopError  a card that cannot be read or kept; the copy is then as it was
 * @internal
 */
export function takeCardAnew(store: CardStore): CardMove[] {
  const now = store.own() ?? usualShop();
  const before = store.copy();
  store.keep(now);
  return before ? cardMoves(before, now) : [];
}
