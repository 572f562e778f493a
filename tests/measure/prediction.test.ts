import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { askFirst, comparePrediction, type Question } from '../../kernel-helpers/src/measure/prediction.js';
import { ShopError } from '../../kernel-helpers/src/measure/shop-error.js';

const sum: Question = {
  what: 'the sum',
  yours: '',
  computed: 4.625,
  unit: 'in',
  within: '1/64 in',
  mistakes: [
    { figure: '4 3/8', step: 'the eighths were taken off' },
    { figure: '4 1/2 in', step: 'the eighth was left out' },
  ],
};
const tryIt = (yours: string | number, over: Partial<Question> = {}) => comparePrediction({ ...sum, ...over, yours });

describe('a figure predicted first', () => {
  it.each(['', '   '])('is asked for as long as none is given (%j), and the computed one stays hidden', (yours) => {
    expect(tryIt(yours)).toBeUndefined();
    expect(askFirst(sum)).not.toMatch(/4 5|4\.6|117/);
    expect(askFirst(sum)).toMatch(/^the sum: your own figure first\./);
  });

  it.each(['4 5/8', '4 5/8 in', '4⅝"', '4.625', '37/8', '117.475 mm', 4.625])(
    'is a hit when it is right, written as %s',
    (yours) => {
      expect(tryIt(yours)).toMatchObject({ hit: true, off: 0, step: undefined });
      expect(tryIt(yours)?.note).toMatch(/A hit\.$/);
    },
  );

  it('is a hit up to the tolerance and no further', () => {
    expect(tryIt('4 41/64')).toMatchObject({ hit: true, off: 1 / 64 });
    expect(tryIt('4 21/32')?.hit).toBe(false);
  });

  it('says how far off it is, both ways, in inches and as a share', () => {
    expect(tryIt('5 in')).toMatchObject({ hit: false, off: 0.375 });
    expect(tryIt('5 in')?.share).toBeCloseTo(0.375 / 4.625, 12);
    expect(tryIt('5 in')?.note).toMatch(
      /you say 5 in \(127\.0 mm\), it is 4 5\/8 in \(117\.5 mm\)\. You are 3\/8 in \(9\.5 mm\) too much, 8\.1 % of it\./,
    );
    expect(tryIt('4 in')?.note).toMatch(/5\/8 in \(15\.9 mm\) too little/);
    expect(tryIt('4 ft', { mistakes: [] })?.note).toMatch(/too much, 938 % of it/);
    expect(tryIt('1 in', { computed: 0 })).toMatchObject({ share: undefined, off: 1 });
  });

  it('names the step of a known mistake, and of two that come near the nearer', () => {
    expect(tryIt('4 1/2')?.step).toBe('the eighth was left out');
    expect(tryIt('4 3/8')?.note).toMatch(/Look again: the eighths were taken off$/);
    const wide = { within: '1/8 in', computed: 6 };
    expect(tryIt('4 7/16 in', wide)?.step).toBe('the eighths were taken off');
    expect(tryIt('4 29/64 in', wide)?.step).toBe('the eighth was left out');
  });

  it('names a general step when no known mistake comes near', () => {
    expect(tryIt('9 in')?.step).toMatch(/line by line/);
  });

  it('is a hit even where a mistake would give the same figure', () => {
    expect(tryIt('4 5/8', { mistakes: [{ figure: '4 5/8', step: 'none' }] })).toMatchObject({
      hit: true,
      step: undefined,
    });
  });

  it.each([
    ['12.5', '%', 12.5],
    ['12.5 %', '%', 12.5],
    ['12 1/2', '%', 12.5],
    ['-3', '%', -3],
    ['1/8', '', 0.125],
    ['.25', '', 0.25],
    ['6 h', 'h', 6],
    ['$1,250.50', 'dollars', 1250.5],
    ['1250.5 dollars', 'dollars', 1250.5],
    ['2.42 bd ft', 'bd ft', 2.42],
  ])('is read as %s with the unit "%s"', (yours, unit, figure) => {
    expect(tryIt(yours, { unit, within: 0.001, mistakes: [] })?.yours).toBeCloseTo(figure, 12);
  });

  it('shows small lengths as a caliper does, and numbers as finely as the tolerance asks', () => {
    expect(tryIt('0.046', { computed: 0.0453, within: 0.001 })?.note).toMatch(
      /0\.046 in \(1\.17 mm\), it is 0\.045 in/,
    );
    expect(tryIt('9', { computed: 9.27, unit: '%', within: 0.5, mistakes: [] })?.note).toMatch(
      /you say 9 %, it is 9\.27 %/,
    );
    expect(tryIt('3', { computed: 3, unit: 'passes', within: 0, mistakes: [] })?.note).toMatch(
      /you say 3 passes, it is 3 passes/,
    );
  });

  it.each([
    ['in', 'about five'],
    ['in', '5 3 in'],
    ['%', 'a lot'],
    ['%', '1.2.3'],
    ['', '1/0'],
    ['h', '3 mm'],
    ['h', Number.NaN],
  ])('that cannot be read (%s, %s) gives one plain line that names the question', (unit, yours) => {
    const read = () => tryIt(yours, { unit, within: 0.1, mistakes: [] });
    expect(read).toThrow(ShopError);
    expect(read).toThrow(/^the sum: yours: .*write it like[^\n]*$/);
  });

  it('comes out the same whichever of two units of length it is written in', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 6400 }), fc.integer({ min: 1, max: 6400 }), (marks, truth) => {
        const inches = marks / 64;
        const tape = tryIt(`${marks}/64 in`, { computed: truth / 64, mistakes: [] });
        const metric = tryIt(`${inches * 25.4} mm`, { computed: truth / 64, mistakes: [] });
        expect(metric?.hit).toBe(tape?.hit);
        expect(metric?.off).toBeCloseTo(tape?.off ?? Number.NaN, 9);
      }),
    );
  });
});
