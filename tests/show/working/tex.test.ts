import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { parse } from '../../../kernel-helpers/src/measure/math.js';
import { numberTex, type Setting, treeTex } from '../../../kernel-helpers/src/show/working/tex.js';
import { readTex } from '../read-tex.js';

const inSymbols: Setting = {
  symbol: (name) => ({ tex: name, binds: 4 }),
  times: (_, right) => (/^\d/.test(right) ? '\\times' : '\\,'),
};
const typeset = (expression: string) => treeTex(parse(expression), inSymbols).tex;

describe('a formula in type', () => {
  it.each([
    ['a * b * c', 'a \\, b \\, c'],
    ['2 * (t + p)', '2 \\, (t + p)'],
    ['((a)) + ((b * c))', 'a + b \\, c'],
    ['a - (b + c)', 'a - (b + c)'],
    ['a + (b - c)', 'a + b - c'],
    ['a - (-b)', 'a - (-b)'],
    ['a / b / c', '\\frac{\\frac{a}{b}}{c}'],
    ['(a + b) / (c - d)', '\\frac{a + b}{c - d}'],
    ['(a / b)^2', '\\left(\\frac{a}{b}\\right)^{2}'],
    ['(a + b)^2', '(a + b)^{2}'],
    ['a^(1 / n)', 'a^{1/n}'],
    ['-a^2', '-a^{2}'],
    ['(-a)^2', '(-a)^{2}'],
    ['sin(a)^2', '\\sin^{2}(a)'],
    ['log(a)', '\\ln(a)'],
    ['exp(-a)', 'e^{-a}'],
    ['atan(1 / n) * 180 / pi', '\\frac{\\arctan\\left(\\frac{1}{n}\\right) \\times 180}{\\pi}'],
  ])('%s is set without a needless bracket', (expression, tex) => {
    expect(typeset(expression)).toBe(tex);
  });

  it('refuses what it has no type for', () => {
    expect(() => typeset('a > b')).toThrow('A formula cannot hold the operator >');
    expect(() => typeset('[a, b]')).toThrow('A formula cannot hold ArrayNode');
  });

  it('means what the formula means, whatever is put in', () => {
    const number = fc.integer({ min: -40, max: 40 }).map((n) => n / 8);
    const { expression } = fc.letrec<{ expression: string }>((tie) => ({
      expression: fc.oneof(
        { depthSize: 'small', withCrossShrink: true },
        fc.constantFrom('a', 'b', 'c', '3', '0.25', 'pi'),
        fc
          .tuple(tie('expression'), fc.constantFrom('+', '-', '*', '/'), tie('expression'))
          .map(([left, sign, right]) => `(${left}) ${sign} (${right})`),
        tie('expression').map((inner) => `-(${inner})`),
        tie('expression').map((inner) => `(${inner})^2`),
        tie('expression').map((inner) => `2^(${inner})`),
        fc.tuple(tie('expression'), tie('expression')).map(([x, y]) => `max(${x}, ${y})`),
        tie('expression').map((inner) => `sin(${inner})^2`),
        tie('expression').map((inner) => `exp(${inner})`),
      ),
    }));
    fc.assert(
      fc.property(expression, fc.record({ a: number, b: number, c: number }), (text, values) => {
        const computed = evaluate(text, { ...values });
        fc.pre(Number.isFinite(computed));
        const inNumbers: Setting = {
          symbol: (name) => numberTex(String(values[name as 'a'])),
          times: () => '\\times',
        };
        const read = readTex(treeTex(parse(text), inNumbers).tex);
        expect(Math.abs(read - computed)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(computed)));
      }),
      { numRuns: 400 },
    );
  });
});
