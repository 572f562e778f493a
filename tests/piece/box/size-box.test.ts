import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equilibriumByMonth } from '../../../kernel-helpers/src/fit/seasonal-fit.js';
import { type BoxBrief, sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import type { Part } from '../../../kernel-helpers/src/piece/box/sized-box.js';
import { yearOfAir } from '../../../kernel-helpers/src/wood/air/air.js';
import { humidityFor } from '../../../kernel-helpers/src/wood/emc.js';
import { movement } from '../../../kernel-helpers/src/wood/movement.js';
import { handWorked } from './hand-worked.js';

const teaChest = { insideLength: '9 1/2 in', insideWidth: '6 1/4 in', insideDepth: '4 in', species: 'walnut-black' };
const air = yearOfAir({
  place: 'chicago-ohare',
  heating: { heatTo: 20, humidifyTo: 0.3, coolTo: 25, dehumidifyTo: 0.6 },
});
const partOf = (box: { parts: Part[] }, name: Part['name']) => box.parts.find((part) => part.name === name) as Part;

describe('boxes worked by hand', () => {
  it.each(handWorked)('$name', ({ brief, overall, front, lid, bottom, gauge }) => {
    const box = sizeBox(brief);
    for (const [way, inches] of Object.entries(overall))
      expect(box.overall[way as keyof typeof overall], way).toBeCloseTo(inches, 9);
    expect(partOf(box, 'front').width).toBeCloseTo(front, 9);
    expect(partOf(box, 'front').widthBefore).toBeCloseTo(overall.height, 9);
    for (const way of ['length', 'width'] as const) {
      expect(partOf(box, 'lid')[way], `lid ${way}`).toBeCloseTo(lid[way], 9);
      expect(partOf(box, 'bottom')[way], `bottom ${way}`).toBeCloseTo(bottom[way], 9);
    }
    expect(box.markingGauge).toBeCloseTo(gauge, 9);
  });
});

describe('any box', () => {
  const sixteenths = (least: number, most: number) => fc.integer({ min: least, max: most }).map((marks) => marks / 16);
  const brief = fc.record({
    insideLength: sixteenths(32, 500),
    insideWidth: sixteenths(32, 300),
    insideDepth: sixteenths(16, 200),
    species: fc.constantFrom('walnut-black', 'cherry-black', 'maple-sugar'),
    stockThickness: sixteenths(8, 16),
    proud: sixteenths(0, 4),
    foot: sixteenths(0, 16),
    lidThickness: sixteenths(5, 16),
    tongueThickness: sixteenths(1, 4),
    lidGrooveDepth: sixteenths(2, 7),
    bottom: fc.constantFrom('plywood' as const, 'solid' as const),
  });

  it('adds up: what lies on what is the height, what stands end to end is the length', () => {
    fc.assert(
      fc.property(brief, (given) => {
        const box = sizeBox({ ...given, air });
        const { design, overall } = box;
        // Exact, not close: tape fractions are exact in inches.
        expect(partOf(box, 'side').width - design.lidThickness).toBe(partOf(box, 'front').width);
        expect(overall.height).toBe(design.foot + design.bottomThickness + design.insideDepth + design.lidThickness);
        expect(overall.length - 2 * box.markingGauge).toBe(design.insideLength);
        expect(overall.width - 2 * box.markingGauge).toBe(design.insideWidth);
        expect(partOf(box, 'lid').width + 2 * design.lidClearance).toBe(design.insideWidth + 2 * design.lidGrooveDepth);
      }),
    );
  });

  it('keeps every groove inside its board, the lid groove under the top edge', () => {
    fc.assert(
      fc.property(brief, (given) => {
        const box = sizeBox({ ...given, air });
        for (const { board, fromBottom, width, depth } of box.grooves) {
          expect(fromBottom).toBeGreaterThanOrEqual(0);
          expect(fromBottom + width).toBeLessThan(partOf(box, board).width);
          expect(depth).toBeLessThan(box.design.stockThickness);
        }
      }),
    );
  });

  it('leaves a solid bottom more room across its grain than along it', () => {
    fc.assert(
      fc.property(brief, (given) => {
        const solid = partOf(sizeBox({ ...given, air, bottom: 'solid' }), 'bottom');
        const plywood = partOf(sizeBox({ ...given, bottom: 'plywood' }), 'bottom');
        const [long, short] = [plywood.length, plywood.width].sort((a, b) => b - a) as [number, number];
        expect(solid.length).toBeCloseTo(long, 9);
        expect(solid.width).toBeLessThan(short);
      }),
    );
  });

  it('gives the same box in inches and in millimetres', () => {
    const metric = { ...teaChest, insideLength: '241.3 mm', insideWidth: '158.75 mm', insideDepth: '101.6 mm' };
    expect(sizeBox(metric)).toEqual(sizeBox(teaChest));
  });
});

describe('a solid bottom', () => {
  const solid = { ...teaChest, bottom: 'solid' as const };
  const held = (driest: number, wettest: number) =>
    Array.from({ length: 12 }, (_, index) => ({
      month: index + 1,
      temperatureC: 20,
      relativeHumidity: humidityFor({ moisture: index === 6 ? wettest : driest, temperatureC: 20 }),
    }));

  it('worked by hand: flat-sawn walnut, fitted at 8 %, in a house of 7 and 12 %', () => {
    const box = sizeBox({ ...solid, air: held(7, 12) });
    // Opening 6 1/4 + 1/2; walnut 0.00274 for 1 %, 4 % up, nine boards in ten at most x 1.287858; 1/64 stays, 1/64 to aim.
    expect(partOf(box, 'bottom').width).toBeCloseTo((6.75 - 1 / 64) / (1 + 4 * 0.00274 * 1.287858) - 1 / 64, 6);
    expect(box.findings.every(({ verdict }) => verdict === 'ok')).toBe(true);
  });

  it('in any house is neither pressed in its wettest month nor out of half its grooves in its driest, nine boards in ten', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4, max: 8, noNaN: true }),
        fc.double({ min: 0, max: 8, noNaN: true }),
        fc.constantFrom('walnut-black', 'cherry-black', 'oak-northern-red'),
        (driest, swing, species) => {
          const year = held(driest, driest + swing);
          const box = sizeBox({ ...solid, species, air: year });
          fc.pre(box.findings.every(({ rule, verdict }) => !/whole year/.test(rule) || verdict !== 'stop'));
          const { width } = partOf(box, 'bottom');
          const grown = equilibriumByMonth(year).map(({ moisture }) =>
            movement({ across: width, species, ringAngle: 0, fromMoisture: 8, toMoisture: moisture }),
          );
          expect(width + Math.max(...grown.map(({ high }) => high))).toBeLessThanOrEqual(6.75 - 1 / 64 + 1e-6);
          expect(width + Math.min(...grown.map(({ low }) => low))).toBeGreaterThanOrEqual(6.5 - 1e-6);
        },
      ),
    );
  });

  it('swells in thickness too: play that is enough for plywood is too little for thick flat-sawn oak', () => {
    const thick = { ...solid, species: 'oak-northern-red', bottomThickness: '3/4 in', air: held(6, 14) };
    const verdict = (bottom: 'plywood' | 'solid') =>
      sizeBox({ ...thick, bottom, stockThickness: '1 in' }).findings.find(({ rule }) => rule.includes('thickness'))
        ?.verdict;
    expect([verdict('plywood'), verdict('solid')]).toEqual(['ok', 'watch']);
  });
});

describe('findings', () => {
  const thin = { stockThickness: '1/4 in', lidGrooveDepth: '1/8 in', bottomGrooveDepth: '1/8 in' };
  const verdictOf = (brief: Partial<BoxBrief>, rule: string) =>
    sizeBox({ ...teaChest, air, ...brief }).findings.find((finding) => finding.rule === rule)?.verdict;

  it.each([
    [{ bottomGrooveDepth: '3/8 in' }, 'bottom groove at most half the board', 'stop'],
    [{ lidGrooveDepth: '3/8 in' }, 'lid groove at most half the board', 'stop'],
    [{ foot: '1/8 in' }, 'foot under the bottom groove', 'stop'],
    [{ foot: '1/8 in', ...thin }, 'foot under the bottom groove', 'ok'],
    [{ foot: '3/32 in', ...thin }, 'foot under the bottom groove', 'stop'],
    [{ foot: '3/16 in' }, 'foot under the bottom groove', 'ok'],
    [{ lidThickness: '5/16 in' }, 'wood over the lid groove', 'watch'],
    [{ lidClearance: '3/16 in' }, 'lid held by its grooves', 'watch'],
    [{ proud: '1/4 in' }, 'joint proud of the face', 'watch'],
    [{ bottomClearance: 0 }, 'play of the plywood bottom', 'watch'],
    [{ bottomThickness: '1/4 in' }, 'plywood measured, not nominal', 'watch'],
    [{ bottomGroovePlay: 0 }, 'bottom: play of its thickness in the groove', 'watch'],
    [{ bottomGroovePlay: '1/64 in' }, 'bottom: play of its thickness in the groove', 'watch'],
    [
      { bottom: 'solid' as const, insideLength: '20 in', insideWidth: '20 in', bottomGrooveDepth: '1/8 in' },
      'bottom: a width that fits the whole year',
      'stop',
    ],
    [{ bottom: 'solid' as const }, 'bottom: a width that fits the whole year', 'ok'],
  ])('%j: %s is %s', (brief, rule, verdict) => {
    expect(verdictOf(brief, rule)).toBe(verdict);
  });

  it('has nothing to say against the usual box', () => {
    expect(sizeBox(teaChest).findings.every(({ verdict }) => verdict === 'ok')).toBe(true);
  });
});

describe('bad input', () => {
  it.each([
    [{ insideLength: '40 ft' }, 'insideLength: "40 ft" given; possible: 1 in to 36 in'],
    [{ insideLength: '-3 in' }, 'insideLength: "-3 in" given; less than nothing'],
    [{ insideLength: 0 }, 'insideLength: 0 given; possible: 1 in to 36 in'],
    [{ insideLength: '5 lb' }, 'insideLength: "5 lb" given; "lb" is not a unit of length here'],
    [{ insideDepth: undefined }, 'insideDepth: nothing given; possible: 1/2 in to 18 in'],
    [{ species: 'wallnut' }, 'species: "wallnut" given; nearest: walnut-black'],
    [{ joint: 'nails' }, 'joint: "nails" given; possible: through dovetail, finger joint'],
    [{ prowd: 1 }, 'prowd: there is no such parameter; the nearest is proud'],
    [{ lidGrooveDepth: '3/4 in' }, 'lidGrooveDepth: 3/4 in (19.1 mm) given; possible: less than 5/8 in (15.9 mm)'],
    [
      { bottomGrooveDepth: '5/8 in' },
      'bottomGrooveDepth: 5/8 in (15.9 mm) given; possible: less than 5/8 in (15.9 mm)',
    ],
    [{ tongueThickness: '1/2 in' }, 'tongueThickness: 1/2 in (12.7 mm) given; possible: less than 1/2 in (12.7 mm)'],
    [{ lidClearance: '1/4 in' }, 'lidClearance: 1/4 in (6.4 mm) given; possible: less than 1/4 in (6.4 mm)'],
    [{ bottom: 'solid' as const }, 'air: none given; a solid bottom is sized for the year of the room it goes to'],
    [{ bottomMoisture: '8' }, 'bottomMoisture: "8" given; possible: a number from 3 to 20 %'],
  ])('%j: one line that names the field, the value and what is possible', (bad, message) => {
    const attempt = () => sizeBox({ ...teaChest, ...bad } as BoxBrief);
    expect(attempt).toThrow(message);
    expect(attempt).not.toThrow(/\n/);
  });
});
