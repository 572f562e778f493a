import fc from 'fast-check';
import { unit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { formatLength, parseLength, shownLength } from '../../kernel-helpers/src/measure/length.js';
import { ShopError } from '../../kernel-helpers/src/measure/shop-error.js';

describe('a length as people write it', () => {
  it.each([
    ['9 1/2 in', 9.5],
    ['5/8', 0.625],
    ['5/8"', 0.625],
    ['5⅛”', 5.125],
    ['9-1/2"', 9.5],
    ['3.25 in', 3.25],
    ['1 ft 3 1/2 in', 15.5],
    ['1′ 3½″', 15.5],
    ['5\'-3"', 63],
    ["6'", 72],
    ['240 mm', 1200 / 127],
    ['24 cm', 1200 / 127],
    ['1 m', 5000 / 127],
    ['2 INCHES', 2],
    ['½', 0.5],
    ['1⁄4 in', 0.25],
    ['0', 0],
  ])('reads %s', (text, inches) => {
    expect(parseLength(text)).toBe(inches);
  });

  it('takes a bare number as inches unless the sheet says millimetres', () => {
    expect(parseLength('254')).toBe(254);
    expect(parseLength('254', { bare: 'mm' })).toBe(10);
  });

  it.each([
    '',
    'abc',
    '12 foo',
    '5 3 in',
    '3 in 2 in',
    '2 mm 1 in',
    "6' 2",
    '1/0 in',
    '3/4/5',
    '9,5 in',
    '1e3 in',
    '1 in 2 ft',
  ])('refuses %j and says how to write it', (text) => {
    expect(() => parseLength(text)).toThrow(ShopError);
    expect(() => parseLength(text)).toThrow(/write it like 9 1\/2 in/);
  });

  it('refuses a size below nothing, but takes an offset below nothing', () => {
    expect(() => parseLength('-3 in')).toThrow('"-3 in": less than nothing');
    expect(parseLength('-3 in', { signed: true })).toBe(-3);
  });

  it('gives back every tape mark exactly', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 20000 }),
        fc.constantFrom(8 as const, 16 as const, 32 as const, 64 as const),
        (marks, denominator) => {
          const inches = marks / denominator;
          expect(parseLength(formatLength(inches, { system: 'tape', denominator }))).toBe(inches);
        },
      ),
    );
  });

  it('shows no length further off than half a mark, and says how far', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.constantFrom('tape' as const, 'mm' as const, 'caliper' as const),
        (inches, system) => {
          const { text, shown, off } = shownLength(inches, { system });
          const halfMark = { tape: 1 / 64, mm: 0.05 / 25.4, caliper: 0.0005 }[system];
          expect(Math.abs(off)).toBeLessThanOrEqual(halfMark * (1 + 1e-9));
          expect(parseLength(text.replace(/ \(.*/, ''))).toBeCloseTo(shown, 9);
          expect(shown - off).toBeCloseTo(inches, 9);
        },
      ),
    );
  });

  it("agrees with an independent library's units", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99999 }), fc.constantFrom('mm', 'cm', 'm', 'ft', 'in'), (count, name) => {
        expect(parseLength(`${count} ${name}`)).toBeCloseTo(unit(count, name).toNumber('in'), 8);
      }),
    );
  });

  it('writes both systems side by side', () => {
    expect(formatLength(9.5, { system: 'both' })).toBe('9 1/2 in (241.3 mm)');
    expect(formatLength(-0.03125, { system: 'tape' })).toBe('-1/32 in');
    expect(formatLength(5.98771, { system: 'caliper' })).toBe('5.988 in (152.09 mm)');
  });
});
