import fc from 'fast-check';
import { expect, it } from 'vitest';
import { fromBase64, toBase64 } from '../../../kernel-helpers/src/show/kit/base64.js';

it('is the base64 of UTF-8, as Node writes and reads it', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const data = Buffer.from(text, 'utf8').toString('base64');
      expect(toBase64(text)).toBe(data);
      expect(fromBase64(data)).toBe(Buffer.from(data, 'base64').toString('utf8'));
    }),
  );
});

it('holds texts of any length', () => {
  const text = '⟷ 9 1/2 in, '.repeat(100_000);
  expect(fromBase64(toBase64(text))).toBe(text);
});

it('puts a sign in the place of half a character, and keeps a mark of byte order', () => {
  expect(fromBase64(toBase64('a\ud800b'))).toBe('a\ufffdb');
  expect(fromBase64(toBase64('\ufeffa'))).toBe('\ufeffa');
});
