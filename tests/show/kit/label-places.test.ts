import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadApart } from '../../../kernel-helpers/src/show/kit/label-places.js';

describe('labels along a line', () => {
  it('stay where they want to be when there is room', () => {
    expect(spreadApart([10, 50, 90], 20, 0, 100)).toEqual([10, 50, 90]);
  });

  it('never cover one another, keep their order, and stay inside where they fit', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { minLength: 1, maxLength: 8 }), (wanted) => {
        const places = spreadApart(wanted, 18, 0, 300);
        const order = wanted.map((_, i) => i).sort((a, b) => (wanted[a] as number) - (wanted[b] as number) || a - b);
        const sorted = order.map((i) => places[i] as number);
        for (let i = 1; i < sorted.length; i++)
          expect((sorted[i] as number) - (sorted[i - 1] as number)).toBeGreaterThanOrEqual(18 - 1e-9);
        expect(sorted[0]).toBeGreaterThanOrEqual(-1e-9);
        expect(sorted.at(-1)).toBeLessThanOrEqual(300 + 1e-9);
      }),
    );
  });
});
