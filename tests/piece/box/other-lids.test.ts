import { describe, expect, it } from 'vitest';
import { hingedLid } from '../../../kernel-helpers/src/piece/box/hinged-lid.js';
import { liftOffLid } from '../../../kernel-helpers/src/piece/box/lift-off-lid.js';
import { sizeOpenBox } from '../../../kernel-helpers/src/piece/box/open-box.js';
import { humidityFor } from '../../../kernel-helpers/src/wood/emc.js';

// A year that takes wood to 6 % in winter and to 13 % in summer.
const between = (driest: number, wettest: number) =>
  Array.from({ length: 12 }, (_, index) => ({
    month: index + 1,
    temperatureC: 20,
    relativeHumidity: humidityFor({ moisture: index === 6 ? wettest : driest, temperatureC: 20 }),
  }));
const air = between(6, 13);

// Inside 10 by 6 by 4, 1/2 in stock, flush; foot 1/4, bottom 3/16.
const box = sizeOpenBox({
  insideLength: '10 in',
  insideWidth: '6 in',
  insideDepth: '4 in',
  species: 'cherry-black',
  stockThickness: '1/2 in',
  bottomThickness: '3/16 in',
});

describe('a box without its sliding lid, worked by hand', () => {
  it('ends at the clear depth, front and back alike', () => {
    expect(box.overall).toEqual({ length: 11, width: 7, height: 4 + 7 / 16 }); // 1/4 + 3/16 + 4
    expect(box.parts.map(({ name, width }) => [name, width]).slice(0, 3)).toEqual([
      ['side', 71 / 16],
      ['front', 71 / 16],
      ['back', 71 / 16],
    ]);
    expect(box.parts[1]).not.toHaveProperty('widthBefore');
    expect(box.parts.some(({ name }) => name === 'lid')).toBe(false);
    expect(box.grooves.every(({ groove }) => groove === 'bottom')).toBe(true);
    expect(box.findings.some(({ rule }) => rule.includes('lid'))).toBe(false);
  });
});

describe('a lid that is lifted off, worked by hand', () => {
  it('rebated: flush outside, its plug narrower across the grain by what it will swell', () => {
    const lid = liftOffLid({ box, air, style: 'rebated', clearance: '1/64 in' });
    expect(lid.parts).toMatchObject([{ name: 'lid', length: 11, width: 7, thickness: 0.625 }]);
    // Flat-sawn cherry, 8 to 13 %: 0.00248 x 5 = 0.0124, nine boards in ten at most x 1.28786, of the plug that leaves 1/32 then.
    expect(lid.swelling).toBeCloseTo((6 - 1 / 32) * (1 - 1 / (1 + 0.0124 * 1.287858)), 6);
    expect(lid.plug.length).toBe(10 - 1 / 32);
    expect(lid.plug.width).toBeCloseTo(6 - 1 / 32 - lid.swelling, 12);
    expect(lid.rebate?.alongEnds).toBe(0.5 + 1 / 64);
    expect(lid.rebate?.alongSides).toBeCloseTo(0.5 + 1 / 64 + lid.swelling / 2, 12);
    expect(lid.findings.filter(({ verdict }) => verdict !== 'ok').map(({ rule }) => rule)).toEqual([
      'lid keeps its place when it is driest',
    ]);
  });

  it('follows the house: a damper one leaves the plug narrower today, a dry one leaves it loose in winter', () => {
    const inHouse = (driest: number, wettest: number, ringAngle = 0) =>
      liftOffLid({ box, style: 'rebated', ringAngle, air: between(driest, wettest) });
    expect(inHouse(7, 14).plug.width).toBeLessThan(inHouse(7, 10).plug.width);
    const dry = (lid: ReturnType<typeof liftOffLid>) => lid.findings.find(({ rule }) => rule.endsWith('driest'));
    expect(dry(inHouse(7, 10))?.verdict).toBe('ok');
    expect(dry(inHouse(4, 12))?.verdict).toBe('watch');
    expect(dry(inHouse(4, 12, 90))?.verdict).toBe('ok');
  });

  it('with battens: they lie across its grain, and do not swell along their own', () => {
    const lid = liftOffLid({ box, air, style: 'battens', overhang: '1/4 in' });
    expect(lid.parts).toMatchObject([
      { name: 'lid', length: 11.5, width: 7.5 },
      { name: 'batten', count: 2, length: 6 - 1 / 32, width: 1, thickness: 0.25 },
    ]);
    expect(lid.swelling).toBe(0);
    expect(lid.rebate).toBeUndefined();
  });

  it('in a box wider than long, the grain runs from side to side', () => {
    const wide = sizeOpenBox({ insideLength: 6, insideWidth: 10, insideDepth: 4, species: 'cherry-black' });
    const lid = liftOffLid({ box: wide, air, style: 'rebated' });
    expect(lid.plug.width).toBe(10 - 1 / 32);
    expect(lid.plug.length).toBeLessThan(6 - 1 / 32);
  });

  it.each<[Partial<Parameters<typeof liftOffLid>[0]>, string, string]>([
    [{ clearance: 0 }, 'lid lifts off and does not rattle', 'watch'],
    [{ plugDepth: '1/8 in' }, 'plug deep enough to hold', 'watch'],
    [{ plugDepth: '1/2 in' }, 'wood over the rebate', 'watch'],
  ])('%j: %s is %s', (change, rule, verdict) => {
    const { findings } = liftOffLid({ box, air, style: 'rebated', ...change });
    expect(findings.find((finding) => finding.rule === rule)?.verdict).toBe(verdict);
  });

  it.each<[Partial<Parameters<typeof liftOffLid>[0]>, string]>([
    [{ plugDepth: '5/8 in' }, 'plugDepth: 5/8 in (15.9 mm) given; possible: less than 5/8 in (15.9 mm)'],
    [
      { style: 'battens', battenWidth: '5 1/2 in' },
      'battenWidth: 5 1/2 in (139.7 mm) given; possible: up to 4 63/64 in (126.6 mm)',
    ],
    [{ style: 'glued' as 'battens' }, 'style: "glued" given; possible: rebated, battens'],
    [{ clearance: '-1' }, 'clearance: "-1" given; less than nothing'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => liftOffLid({ box, air, style: 'rebated', ...bad })).toThrow(message);
  });
});

describe('a lid on hinges, worked by hand', () => {
  const usual = { box, air, thickness: '5/8 in', hingeKnuckle: '3/16 in', gap: '1/16 in', leafThickness: '1/16 in' };

  it('is let in by half of the closed hinge', () => {
    const lid = hingedLid(usual);
    expect(lid.hinges.mortiseDepth).toBe(1 / 16); // (3/16 - 1/16) / 2
    expect(lid.longestScrew.lid).toBe(9 / 16); // 5/8 - 1/16 + 1/16 - 1/16
    expect(lid.hinges.fromSides).toBeCloseTo(4 / 3, 9); // (7 - 3) / 3, less than the hinge's own 1 1/2
    expect(lid.parts).toMatchObject([{ name: 'lid', length: 11, width: 7, thickness: 0.625 }]);
  });

  it('flush all round it does not stay flush; an overhang takes the year in', () => {
    const covers = (overhang: string) =>
      hingedLid({ ...usual, overhang, air: between(6.5, 13) }).findings.find(({ rule }) => rule.includes('all year'));
    // Half of 7 in of flat-sawn cherry each side: 8 to 13 % is 3.5 x 0.0124 x 1.287858 = 0.056 out, 8 to 6 1/2 % 0.017 in.
    expect(covers('0')?.verdict).toBe('watch');
    expect(covers('0')?.figures).toContain('0.056 in');
    expect(covers('0')?.figures).toContain('0.017 in');
    expect(covers('1/16 in')?.verdict).toBe('ok');
    expect(covers('1/64 in')?.verdict).toBe('watch');
  });

  it.each<[Partial<Parameters<typeof hingedLid>[0]>, string, string, string]>([
    [{ screwLength: '9/16 in' }, 'screws stay inside the lid', 'ok', ''],
    [
      { screwLength: '3/4 in' },
      'screws stay inside the lid',
      'stop',
      'screwLength at most 9/16 in (14.3 mm), or a lid 13/16 in (20.6 mm)',
    ],
    [{ leafWidth: '1/2 in' }, 'wood inside the hinge leaf', 'stop', 'leafWidth at most 3/8 in'],
    [{ leafWidth: '7/16 in' }, 'wood inside the hinge leaf', 'watch', 'leafWidth at most 3/8 in'],
    [{ thickness: '1/4 in' }, 'lid left under the mortise', 'watch', 'a lid at least 5/16 in'],
  ])('%j: %s is %s', (change, rule, verdict, nearest) => {
    const found = hingedLid({ ...usual, ...change }).findings.find((finding) => finding.rule === rule);
    expect(found?.verdict).toBe(verdict);
    expect(found?.change).toContain(nearest);
  });

  it.each<[Partial<Parameters<typeof hingedLid>[0]>, string]>([
    [{ hingeKnuckle: '1/8 in' }, 'hingeKnuckle: 1/8 in (3.2 mm) given; possible: at least 3/16 in (4.8 mm)'],
    [{ hingeLength: '4 in' }, 'hingeLength: 4 in (101.6 mm) given; possible: up to 3 1/2 in (88.9 mm)'],
    [{ thickness: 0 }, 'thickness: 0 given; possible: 3/16 in to 2 in'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => hingedLid({ ...usual, ...bad })).toThrow(message);
  });
});
