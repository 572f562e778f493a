import { expect, it } from 'vitest';
import { cardMoves, cardWords, fieldWords } from '../../../kernel-helpers/src/record/shop-card/card-words.js';
import { usualShop } from '../../../kernel-helpers/src/record/shop-card/shop-card.js';

it('a shop card is read out in the words a maker would use', () => {
  const { jointer, air, grits, closed, taxInside } = usualShop();
  expect(cardWords(jointer)).toBe('(least length 12 in, widest 8 in)');
  expect(`${fieldWords('air')} ${cardWords(air)}`).toBe('air of the shop (°C 19, humidity 0.45)');
  expect(cardWords(grits.slice(0, 2))).toBe('P80, P100');
  expect([cardWords(closed), cardWords(taxInside)]).toEqual(['none', 'no']);
  expect(fieldWords('handSawKerf')).toBe('hand saw kerf');
});

it('what moved on it is named once, before and now', () => {
  const usual = usualShop();
  expect(cardMoves(usual, usual)).toEqual([]);
  expect(cardMoves(usual, { ...usual, closed: ['2026-12-25'], kerf: '3 mm' })).toEqual([
    { field: 'closed', before: 'none', now: '2026-12-25' },
    { field: 'kerf', before: '1/8 in', now: '3 mm' },
  ]);
});
