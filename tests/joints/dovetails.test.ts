import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type DovetailInput, layOutDovetails } from '../../kernel-helpers/src/joints/dovetails.js';

const usual: DovetailInput = {
  boardWidth: '5 in',
  stockThickness: '5/8 in',
  proud: '1/8 in',
  tails: 3,
  pinWidth: '1/4 in',
  halfPin: '3/8 in',
  slope: '1:8',
};

describe('dovetails worked by hand', () => {
  it('three tails on 5 in', () => {
    const joint = layOutDovetails(usual);
    expect(joint.dividerSetting).toBe(1.5); // (5 - 3/4 + 1/4) / 3
    expect(joint.pins.map(({ half }) => half)).toEqual([true, false, false, true]);
    expect(joint.gaugeSetting).toBe(0.75); // 5/8 + 1/8, common practice, no source
    expect(joint.tails.map(({ from, to }) => [from, to])).toEqual([
      [0.375, 1.625],
      [1.875, 3.125],
      [3.375, 4.625],
    ]);
    // each side slopes in by 3/4 / 8 = 3/32
    expect(joint.tails[0]?.baselineFrom).toBeCloseTo(0.46875, 12);
    expect(joint.findings.filter(({ verdict }) => verdict !== 'ok').map(({ rule }) => rule)).toEqual([
      'tails two to four pins wide',
    ]);
  });

  it.each([
    ['1:8', 7.125],
    ['1:3', 18.4349],
    ['1:12', 4.7636],
    ['1:7', 8.1301],
    [6, 9.4623],
  ])('a slope of %s is %d degrees (trigonometry)', (slope, degrees) => {
    expect(layOutDovetails({ ...usual, slope }).sawAngle).toBeCloseTo(degrees, 3);
  });
});

it.each([
  // 4 1/2 in of tails and pins, in steps of so many pins and one: 6, 4 1/2 (to 5), 3.6
  [{ tailToPin: 2 }, 6],
  [{ tailToPin: 3 }, 5],
  [{ tailToPin: 4 }, 4],
  [{ tailToPin: 12, boardWidth: '2 in' }, 1],
  [{ tailToPin: 3, boardWidth: '1 in', halfPin: '1/4 in' }, 1],
])('%j: the count that comes nearest is %d', (change, count) => {
  expect(layOutDovetails({ ...usual, tails: undefined, ...change }).tails).toHaveLength(count);
});

describe('any dovetail joint', () => {
  const joints = fc
    .record({
      boardWidth: fc.integer({ min: 24, max: 320 }).map((marks) => marks / 16),
      stockThickness: fc.integer({ min: 4, max: 16 }).map((marks) => marks / 16),
      proud: fc.integer({ min: 0, max: 3 }).map((marks) => marks / 16),
      tailToPin: fc.integer({ min: 1, max: 5 }),
      pinWidth: fc.integer({ min: 2, max: 6 }).map((marks) => marks / 16),
      halfPin: fc.integer({ min: 2, max: 8 }).map((marks) => marks / 16),
      slope: fc.integer({ min: 5, max: 9 }),
    })
    .filter(({ boardWidth, halfPin, pinWidth }) => boardWidth > 2 * halfPin + 4 * pinWidth + 1);

  it('fills the board: tails and pins lie side by side from edge to edge', () => {
    fc.assert(
      fc.property(joints, (input) => {
        const { tails, pins, boardWidth } = layOutDovetails(input);
        const edges = pins.flatMap((pin, index) => [pin, tails[index]]).filter((piece) => piece !== undefined);
        let reached = 0;
        for (const { from, to } of edges) {
          expect(from).toBeCloseTo(reached, 9);
          expect(to).toBeGreaterThan(from);
          reached = to;
        }
        expect(reached).toBeCloseTo(boardWidth, 9);
      }),
    );
  });

  it('is stepped off with dividers: t steps land one pin past the other half pin', () => {
    fc.assert(
      fc.property(joints, (input) => {
        const { tails, walk, boardWidth } = layOutDovetails(input);
        expect(walk.up.at(-1)).toBeCloseTo(boardWidth - input.halfPin + input.pinWidth, 9);
        expect(walk.down.at(-1)).toBeCloseTo(input.halfPin - input.pinWidth, 9);
        // Up marks the lower side of every tail, down the upper side.
        tails.forEach(({ from, to }, index) => {
          expect(walk.up[index]).toBeCloseTo(from, 9);
          expect(walk.down[tails.length - 1 - index]).toBeCloseTo(to, 9);
        });
      }),
    );
  });

  it('leaves every tail something at its baseline', () => {
    fc.assert(
      fc.property(joints, (input) => {
        for (const { baselineFrom, baselineTo } of layOutDovetails(input).tails)
          expect(baselineTo).toBeGreaterThan(baselineFrom);
      }),
    );
  });
});

describe('findings', () => {
  const verdict = (change: Partial<DovetailInput>, rule: string) =>
    layOutDovetails({ ...usual, ...change }).findings.find((finding) => finding.rule === rule)?.verdict;

  it.each([
    [{ pinWidth: '1/32 in' }, 'pin wide enough to clear', 'stop'],
    [{ pinWidth: '1/8 in' }, 'pin wide enough to clear', 'watch'],
    [{ pinWidth: '5/32 in' }, 'pin wide enough to clear', 'ok'], // 1/32 and 1/8
    [{ tails: 10, pinWidth: '3/16 in' }, 'tail left at the baseline', 'stop'],
    [{ pinWidth: '3/8 in' }, 'tails two to four pins wide', 'ok'],
    [{ boardWidth: '4 1/4 in' }, 'tails two to four pins wide', 'ok'], // 1 1/4 - 1/4 is four
    [{ tails: 6 }, 'tails two to four pins wide', 'ok'], // 3/4 - 1/4 is two
    [{ tails: 7 }, 'tails two to four pins wide', 'watch'],
    [{ tails: 1, boardWidth: '1 1/16 in' }, 'tail left at the baseline', 'ok'], // 5/16 - 3/16 is a chisel
    [{ halfPin: '3/16 in' }, 'half pins as strong as pins', 'watch'],
    [{ topHalfPin: '3/16 in' }, 'half pins as strong as pins', 'watch'],
    [{ halfPin: '1/4 in' }, 'half pins as strong as pins', 'ok'],
    [{ slope: '1:6' }, 'slope', 'ok'],
    [{ slope: '1:8' }, 'slope', 'ok'],
    [{ slope: '1:9' }, 'slope', 'watch'],
    [{ lowered: '3/8 in' }, 'upper half pin covers the lid', 'ok'],
    [{ slope: '1:4' }, 'slope', 'watch'],
    [{ lowered: '1/2 in' }, 'upper half pin covers the lid', 'stop'],
    [{ lowered: '1/2 in', topHalfPin: '5/8 in' }, 'upper half pin covers the lid', 'ok'],
  ])('%j: %s is %s', (change, rule, expected) => {
    expect(verdict(change, rule)).toBe(expected);
  });
});

describe('bad input', () => {
  it.each([
    [{ tails: 40 }, 'tails: 40 given; possible: 1 to 10 on a board 5 in (127.0 mm) wide'],
    [
      // Each takes 1/4 and twice 3/4 / 8: the eighth tail would be a point at its baseline.
      { boardWidth: '4 in', tails: 8 },
      'tails: 8 given; possible: 1 to 7 on a board 4 in (101.6 mm) wide',
    ],
    [{ tails: 2.5 }, 'tails: 2.5 given; possible: a whole number of tails'],
    [{ tails: 0 }, 'tails: 0 given; possible: one tail or more'],
    [{ tails: undefined }, 'tails: nothing given; possible: a count, or tailToPin'],
    [{ tailToPin: 3 }, 'tails: 3 given, and tailToPin 3; possible: one of the two'],
    [
      { halfPin: '2 1/2 in' },
      'halfPin: 2 1/2 in (63.5 mm) given; no tail fits between them on a board 5 in (127.0 mm) wide',
    ],
    [{ slope: '1:12.5' }, 'slope: "1:12.5" given; possible: 1:3 to 1:12'],
    [{ slope: '8:1' }, 'slope: "8:1" given; possible: 1:3 to 1:12'],
    [{ pinWidth: '-1/4' }, 'pinWidth: "-1/4" given; less than nothing'],
    [{ boardWidth: '40 ft' }, 'boardWidth: "40 ft" given; possible: 1/2 in to 60 in'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => layOutDovetails({ ...usual, ...bad } as DovetailInput)).toThrow(message);
  });
});
