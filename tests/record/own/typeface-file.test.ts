import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import { typeface } from '../../../kernel-helpers/src/record/own/typeface-file.js';
import { readTypeface } from '../../../kernel-helpers/src/surface/lettering/typeface.js';

describe.each(['roman', 'book', 'plain'])('the face %s', (name) => {
  test('has what a name and a year are written with', () => {
    const face = typeface(name);
    const lacking = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789&.,-'äöüßéñçøå"].filter(
      (character) => (face.glyph(character)?.paths.length ?? 0) === 0,
    );
    expect(lacking).toEqual([]);
  });

  test('sets A and V closer than they stand alone', () => {
    expect(typeface(name).kerning('A', 'V')).toBeLessThan(0);
  });
});

test('a font is read from wherever its bytes lie, as in a pool that other files share', () => {
  const font = readFileSync(
    createRequire(import.meta.url).resolve('@fontsource/lato/files/lato-latin-400-normal.woff'),
  );
  const pool = Buffer.alloc(font.length + 128, 'other');
  font.copy(pool, 64);
  expect(readTypeface(pool.subarray(64, 64 + font.length)).capitalHeight).toBe(typeface('plain').capitalHeight);
});

test('a face that is none', () => {
  expect(() => typeface('gothic')).toThrow('face: "gothic" given; possible: roman, book, plain');
});
