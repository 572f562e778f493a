import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addMoney,
  allocateMoney,
  formatMoney,
  lessMoney,
  money,
  shareOfMoney,
} from '../../kernel-helpers/src/money/money.js';

describe('money', () => {
  it('has no lost pennies', () => {
    expect(addMoney([money(0.1, 'USD'), money(0.2, 'USD')])).toEqual(money(0.3, 'USD'));
    expect(formatMoney(money(1234.5, 'USD'))).toBe('$1,234.50');
    expect(money(1234, 'JPY').minor).toBe(1234);
  });

  it('rounds halves away from zero, as a person reads the figure and not as the machine holds it', () => {
    expect(money(1.005, 'EUR').minor).toBe(101);
    expect(money(-1.005, 'EUR').minor).toBe(-101);
    expect(shareOfMoney({ minor: 200, currency: 'USD' }, 0.0825).minor).toBe(17);
  });

  it('takes back what was added', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: -1e9, max: 1e9 }), (a, b) => {
        const [first, second] = [a, b].map((minor) => ({ minor, currency: 'EUR' })) as [Cents, Cents];
        expect(lessMoney(addMoney([first, second]), second)).toEqual(first);
      }),
    );
  });

  it('does not add currencies together, nor knows one that is none', () => {
    expect(() => addMoney([money(1, 'USD'), money(1, 'EUR')])).toThrow('currency: USD and EUR given');
    expect(() => lessMoney(money(1, 'USD'), money(1, 'EUR'))).toThrow('currency: USD and EUR given');
    expect(() => money(1, 'dollars')).toThrow('currency: "dollars" given; possible: a code of ISO 4217');
    expect(() => money(1, 'QQQ')).toThrow('ISO 4217');
    expect(() => money(Number.NaN, 'USD')).toThrow('NaN given; possible: an amount of money');
  });
});

type Cents = { minor: number; currency: string };

describe('an amount that is divided', () => {
  it('loses no penny, and no share is off by one or more', () => {
    const weights = fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 12 });
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), weights, (minor, parts) => {
        fc.pre(parts.some((part) => part > 0));
        const shares = allocateMoney({ minor, currency: 'USD' }, parts);
        expect(addMoney(shares)).toEqual({ minor, currency: 'USD' });
        const whole = parts.reduce((sum, part) => sum + part, 0);
        for (const [i, share] of shares.entries())
          expect(Math.abs(share.minor - (minor * (parts[i] as number)) / whole)).toBeLessThan(1);
      }),
    );
  });

  it('gives nothing, and not less than nothing, to who has no claim', () => {
    expect(allocateMoney(money(-1, 'USD'), [1, 0])).toEqual([money(-1, 'USD'), money(0, 'USD')]);
  });

  it('goes to the first where all have the same claim', () => {
    expect(allocateMoney(money(1, 'USD'), [1, 1, 1]).map(({ minor }) => minor)).toEqual([34, 33, 33]);
  });

  it('refuses weights that cannot be', () => {
    for (const weights of [[], [0, 0], [1, -1], [Number.NaN], [Infinity]])
      expect(() => allocateMoney(money(1, 'USD'), weights)).toThrow('weights: ');
  });
});
