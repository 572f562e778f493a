import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ShopError } from '../../../kernel-helpers/src/measure/shop-error.js';
import { toJsonValue } from '../../../kernel-helpers/src/record/chain/json-value.js';

describe('what a record can keep', () => {
  it('comes back as it went in', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(toJsonValue(value, 'inputs')).toEqual(JSON.parse(JSON.stringify(value)));
      }),
    );
  });

  it('takes a field that is undefined for one left out', () => {
    expect(toJsonValue({ proud: undefined, thickness: 0.625 }, 'inputs')).toStrictEqual({ thickness: 0.625 });
  });

  it('takes the same part listed twice, and objects made in a notebook cell of another context', () => {
    const side = { length: 12 };
    expect(toJsonValue([side, side], 'results')).toEqual([side, side]);
    expect(toJsonValue(runInNewContext('({ sides: [{ length: 12 }] })'), 'results')).toEqual({
      sides: [{ length: 12 }],
    });
  });

  const circle: { parts: unknown[] } = { parts: [] };
  circle.parts.push(circle);
  class Board {}
  it.each([
    [{ width: Number.NaN }, 'results.width is NaN'],
    [{ parts: [{ length: 1 / 0 }] }, 'results.parts[0].length is Infinity'],
    [{ 'lid gap': -1 / 0 }, 'results["lid gap"] is -Infinity'],
    [[undefined], 'results[0] is nothing (undefined)'],
    [undefined, 'results is nothing (undefined)'],
    [{ day: new Date(0) }, 'results.day is a Date'],
    [{ boards: new Map() }, 'results.boards is a Map'],
    [{ board: new Board() }, 'results.board is a Board'],
    [{ air: new Float64Array(2) }, 'results.air is a Float64Array'],
    [{ width: () => 1 }, 'results.width is a function'],
    [{ count: 2n }, 'results.count is a bigint'],
    [{ [Symbol('hidden')]: 1 }, 'results is an object with symbols for names'],
    [circle, 'results.parts[0] is a thing that contains itself'],
  ])('refuses %o and names the field', (value, message) => {
    expect(() => toJsonValue(value, 'results')).toThrow(ShopError);
    expect(() => toJsonValue(value, 'results')).toThrow(message);
  });
});
