import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { layOutDovetails } from '../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../kernel-helpers/src/joints/finger-joint.js';
import { type CornerSolid, cornerSolids } from './corner-solids.js';
import { area, intersection } from './polygon.js';

// Places are sums of a few dozen doubles under 60 in: a square inch is true to far better than this.
const tolerance = 9;

const sixteenths = (least: number, most: number) => fc.integer({ min: least, max: most }).map((marks) => marks / 16);
const boards = { boardWidth: sixteenths(24, 320), stockThickness: sixteenths(4, 16), proud: sixteenths(0, 4) };
const dovetails = fc
  .record({
    ...boards,
    tailToPin: fc.integer({ min: 1, max: 5 }),
    pinWidth: sixteenths(2, 6),
    halfPin: sixteenths(2, 8),
    topHalfPin: sixteenths(2, 10),
    slope: fc.integer({ min: 4, max: 12 }),
  })
  .filter(({ boardWidth, halfPin, topHalfPin, pinWidth }) => boardWidth > halfPin + topHalfPin + 4 * pinWidth + 1)
  .map(layOutDovetails);
const fingers = fc
  .record({ ...boards, fingers: fc.integer({ min: 2, max: 10 }), play: fc.constant(0) })
  .map(layOutFingers);

const volume = ({ outline, from, to }: CornerSolid) => area(outline) * (to - from);

function overlap(a: CornerSolid, b: CornerSolid): number {
  const depth = Math.min(a.to, b.to) - Math.max(a.from, b.from);
  return depth > 0 ? area(intersection(a.outline, b.outline)) * depth : 0;
}

/** The part of a solid in the block in which both boards cross: past both outside faces. */
function inTheBlock(solid: CornerSolid, proud: number, gauge: number): CornerSolid {
  const width = Math.max(...solid.outline.map(([, y]) => y));
  const block = [
    [proud, 0],
    [gauge, 0],
    [gauge, width],
    [proud, width],
  ] as const;
  return { ...solid, outline: intersection(solid.outline, block), from: Math.max(solid.from, proud) };
}

describe.each([
  ['dovetailed', dovetails],
  ['finger-jointed', fingers],
] as const)('a %s corner, glued together', (_, layouts) => {
  it('has no two pieces in one place', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        const solids = cornerSolids(layout);
        solids.forEach((solid, index) => {
          for (const other of solids.slice(index + 1)) expect(overlap(solid, other)).toBeCloseTo(0, tolerance);
        });
      }),
    );
  });

  it('has no gap: where the boards cross, the pieces fill the whole block', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        const { proud, gaugeSetting, stockThickness, boardWidth } = layout;
        const filled = cornerSolids(layout).reduce(
          (sum, solid) => sum + volume(inTheBlock(solid, proud, gaugeSetting)),
          0,
        );
        expect(filled).toBeCloseTo(stockThickness ** 2 * boardWidth, tolerance);
      }),
    );
  });

  it('stands proud with the ends of both boards, and not further', () => {
    fc.assert(
      fc.property(layouts, (layout) => {
        const { proud, gaugeSetting } = layout;
        for (const { board, outline, from, to } of cornerSolids(layout)) {
          const fromEnd = Math.min(...outline.map(([x]) => x));
          expect(board === 'first' ? [fromEnd, from] : [from, fromEnd]).toEqual([0, proud]);
          expect([Math.max(...outline.map(([x]) => x)), to]).toEqual([gaugeSetting, gaugeSetting]);
        }
      }),
    );
  });
});

it('play in the fingers is the only gap they leave', () => {
  const layout = layOutFingers({ boardWidth: '5 in', stockThickness: '1/2 in', fingers: 10, play: 0.008 });
  const filled = cornerSolids(layout).reduce((sum, solid) => sum + volume(solid), 0);
  // Nine lines, each opened by half of 0.008, half an inch each way.
  expect(5 * 0.25 - filled).toBeCloseTo(9 * 0.004 * 0.25, tolerance);
});

it('finds an overlap and a gap where there is one', () => {
  const square = (from: number, to: number) =>
    [
      [0, from],
      [1, from],
      [1, to],
      [0, to],
    ] as [number, number][];
  const solid = (from: number, to: number) =>
    ({ board: 'first', outline: square(from, to), from: 0, to: 1 }) satisfies CornerSolid;
  expect(overlap(solid(0, 1), solid(0.75, 2))).toBeCloseTo(0.25, tolerance);
  expect(overlap(solid(0, 1), solid(1, 2))).toBe(0);
});
