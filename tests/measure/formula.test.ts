import { describe, expect, it } from 'vitest';
import { evaluate, type Formula } from '../../kernel-helpers/src/measure/formula.js';

const area: Formula<'a' | 'b'> = {
  name: 'Area',
  result: { meaning: 'area', unit: 'in2' },
  expression: 'a * b',
  symbols: { a: { meaning: 'length', unit: 'in', min: 0 }, b: { meaning: 'width', unit: 'in', min: 1, max: 4 } },
  source: 'definition',
};

describe('a formula', () => {
  it('gives the number of its own expression', () => {
    expect(evaluate(area, { a: 3, b: 2 })).toBe(6);
  });

  it('says which value is outside the range it holds in', () => {
    expect(() => evaluate(area, { a: 3, b: 5 })).toThrow(
      'Area: width is 5 in; possible: from 1 up to 4 in (definition)',
    );
    expect(() => evaluate(area, { a: -1, b: 2 })).toThrow('Area: length is -1 in; possible: from 0 in (definition)');
    expect(() => evaluate(area, { a: Number.NaN, b: 2 })).toThrow('length is NaN');
  });
});
