import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizeBookcase } from '../../kernel-helpers/src/piece/bookcase/bookcase.js';
import { sizeDrawer } from '../../kernel-helpers/src/piece/drawer/drawer.js';
import { sizeFrameAndPanel } from '../../kernel-helpers/src/piece/frame-and-panel/frame-and-panel.js';
import { sizeSolidTop } from '../../kernel-helpers/src/piece/solid-top/solid-top.js';
import { cherry } from './box/cherry.js';

/** What nine boards in ten swell at most from 8 to 12 %: 4 x 0.00248 x (1 + 1.6449 x 0.175). */
const wettest = 0.012776;
const sizes = (piece: { parts: { name: string; count: number; length: number; width: number }[] }) =>
  piece.parts.map(({ name, count, length, width }) => [name, count, length, width]);

describe('a drawer', () => {
  const usual = { ...cherry, opening: '5 in', openingWidth: '12 in', openingDepth: '16 in' };

  it('worked by hand, in an opening 12 wide, 5 high and 16 deep', () => {
    const drawer = sizeDrawer(usual);
    const height = drawer.parts[0]?.width as number;
    // It has 1/32 left over it when it is wettest, and is planed up to 1/64 under that.
    expect(height * (1 + wettest)).toBeLessThanOrEqual(5 - 1 / 32 + 1e-9);
    expect(height * (1 + wettest)).toBeGreaterThan(5 - 1 / 32 - 1 / 63);
    const width = 12 - 1 / 32;
    expect(sizes(drawer)).toEqual([
      ['drawer front', 1, width, height],
      ['drawer side', 2, 15.5 - 0.25, height], // 16 - 1/2 behind, less the lap
      ['drawer back', 1, width, height - 3 / 8 - 13 / 64],
      // inside 15 1/2 - 3/4 - 1/2 = 14 1/4, and 1/4 in front and 1/2 under the back; 10 31/32 + 1/2 - 3/64
      ['drawer bottom', 1, 15, width - 1 + 1 / 2 - 3 / 64],
    ]);
  });

  it('is planed lower for a wetter home', () => {
    const wet = { ...usual, moistures: [...cherry.moistures, { month: 8, moisture: 14 }] };
    expect(sizeDrawer(wet).overall.height).toBeLessThan(sizeDrawer(usual).overall.height);
  });

  it('with a solid bottom: worked by hand, free at the back', () => {
    const floor = sizeDrawer({ ...usual, bottom: 'solid', bottomThickness: '1/4 in' }).parts[3];
    // 15 in from the groove's floor to the back's face: no further than that when it is wettest, planed 1/64 under it.
    expect(floor).toMatchObject({ length: 12 - 1 / 32 - 1 + 1 / 2 - 3 / 64, grain: 'side to side', material: 'wood' });
    expect(floor?.width).toBeCloseTo(15 / (1 + wettest) - 1 / 64, 4);
    // Flat-sawn cherry from 8 to 6 %: 15 x 0.00496 x 1.287858 = 0.096 in: still well under a back of 1/2 in.
    const rule = 'drawer bottom: held in the driest month';
    const held = (sideThickness: string) =>
      sizeDrawer({ ...usual, bottom: 'solid', sideThickness, bottomGrooveDepth: '1/8 in' }).findings.find(
        (finding) => finding.rule === rule,
      )?.verdict;
    expect([held('1/2 in'), held('1/4 in')]).toEqual(['ok', 'stop']);
  });

  it('a panel as thick as its groove is wide is worth a look', () => {
    const rule = 'drawer bottom: play of its thickness in the groove';
    const verdict = (bottomGroovePlay: string) =>
      sizeDrawer({ ...usual, bottomGroovePlay }).findings.find((finding) => finding.rule === rule)?.verdict;
    expect([verdict('0'), verdict('0.2 mm'), verdict('0.4 mm')]).toEqual(['watch', 'ok', 'watch']);
  });

  it('judges its play and its groove', () => {
    const { findings } = sizeDrawer({ ...usual, sideClearance: 0, bottomGrooveDepth: '5/16 in' });
    expect(findings.find(({ rule }) => rule === 'drawer: runs between the sides')?.verdict).toBe('watch');
    expect(findings.find(({ rule }) => rule.startsWith('drawer: bottom groove'))).toMatchObject({
      verdict: 'stop',
      change: 'bottomGrooveDepth at most 1/4 in (6.4 mm)',
    });
  });

  it.each<[object, string]>([
    [
      { opening: '1 in' },
      'opening: 1 in (25.4 mm) high, 12 in (304.8 mm) wide, 16 in (406.4 mm) deep leaves no drawer; possible: over 1 21/64 in (33.7 mm) high',
    ],
    [
      { lap: '3/4 in' },
      'lap: 3/4 in (19.1 mm) given; possible: up to 5/8 in (15.9 mm) in a front 3/4 in (19.1 mm) thick',
    ],
    [{ tails: 0 }, 'tails: 0 given; possible: a whole number of tails at each corner from 1 to 30'],
    [{ openingWidth: 'wide' }, 'openingWidth: "wide" given; not a length'],
    [{ sideClerance: 0 }, 'sideClerance: there is no such parameter; the nearest is sideClearance'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => sizeDrawer({ ...usual, ...bad })).toThrow(message);
  });
});

describe('a solid top', () => {
  const usual = { ...cherry, length: '48 in', width: '30 in' };

  it('worked by hand, 48 by 30', () => {
    const top = sizeSolidTop(usual);
    expect(sizes(top)).toEqual([['top', 1, 48, 30]]);
    expect(top.parts[0]?.boards).toBe(5); // 30 / 6
    expect(top.travel.outward).toBeCloseTo(13 * wettest, 4); // 15 - 2 from the middle
    expect(sizeSolidTop({ ...usual, fixed: 'edge' }).travel.outward).toBeCloseTo(28 * wettest, 4);
    expect(sizeSolidTop({ ...usual, slot: '1/4 in' }).findings[0]?.verdict).toBe('stop');
    expect(sizeSolidTop({ ...usual, boards: 15 }).findings.find(({ rule }) => /boards wide/.test(rule))).toMatchObject({
      verdict: 'watch',
      change: 'boards at most 12',
    });
  });

  it.each<[object, string]>([
    [{ boards: 4 }, 'boards: 4 given; possible: at least 5 with boards up to 6 in'],
    [{ fixed: 'nowhere' }, 'fixed: "nowhere" given; possible: middle, edge'],
    [{ inset: '15 in' }, 'inset: 15 in (381.0 mm) given; possible: up to 14 1/2 in (368.3 mm)'],
    [{ width: '40 ft' }, 'width: "40 ft" given; possible: 4 in to 72 in'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => sizeSolidTop({ ...usual, ...bad })).toThrow(message);
  });
});

describe('a frame with its panel', () => {
  const usual = { ...cherry, width: '16 in', height: '24 in' };

  it('worked by hand, 16 by 24', () => {
    const frame = sizeFrameAndPanel(usual);
    expect(frame.opening).toEqual({ width: 12, height: 20 }); // less 2 x 2
    expect(sizes(frame).slice(0, 2)).toEqual([
      ['stile', 2, 24, 2],
      ['rail', 2, 14, 2], // 12 + 2 x 1
    ]);
    const panel = frame.parts[2];
    expect(panel?.length).toBe(20 + 3 / 4 - 1 / 16);
    expect((panel?.width as number) * (1 + wettest)).toBeLessThanOrEqual(12.75 - 1 / 64 + 1e-9);
  });

  it.each([
    [{ panelThickness: '5/16 in' }, 'frame: groove about a third of the thickness', 'watch'],
    [{ panelThickness: '3/8 in' }, 'frame: groove about a third of the thickness', 'stop'],
    [{ tenonLength: '3/8 in' }, 'frame: groove not deeper than the tenon is long', 'stop'],
  ])('%j: %s is %s', (change, rule, verdict) => {
    const { findings } = sizeFrameAndPanel({ ...usual, ...change });
    expect(findings.find((finding) => finding.rule === rule)?.verdict).toBe(verdict);
  });

  it.each<[object, string]>([
    [
      { stileWidth: '8 in' },
      'stileWidth: 8 in (203.2 mm) given; possible: up to 7 3/4 in (196.9 mm) in a frame 16 in (406.4 mm) wide',
    ],
    [{ railWidth: '12 in' }, 'railWidth: 12 in (304.8 mm) given; possible: up to 11 3/4 in (298.5 mm)'],
    [
      { railWidth: '1 in', grooveDepth: '5/8 in' },
      'grooveDepth: 5/8 in (15.9 mm) given; possible: up to 1/2 in (12.7 mm) in a rail 1 in (25.4 mm) wide',
    ],
    [{ tenonLength: '3 in' }, 'tenonLength: 3 in (76.2 mm) given; possible: up to 2 in (50.8 mm)'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => sizeFrameAndPanel({ ...usual, ...bad })).toThrow(message);
  });
});

describe('a bookcase', () => {
  const usual = { species: 'cherry-black', width: '30 in', height: '48 in', depth: '11 in', shelves: 3 };

  it('worked by hand, 30 by 48 with three shelves', () => {
    const bookcase = sizeBookcase(usual);
    expect(bookcase.compartment).toEqual({ width: 28.5, height: 10.5625, depth: 10.75 }); // (48 - 2 - 5 x 3/4) / 4
    expect(sizes(bookcase)).toEqual([
      ['side', 2, 48, 11],
      ['top', 1, 29, 11], // 28 1/2 + 2 x 1/4
      ['bottom', 1, 29, 10.75],
      ['shelf', 3, 29, 10.75],
      ['back', 1, 48 - 2 - 3 / 4 + 3 / 8, 29.25],
    ]);
    expect(bookcase.dadoes).toEqual([2, 13.3125, 24.625, 35.9375, 47.25]);
    expect(bookcase.findings.filter(({ verdict }) => verdict !== 'ok').map(({ rule }) => rule)).toEqual([
      'bookcase cannot tip over', // 48 in is over 30
    ]);
  });

  it('has its top in rabbets, which no dovetail can slide into, and says of every end what holds it', () => {
    const noteOf = (shelfEnds: string, part: string, depth = '11 in') =>
      sizeBookcase({ ...usual, depth, shelfEnds }).parts.find(({ name }) => name === part)?.note;
    expect(noteOf('pegs', 'top')).toBe(
      'in rabbets at the upper ends of the sides, 2 pegs through the side into each end; rabbeted for the back',
    );
    expect(noteOf('sliding dovetail', 'top')).toContain('2 pegs or screws through the side into each end');
    expect(noteOf('sliding dovetail', 'shelf')).toContain('slid in from behind as dovetails');
    // 16 in deep: one for each 6 in begun.
    expect(noteOf('screws', 'shelf', '16 in')).toContain('3 screws through the side into each end');
  });

  it('fills its height, whatever the count', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 48, max: 96 }), (shelves, height) => {
        const { dadoes, compartment } = sizeBookcase({ ...usual, height, shelves });
        expect(dadoes).toHaveLength(shelves + 2);
        expect((dadoes.at(-1) as number) + 3 / 4).toBeCloseTo(height, 9);
        expect(2 + (shelves + 2) * 0.75 + (shelves + 1) * compartment.height).toBeCloseTo(height, 9);
      }),
    );
  });

  it.each([
    [{ width: '40 in' }, 'shelves do not sag', 'watch'],
    [{ dadoDepth: '1/8 in' }, 'dado about a third of the side', 'watch'],
    [{ dadoDepth: '1/2 in' }, 'dado about a third of the side', 'stop'],
    [{ shelves: 5 }, 'books stand upright', 'watch'],
    [{ height: '28 in', shelves: 1 }, 'bookcase cannot tip over', 'ok'],
    [{ height: '28 in', depth: '9 in', shelves: 1 }, 'bookcase cannot tip over', 'watch'],
    [{ shelfEnds: 'glue alone' }, "shelves' ends held by more than glue", 'watch'],
    [{ shelfEnds: 'pegs' }, "shelves' ends held by more than glue", 'ok'],
    [{ shelfEnds: 'screws' }, "shelves' ends held by more than glue", 'ok'],
    [{ shelfEnds: 'sliding dovetail' }, "shelves' ends held by more than glue", 'ok'],
    [{ load: 60 }, 'shelves do not sag', 'watch'],
    [{ species: 'pine-eastern-white', width: '33 in' }, 'shelves do not sag', 'watch'],
  ])('%j: %s is %s', (change, rule, verdict) => {
    const { findings } = sizeBookcase({ ...usual, ...change });
    expect(findings.find((finding) => finding.rule === rule)?.verdict).toBe(verdict);
  });

  it.each<[object, string]>([
    [{ shelves: 2.5 }, 'shelves: 2.5 given; possible: a whole number of shelves'],
    [{ shelfEnds: 'nails' }, 'shelfEnds: "nails" given; possible: pegs, screws, sliding dovetail, glue alone'],
    [{ load: -5 }, 'load: -5 given; possible: a number from 0 to 200 lb'],
    [{ species: 'oak' }, 'species: "oak" given'],
    [{ shelves: 30 }, 'shelves: 30 given; possible: up to 24 with 1 in between'],
    [{ dadoDepth: '3/4 in' }, 'dadoDepth: 3/4 in (19.1 mm) given; possible: less than 3/4 in (19.1 mm)'],
    [{ backRabbet: '7/8 in' }, 'backRabbet: 7/8 in (22.2 mm) given; possible: less than 3/4 in (19.1 mm)'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => sizeBookcase({ ...usual, ...bad })).toThrow(message);
  });
});
