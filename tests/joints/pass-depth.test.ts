import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groovePasses } from '../../kernel-helpers/src/joints/groove-passes.js';
import { passDepth, passDepthFinding } from '../../kernel-helpers/src/joints/pass-depth.js';

describe('depth of one pass', () => {
  // Common practice, no source: a diameter, half of it up to 1/8 in and for round and V-bits, never over 1/4 in.
  it.each([
    [1 / 16, 'straight', 1 / 32],
    [1 / 8, 'straight', 1 / 16],
    [5 / 32, 'straight', 5 / 32],
    [1 / 4, 'straight', 1 / 4],
    [1 / 2, 'straight', 1 / 4],
    [1.5, 'straight', 1 / 4],
    [1 / 4, 'pointed', 1 / 8],
    [1, 'pointed', 1 / 4],
    [3, 'pointed', 1 / 4],
  ] as const)('a bit of %d in, %s: %d in', (diameter, shape, deepest) => {
    expect(passDepth(diameter, shape).deepest).toBe(deepest);
  });

  it('a groove of 3/8 in with a 1/2 in bit goes down twice, not once', () => {
    const { depths } = groovePasses({ grooveWidth: '1/2 in', grooveDepth: '3/8 in', cutter: '1/2 in' });
    expect(depths).toEqual([3 / 16, 3 / 8]);
  });

  it('no step of any groove is deeper than 1/4 in or than its bit bears', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1 / 16, max: 2, noNaN: true }),
        fc.double({ min: 1 / 32, max: 2, noNaN: true }),
        (d, deep) => {
          const { depths } = groovePasses({ grooveWidth: 2, grooveDepth: deep, cutter: d });
          const steps = depths.map((depth, i) => depth - (depths[i - 1] ?? 0));
          for (const step of steps) expect(step).toBeLessThanOrEqual(Math.min(1 / 4, d <= 1 / 8 ? d / 2 : d) + 1e-9);
        },
      ),
    );
  });

  it('stops a deeper one, and names share and limit', () => {
    const found = (step: number) =>
      passDepthFinding({ rule: 'depth of one pass', step, bit: passDepth(1, 'pointed'), field: 'passDepth' });
    expect(found(1 / 4).verdict).toBe('ok');
    expect(found(0.26)).toMatchObject({ verdict: 'stop', change: 'passDepth at most 1/4 in (6.4 mm)' });
    expect(found(0.26).figures).toMatch(/half its diameter, 1\/2 in .*never over 1\/4 in/);
  });
});
