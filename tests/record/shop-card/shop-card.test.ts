import { describe, expect, it } from 'vitest';
import {
  readShopCard,
  type ShopCard,
  usualShop,
  withOwn,
} from '../../../kernel-helpers/src/record/shop-card/shop-card.js';

describe('a shop card', () => {
  it('is whole from the start, and takes from the maker what the maker typed', () => {
    expect(usualShop().kerf).toBe('1/8 in');
    const card = readShopCard({ kerf: '3 mm', hourlyRate: 42 });
    expect(card).toEqual({ ...usualShop(), kerf: '3 mm', hourlyRate: 42 });
  });

  it('a figure that is not possible is refused in one line: field, value, what is possible', () => {
    expect(() => readShopCard({ kerf: '3 in' })).toThrow(
      'kerf: "3 in" given; possible: 1/64 in to 1/2 in (what the saw takes)',
    );
    expect(() => readShopCard({ planer: { ...usualShop().planer, widest: 'wide' } })).toThrow(
      /^planer, widest: "wide" given; .*possible: /,
    );
    expect(() => readShopCard({ taxInside: 'no' })).toThrow('taxInside: "no" given; possible: true');
    expect(() => readShopCard({ hourlyRates: 40 })).toThrow(
      'hourlyRates: there is no such parameter; the nearest is hourlyRate',
    );
    expect(() => readShopCard([1])).toThrow('possible: fields of a shop card in braces');
  });

  it.each(Object.keys(usualShop()) as (keyof ShopCard)[])('%s cannot be null', (field) => {
    expect(() => readShopCard({ [field]: null })).toThrow(new RegExp(`^${field}.*null given; .*possible: `));
  });

  it('says otherwise for one commission, and a part of a group leaves the rest of it', () => {
    const usual = usualShop();
    const card = withOwn(usual, { kerf: '3/32 in', router: { machine: 'hand router' } });
    expect(card).toEqual({ ...usual, kerf: '3/32 in', router: { ...usual.router, machine: 'hand router' } });
    expect(usual).toEqual(usualShop());
  });

  it('what is said otherwise is refused by its place in the sheet', () => {
    expect(() => withOwn(usualShop(), { kerf: -1 })).toThrow('shop, kerf: -1 given; possible: 1/64 in to 1/2 in');
    expect(() => withOwn(usualShop(), { kerv: '1/8 in' })).toThrow(
      'kerv: there is no such parameter; the nearest is kerf',
    );
    for (const wrong of [null, 'no', []])
      expect(() => withOwn(usualShop(), wrong as object)).toThrow(`shop: ${JSON.stringify(wrong)} given; possible: {}`);
  });
});
