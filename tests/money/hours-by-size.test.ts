import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateHours } from '../../kernel-helpers/src/money/hours.js';
import { allOperations, countWork } from '../../kernel-helpers/src/money/operations.js';
import { sizeBookcase } from '../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';
import { benchSteps } from '../../kernel-helpers/src/time/bench-steps.js';
import { box, dovetails } from './a-box.js';

const work = { boards: 4, coats: 3 };
const chest = sizeBox({ insideLength: 18, insideWidth: 14, insideDepth: 10, species: 'walnut-black' });
const bookcase = sizeBookcase({ species: 'oak-northern-red', width: 36, height: 36, depth: 11, shelves: 2, load: 20 });
const hoursOf = (piece: Parameters<typeof countWork>[0]['piece'], joint?: typeof dovetails) =>
  Object.fromEntries(
    estimateHours({ counts: countWork({ piece, joint, ...work }) }).byOperation.map(({ id, mean }) => [id, mean]),
  );

describe('hours follow the size', () => {
  it('finish worked by hand: set-up once, brush and rags for each coat, and every square foot of every coat', () => {
    // Faces of all parts, both sides; set-up (5 + 40 + 15)/6, a coat (8 + 48 + 20)/6, a square foot (1 + 6.4 + 3)/6 minutes.
    for (const piece of [box, chest, bookcase]) {
      const squareFeet = piece.parts.reduce(
        (sum, { count, length, width }) => sum + (count * 2 * length * width) / 144,
        0,
      );
      const minutes = 60 / 6 + 3 * (76 / 6) + 3 * squareFeet * (10.4 / 6);
      expect(60 * (hoursOf(piece).finish ?? 0)).toBeCloseTo(minutes, 6);
    }
  });

  it.each(['rough-cut', 'flatten-and-thickness', 'sanding', 'sanding-outside', 'grooves', 'finish', 'hand-over'])(
    '%s takes longer on a chest of 18 by 14 by 10 in than on a small box, and longer still on a bookcase of 36 in',
    (id) => {
      const [small, large, largest] = [hoursOf(box, dovetails), hoursOf(chest, dovetails), hoursOf(bookcase)];
      expect(large[id]).toBeGreaterThan(1.1 * (small[id] ?? 0));
      expect(largest[id]).toBeGreaterThan(large[id] ?? 0);
    },
  );

  it('nothing takes less on a larger box with the same parts', () => {
    const inside = fc.integer({ min: 4, max: 18 });
    fc.assert(
      fc.property(inside, inside, inside, fc.integer({ min: 0, max: 4 }), (length, width, depth, more) => {
        const of = (larger: number) =>
          hoursOf(
            sizeBox({
              insideLength: length + larger,
              insideWidth: width + larger,
              insideDepth: depth,
              species: 'walnut-black',
            }),
          );
        const [small, large] = [of(0), of(more)];
        for (const [id, hours] of Object.entries(small)) expect(large[id]).toBeGreaterThanOrEqual(hours - 1e-12);
      }),
    );
  });

  it('and so do the days: the coats of a chest, one by one, take what its finish takes', () => {
    const waits = { settle: 1, rest: 1, glue: 1, recoat: 1, cure: 1 };
    const counts = countWork({ piece: chest, joint: dovetails, ...work });
    const coats = benchSteps({ counts, waits }).filter(({ id }) => id.startsWith('finish-'));
    const finish = estimateHours({ counts }).byOperation.find(({ id }) => id === 'finish');
    expect(coats).toHaveLength(3);
    for (const point of [0, 1, 2] as const)
      expect(coats.reduce((sum, { minutes }) => sum + minutes[point], 0)).toBeCloseTo(finish?.minutes[point] ?? 0, 9);
    expect(coats[0]?.minutes[1]).toBeCloseTo((coats[1]?.minutes[1] ?? 0) + 10, 9);
  });

  it('only what a piece counts makes an operation longer: all units are counted', () => {
    const counted = Object.keys(countWork({ piece: chest, joint: dovetails, ...work }));
    const units = allOperations().flatMap(({ besides }) => (besides ? [besides.per] : []));
    expect(units.filter((unit) => !counted.includes(unit))).toEqual([]);
  });
});
