import { describe, expect, it } from 'vitest';
import { compileFormula, evaluate, type Formula } from '../../kernel-helpers/src/measure/formula.js';

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
      'width: 5 in given; possible: from 1 up to 4 in (Area: definition)',
    );
    expect(() => evaluate(area, { a: -1, b: 2 })).toThrow(
      'length: -1 in given; possible: from 0 in (Area: definition)',
    );
    expect(() => evaluate(area, { a: Number.NaN, b: 2 })).toThrow('length: NaN in given');
  });

  it('takes a quotient that is whole but for rounding as whole', () => {
    const passes = { ...area, expression: 'ceil(a / b)' };
    expect(evaluate(passes, { a: 3.3, b: 1.1 })).toBe(3);
    expect(evaluate(passes, { a: 3.4, b: 1.1 })).toBe(4);
    expect(evaluate({ ...area, expression: 'floor(a / b)' }, { a: 3.3, b: 1.1 })).toBe(3);
  });

  it.each([
    ['a * c', 'A formula cannot hold c: it is not among its symbols'],
    ['a * toString', 'A formula cannot hold toString: it is not among its symbols'],
    ['constructor(a)', 'A formula cannot hold FunctionNode: constructor(a)'],
    ['sqrt(a, b)', 'A formula cannot hold FunctionNode: sqrt(a, b)'],
    ['a = 2', 'A formula cannot hold AssignmentNode: a = 2'],
    ['a > 2 ? a : b', 'A formula cannot hold ConditionalNode: (a > 2) ? a : b'],
    ['a!', 'A formula cannot hold OperatorNode: a!'],
    ['"a" * b', 'A formula cannot hold ConstantNode: "a"'],
  ])('refuses %s', (expression, message) => {
    expect(() => evaluate({ ...area, expression }, { a: 2, b: 2 })).toThrow(message);
  });
});

describe('a formula for loops', () => {
  it('takes the open symbols in their order, the others by name', () => {
    const quotient: Formula<'a' | 'b' | 'in'> = {
      ...area,
      expression: 'a / b - in',
      symbols: { ...area.symbols, in: { meaning: 'taken off', unit: 'in' } },
    };
    expect(compileFormula(quotient, ['b', 'a'])({ in: 1 })(2, 8)).toBe(3);
    expect(compileFormula(quotient, [])({ a: 8, b: 2, in: 1 })()).toBe(3);
  });

  it('puts other formulas in place of symbols', () => {
    const side: Formula<'a'> = { ...area, expression: 'a + 1', symbols: { a: area.symbols.a } };
    expect(compileFormula(area, ['a'], { b: side })({})(3)).toBe(12);
    expect(compileFormula(area, [], { b: side })({ a: 3 })()).toBe(12);
  });
});
