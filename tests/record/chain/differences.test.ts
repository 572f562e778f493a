import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { differences, differenceText } from '../../../kernel-helpers/src/record/chain/differences.js';

describe('what differs between two makings of a decision', () => {
  it('is nothing between a thing and its copy', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(differences(value, structuredClone(value), 'results')).toEqual([]);
      }),
    );
  });

  it('is the same set of names whichever of the two was recorded', () => {
    const paths = (a: unknown, b: unknown) => differences(a, b, 'results').map(({ path }) => path);
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (a, b) => {
        expect(paths(a, b).sort()).toEqual(paths(b, a).sort());
      }),
    );
  });

  it('leaves out rounding, and nothing more than rounding', () => {
    const size = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(size, (width) => {
        expect(differences(width, width * (1 + 5e-10), 'width')).toEqual([]);
        expect(differences(width, width * (1 + 2e-9), 'width')).toHaveLength(1);
      }),
    );
    expect(differences(0.1 + 0.2 - 0.3, 0, 'clearance')).toEqual([]);
  });

  it('names each value that moved, appeared or went', () => {
    const recorded = { width: 9.5, sides: [{ length: 12 }, { length: 10 }], joint: 'dovetail', proud: 0.125 };
    const now = { width: 9.25, sides: [{ length: 12 }], joint: 'dovetail', 'thin wall': true };
    expect(differences(recorded, now, 'results')).toEqual([
      { path: 'results.width', recorded: 9.5, now: 9.25 },
      { path: 'results.sides[1]', recorded: { length: 10 }, now: undefined },
      { path: 'results.proud', recorded: 0.125, now: undefined },
      { path: 'results["thin wall"]', recorded: undefined, now: true },
    ]);
  });

  it('tells a list from an object, and nothing from a null', () => {
    expect(differences([], {}, 'x')).toHaveLength(1);
    expect(differences(null, undefined, 'x')).toHaveLength(1);
    expect(differences('1', 1, 'x')).toHaveLength(1);
    expect(differences({}, { toString: 1 }, 'x')).toEqual([{ path: 'x.toString', recorded: undefined, now: 1 }]);
  });

  it('reads as one line', () => {
    expect(differenceText({ path: 'results.width', recorded: 9.5, now: 9.25 })).toBe('width: 9.5, now 9.25');
    expect(differenceText({ path: 'inputs.wood', recorded: 'walnut', now: undefined })).toBe(
      'wood as typed: "walnut", now not there',
    );
  });
});
