import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boxGroovePasses, groovePasses } from '../../kernel-helpers/src/joints/groove-passes.js';
import { sizeBox } from '../../kernel-helpers/src/piece/box/size-box.js';

type Input = Parameters<typeof groovePasses>[0];

describe('passes for a groove', () => {
  it('worked by hand: 13/64 wide, 1/4 deep, 1/8 cutter', () => {
    const cut = groovePasses({ grooveWidth: '13/64 in', grooveDepth: '1/4 in', cutter: '1/8 in' });
    expect(cut.offsets).toEqual([0, 5 / 64]); // ceil(13/8) = 2 passes, the last 13/64 - 8/64
    expect(cut.depths).toEqual([1 / 16, 1 / 8, 3 / 16, 1 / 4]); // at most 1/16 deep with a 1/8 cutter
    expect(cut.inAll).toBe(8);
  });

  it('needs one pass for a cutter as wide as the groove, in inches and in millimetres', () => {
    expect(groovePasses({ grooveWidth: '1/4 in', grooveDepth: '1/4 in', cutter: '1/4 in' })).toMatchObject({
      passes: 1,
      offsets: [0],
      depths: [0.25],
    });
    expect(groovePasses({ grooveWidth: '9 mm', grooveDepth: '6 mm', cutter: '3 mm' }).passes).toBe(3);
  });

  it('covers the whole groove and never a hair more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1 / 16, max: 2, noNaN: true }),
        fc.double({ min: 1 / 32, max: 1, noNaN: true }),
        (grooveWidth, cutter) => {
          fc.pre(cutter <= grooveWidth);
          const { offsets, depths } = groovePasses({ grooveWidth, grooveDepth: 0.25, cutter });
          expect(offsets[0]).toBe(0);
          offsets.slice(1).forEach((offset, index) => {
            expect(offset - (offsets[index] as number)).toBeLessThanOrEqual(cutter + 1e-9);
          });
          expect((offsets.at(-1) as number) + cutter).toBeCloseTo(grooveWidth, 9);
          expect(depths.at(-1)).toBe(0.25);
        },
      ),
    );
  });
});

describe('cutter, panel and groove', () => {
  const play = 'panel: play of its thickness in the groove';
  const usual = { grooveWidth: '1/4 in', grooveDepth: '1/4 in', cutter: '3/16 in', panel: 0.244 };
  it.each<[Partial<Input>, string, string, string]>([
    [{}, 'cutter goes into the groove', 'ok', ''],
    [{ cutter: '1/4 in' }, 'cutter goes into the groove', 'stop', 'a cutter of at most'],
    [{ cutter: '1/2 in' }, 'cutter goes into the groove', 'stop', 'a cutter of at most'],
    [{ cutter: 0.244 }, 'cutter goes into the groove', 'ok', ''],
    // Play of 0.1 to 0.3 mm is 0.0039 to 0.0118 in.
    [{}, play, 'ok', ''],
    [{ panel: '17/64 in' }, play, 'stop', 'a groove from 0.270 in (6.85 mm) to 0.277 in (7.05 mm) wide'],
    [{ panel: '1/4 in' }, play, 'watch', 'a groove from 0.254 in (6.45 mm) to 0.262 in (6.65 mm) wide'],
    [{ panel: 0.246 }, play, 'ok', ''],
    [{ panel: 0.2462 }, play, 'watch', ''],
    [{ panel: 0.2382 }, play, 'ok', ''],
    [{ panel: 0.238 }, play, 'watch', ''],
  ])('%j: %s is %s', (change, rule, verdict, nearest) => {
    const found = groovePasses({ ...usual, ...change }).findings.find((finding) => finding.rule === rule);
    expect(found?.verdict).toBe(verdict);
    expect(found?.change).toContain(nearest);
  });

  it('has no passes for a cutter that is too wide', () => {
    expect(groovePasses({ ...usual, cutter: '1/2 in' })).toMatchObject({
      passes: 0,
      offsets: [],
      depths: [],
      inAll: 0,
    });
  });

  it.each<[Partial<Input>, string]>([
    [{ cutter: 0 }, 'cutter: 0 given; possible: 1/64 in to 2 in'],
    [{ grooveWidth: '5 lb' }, 'grooveWidth: "5 lb" given; "lb" is not a unit of length here'],
  ])('%j is refused in one line', (bad, message) => {
    expect(() => groovePasses({ ...usual, ...bad })).toThrow(message);
  });
});

describe('the grooves of a box', () => {
  const inside = { insideLength: 9.5, insideWidth: 6.25, insideDepth: 4 };
  const box = sizeBox({ ...inside, species: 'walnut-black', bottomGroovePlay: 0 });

  it('are each cut from one setting of the fence a pass, the same on all boards', () => {
    // Foot 1/4, so the fence stands 1/4 in off, then moves on by 13/64 - 1/8; the lid's groove begins 1/4 + 13/64 + 4 up.
    const passes = boxGroovePasses({ box, cutter: '1/8 in', panel: '13/64 in' });
    expect(passes.map(({ name, fences }) => [name, fences])).toEqual([
      ['bottom', [1 / 4, 1 / 4 + 5 / 64]],
      ['lid', [4 + 29 / 64, 4 + 37 / 64]],
    ]);
  });

  it('judge the cutter by the bottom as it was measured', () => {
    const [bottom] = boxGroovePasses({ box, cutter: '1/8 in', panel: '1/4 in' });
    expect(bottom?.findings.find(({ rule }) => rule.startsWith('panel: play'))?.verdict).toBe('stop');
  });
});
