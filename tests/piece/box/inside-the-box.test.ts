import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxFigures } from '../../../kernel-helpers/src/piece/box/box-figures.js';
import { sizeDividers } from '../../../kernel-helpers/src/piece/box/dividers.js';
import { fingerRoom } from '../../../kernel-helpers/src/piece/box/finger-room.js';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { sizeTray } from '../../../kernel-helpers/src/piece/box/tray.js';

const box = sizeBox({
  insideLength: '10 in',
  insideWidth: '6 in',
  insideDepth: '4 in',
  species: 'walnut-black',
  stockThickness: '1/2 in',
  bottomThickness: '1/4 in',
  lidClearance: 0,
  bottomClearance: 0,
  bottomGroovePlay: 0,
});

describe('a tray, worked by hand', () => {
  it('stands loose in the box', () => {
    const tray = sizeTray({ box, depth: '1 1/2 in' });
    expect(tray.overall).toEqual({ length: 9 + 15 / 16, width: 5 + 15 / 16, height: 1.5 }); // less 2 x 1/32
    expect(tray.inside).toEqual({ length: 9 + 7 / 16, width: 5 + 7 / 16, depth: 1.25 }); // less 2 x 1/4; less 1/8 + 1/8
    expect(tray.parts.map(({ length, width }) => [length, width])).toEqual([
      [9 + 15 / 16, 1.5],
      [5 + 15 / 16, 1.5],
      [9 + 7 / 16 + 7 / 32, 5 + 7 / 16 + 7 / 32], // inside + 2 x 1/8 - 1/32
    ]);
    expect(tray.roomLeft).toBe(2.5);
  });

  it.each<[Partial<Parameters<typeof sizeTray>[0]>, string]>([
    [{ depth: '5 in' }, 'depth: 5 in (127.0 mm) given; possible: up to 4 in (101.6 mm) (the clear depth of the box)'],
    [{ length: '10 in' }, 'length: 10 in (254.0 mm) given; possible: up to 9 15/16 in (252.4 mm)'],
    [{ bottomGrooveDepth: '3/16 in' }, 'bottomGrooveDepth: 3/16 in (4.8 mm) given; possible: up to 1/8 in (3.2 mm)'],
    [{ length: '1/2 in' }, 'has no room inside; possible: thinner boards, or one over 1/2 in (12.7 mm) wide'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => sizeTray({ box, depth: '1 1/2 in', ...bad })).toThrow(message);
  });
});

describe('dividers', () => {
  it('worked by hand: two across and one along, in dadoes of 1/8', () => {
    const parted = sizeDividers({
      insideLength: '10 in',
      insideWidth: '6 in',
      height: '2 in',
      dadoDepth: '1/8 in',
      crosswise: 2,
      lengthwise: 1,
    });
    expect(parted.compartment).toEqual({ length: 9.5 / 3, width: 2.875 }); // (10 - 1/2) / 3; (6 - 1/4) / 2
    expect(parted.parts.map(({ count, length }) => [count, length])).toEqual([
      [2, 6.25],
      [1, 10.25],
    ]);
    expect(parted.notch).toEqual({ width: 0.25, depth: 1 });
    expect(parted.places.crosswise).toEqual([2.875]);
  });

  it('fill the inside: compartments and dividers add up', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 0, max: 8 }), (crosswise, lengthwise) => {
        const parted = sizeDividers({ insideLength: 20, insideWidth: 12, height: 2, crosswise, lengthwise });
        expect((crosswise + 1) * parted.compartment.length + crosswise / 4).toBeCloseTo(20, 9);
        expect((parted.places.lengthwise.at(-1) as number) + 1 / 4 + parted.compartment.length).toBeCloseTo(20, 9);
        expect((lengthwise + 1) * parted.compartment.width + lengthwise / 4).toBeCloseTo(12, 9);
      }),
    );
  });

  it('warns of compartments that fingers cannot reach into', () => {
    const { findings } = sizeDividers({ insideLength: 10, insideWidth: 6, height: 2, crosswise: 9 });
    expect(findings[0]).toMatchObject({ verdict: 'watch' });
    expect(findings[0]?.change).toContain('at most 7 dividers crosswise, 4 lengthwise'); // 8 x 1 + 7/4 under 10; 5 + 1 = 6
  });

  it.each<[object, string]>([
    [{}, 'crosswise: no dividers given'],
    [{ crosswise: 40 }, 'crosswise: 40 given; possible: up to 39 of 1/4 in (6.4 mm) in 10 in (254.0 mm)'],
    [{ lengthwise: 1.5 }, 'lengthwise: 1.5 given; possible: a whole number'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => sizeDividers({ insideLength: 10, insideWidth: 6, height: 2, ...bad })).toThrow(message);
  });
});

describe('room for the hand', () => {
  it.each([
    [{ insideLength: 10, insideWidth: 6, insideDepth: 4 }, 'ok', 'nothing'],
    [
      { insideLength: 3, insideWidth: 1.5, insideDepth: 5 },
      'stop',
      'insideLength at least 3 1/2 in (88.9 mm) and insideWidth at least 1 3/4 in (44.5 mm), or insideDepth at most 3 in (76.2 mm)',
    ],
    [{ insideLength: 2, insideWidth: 3, insideDepth: 5 }, 'stop', 'insideWidth at least 3 1/2 in (88.9 mm), or'],
    [{ insideLength: 3, insideWidth: 1.5, insideDepth: 3 }, 'ok', 'nothing'],
    [{ insideLength: 3, insideWidth: 0.5, insideDepth: 1 }, 'stop', 'insideWidth at least 3/4 in'],
    [{ insideLength: 3, insideWidth: 1, insideDepth: 5, reach: 'finger and thumb' as const }, 'ok', 'nothing'],
  ])('%j is %s: %s', (room, verdict, change) => {
    const found = fingerRoom(room);
    expect(found.verdict).toBe(verdict);
    expect(found.change).toContain(change);
  });

  it('refuses a hand that is none', () => {
    expect(() => fingerRoom({ insideLength: 3, insideWidth: 3, insideDepth: 3, handWidth: '1 in' })).toThrow(
      'handWidth: "1 in" given; possible: 2 in to 6 in',
    );
  });
});

describe('what a box weighs and takes up, worked by hand', () => {
  it('10 by 6 by 4 inside in walnut', () => {
    const figures = boxFigures({ box });
    // Height 1/4 + 1/4 + 4 + 1/2 = 5. Sides 2 x 11 x 5 x 1/2 = 55, front 7 x 4 1/2 x 1/2 = 15.75, back 17.5; corners there
    // once: less 2 (1/4 x 4 1/2) + 2 (1/4 x 5) = 4.75. Lid 10 3/4 x 6 1/2 x 1/2 = 34.9375, its rabbets
    // (10.75 x 6.5 - 10.5 x 6) x 1/4 = 1.71875. Grooves: bottom 2 (10 + 6) / 16 = 2, lid (20 + 6) / 16 = 1.625.
    const wood = 55 + 15.75 + 17.5 - 4.75 + 34.9375 - 1.71875 - 2 - 1.625;
    const plywood = 10.5 * 6.5 * 0.25;
    expect(figures.woodVolume).toBeCloseTo(wood + plywood, 9);
    // Walnut 0.55 at 12 % (Wood Handbook, table 5-3a), plywood 1/2: 1 cu in of water is 16.387 g.
    expect(figures.mass).toBeCloseTo(0.016387064 * 1.12 * (0.55 * wood + 0.5 * plywood), 9);
    expect(figures.insideVolume).toBe(240);
    expect(figures.insideLitres).toBeCloseTo(3.933, 3);
    expect(figures.envelope).toEqual({ length: 11, width: 7, height: 5 });
    expect(figures.parcel).toEqual({ length: 15, width: 11, height: 9, lengthAndGirth: 55 }); // 15 + 2 (11 + 9)
    expect(figures.source).toContain('Wood Handbook');
  });

  it('weighs more the wetter it is, and refuses what no wood holds', () => {
    expect(boxFigures({ box, moisture: 6 }).mass).toBeLessThan(boxFigures({ box }).mass);
    expect(() => boxFigures({ box, moisture: 60 })).toThrow('moisture: 60 given; possible: a number from 0 to 30 %');
  });
});
