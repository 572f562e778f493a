import { describe, expect, test } from 'vitest';
import { letterFace } from '../../kernel-helpers/src/record/letter-face.js';

describe.each(['roman', 'book', 'plain'])('the face %s', (name) => {
  test('has what a name and a year are written with', () => {
    const face = letterFace(name);
    const lacking = [..."ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789&.,-'äöüßéñçøå"].filter(
      (character) => (face.glyph(character)?.paths.length ?? 0) === 0,
    );
    expect(lacking).toEqual([]);
  });

  test('sets A and V closer than they stand alone', () => {
    expect(letterFace(name).kerning('A', 'V')).toBeLessThan(0);
  });
});

test('a face that is none', () => {
  expect(() => letterFace('gothic')).toThrow('face: "gothic" given; possible: roman, book, plain');
});
