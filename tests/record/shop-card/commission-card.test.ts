import { describe, expect, it } from 'vitest';
import { commissionCard, takeCardAnew } from '../../../kernel-helpers/src/record/shop-card/commission-card.js';
import { usualShop } from '../../../kernel-helpers/src/record/shop-card/shop-card.js';
import { memoryStore } from '../../../kernel-helpers/src/record/store/memory-store.js';

function cardOf({ store = memoryStore(), keep = true } = {}) {
  const said: string[] = [];
  const card = commissionCard({
    store: store.shopCard,
    name: '2026-03-12-recipe-box',
    keep,
    say: (line) => said.push(line),
  });
  return { card, said, store };
}

describe('what a sheet takes from the shop card', () => {
  it('is said in one line, and kept among the inputs of its decision', () => {
    const { card, said } = cardOf();
    expect(card.take({}, ['kerf', 'coats'])).toEqual({ kerf: '1/8 in', coats: 2 });
    expect(said).toEqual(['From the shop card: kerf 1/8 in; coats 2.']);
    expect(card.taken()).toEqual({ kerf: '1/8 in', coats: 2 });
  });

  it('can be otherwise for this piece, and that is said', () => {
    const { card, said } = cardOf();
    expect(card.take({ kerf: '3/32 in' }, ['kerf', 'coats']).kerf).toBe('3/32 in');
    expect(said).toEqual([
      'From the shop card: coats 2.',
      'Otherwise than the shop card, for this piece: kerf 3/32 in.',
    ]);
  });

  it('stays as it was when the shop moves on, and says what has moved of what it takes', () => {
    const before = { ...usualShop(), hourlyRate: 40 };
    const store = memoryStore({ shopCard: before });
    cardOf({ store }).card.take({}, ['hourlyRate']);

    const later = {
      ...store,
      shopCard: { ...store.shopCard, own: () => ({ ...before, hourlyRate: 46, margin: 0.3 }) },
    };
    const { card, said } = cardOf({ store: later });
    expect(card.take({}, ['hourlyRate'])).toEqual({ hourlyRate: 40 });
    expect(said[1]).toBe(
      'The shop card has changed since this commission took its copy: hourly rate 46. npm run work -- 2026-03-12-recipe-box --card takes it as it is now.',
    );
  });

  it('leaves no copy where nothing is kept', () => {
    const { card, store } = cardOf({ keep: false });
    card.take({}, ['kerf']);
    expect(store.shopCard.copy()).toBeUndefined();
  });
});

describe('the shop card taken as it is now', () => {
  it('takes the place of the copy, and says what differs', () => {
    const store = memoryStore({ shopCard: { ...usualShop(), hourlyRate: 46 } }).shopCard;
    store.keep({ ...usualShop(), hourlyRate: 40 });
    expect(takeCardAnew(store)).toEqual([{ field: 'hourly rate', before: '40', now: '46' }]);
    expect(store.copy()?.hourlyRate).toBe(46);
    expect(takeCardAnew(store)).toEqual([]);
  });
});
