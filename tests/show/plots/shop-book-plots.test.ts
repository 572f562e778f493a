import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { shopBook } from '../../../kernel-helpers/src/shop/shop-book.js';
import {
  correctionPlot,
  lidSeasonsPlot,
  pricesPlot,
  yieldPlot,
} from '../../../kernel-helpers/src/show/plots/shop-book-plots.js';
import { must, testFolder } from '../../record/setting.js';
import { inventShop } from '../../shop/invented-shop.js';
import { cutOff, overlaps, pictureOf } from '../read-svg.js';

function book(count: number, seed: number) {
  const folder = join(testFolder(), 'commissions');
  mkdirSync(folder);
  inventShop(folder, { count, seed });
  return shopBook(folder);
}

describe.each([
  [3, 1],
  [12, 2],
  [90, 3],
])('the shop book over %i commissions', (count, seed) => {
  it('draws pictures whose labels neither meet nor leave the picture', () => {
    const shop = book(count, seed);
    const pictures = [
      ...(shop.corrections.length > 0 ? [correctionPlot(shop.corrections)] : []),
      ...shop.prices.map(pricesPlot),
      yieldPlot(shop.commissions),
      lidSeasonsPlot(shop),
    ].map(pictureOf);
    for (const picture of pictures) {
      expect(overlaps(picture.labels)).toEqual([]);
      expect(cutOff(picture.labels, picture)).toEqual([]);
    }
  });
});

describe('what the pictures say', () => {
  it('is in words too: factors with their pieces, the rise of prices, lids in the band', () => {
    const shop = book(90, 3);
    const { factor, pieces, name } = must(shop.corrections[0]);
    const words = correctionPlot(shop.corrections).text;
    expect(words).toContain(`${name} ${factor.toFixed(2)}`);
    expect(words).toContain(`from ${pieces} pieces`);
    expect(pricesPlot(must(shop.prices[0])).text).toMatch(/The line: \d\.\d\d USD a year more\./);
    expect(lidSeasonsPlot(shop).text).toContain(`${shop.lidsInBand?.count} of ${shop.lidsInBand?.of} lie in the band`);
  });

  it('is said of nothing where there is nothing', () => {
    expect(lidSeasonsPlot({ lids: [] }).text).toContain('No lid was measured yet');
    expect(pricesPlot({ currency: 'EUR', asked: [{ name: 'x', date: '2026-01-01', perHour: 60 }] }).text).toContain(
      'Too few quotes for a line',
    );
  });
});
