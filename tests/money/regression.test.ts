import fc from 'fast-check';
import { linearRegression as peer } from 'simple-statistics';
import { expect, test } from 'vitest';
import { linearRegression } from '../../kernel-helpers/src/money/regression.js';

// NIST Statistical Reference Datasets, linear regression, data set Norris: x, then y.
const x = [
  0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5, 11.6,
  556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
];
const y = [
  0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
  557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
];

test("a straight line has NIST's certified slope, intercept and standard error for the data set Norris", () => {
  const line = linearRegression(x.map((each, i) => ({ x: each, y: y[i] as number })));
  expect(line?.slope).toBeCloseTo(1.00211681802045, 12);
  expect(line?.intercept).toBeCloseTo(-0.262323073774029, 10);
  expect(line?.error).toBeCloseTo(0.429796848199937e-3, 14);
});

test('it is the line of an independent library', () => {
  const value = fc.double({ min: -100, max: 100, noNaN: true });
  fc.assert(
    fc.property(fc.array(value, { minLength: 3, maxLength: 30 }), (values) => {
      const points = values.map((each, i) => ({ x: 2020 + i / 4, y: each }));
      const theirs = peer(points.map((point) => [point.x - 2020, point.y]));
      const ours = linearRegression(points);
      expect(ours?.slope).toBeCloseTo(theirs.m, 6);
      expect((ours?.intercept ?? 0) + 2020 * (ours?.slope ?? 0)).toBeCloseTo(theirs.b, 6);
    }),
  );
});

test('too few points, or all at one place, show no trend', () => {
  expect(
    linearRegression([
      { x: 1, y: 1 },
      { x: 2, y: 2 },
    ]),
  ).toBeUndefined();
  expect(linearRegression([1, 2, 3].map((y) => ({ x: 1, y })))).toBeUndefined();
});
