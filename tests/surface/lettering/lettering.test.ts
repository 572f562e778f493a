import { describe, expect, test } from 'vitest';
import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { typeface } from '../../../kernel-helpers/src/record/own/typeface-file.js';
import { letteringTemplate } from '../../../kernel-helpers/src/show/drawing/lid/lettering-template.js';
import { lidDrawing } from '../../../kernel-helpers/src/show/drawing/lid/lid-drawing.js';
import { lidSection } from '../../../kernel-helpers/src/show/drawing/lid/lid-section.js';
import { lidPlaces } from '../../../kernel-helpers/src/show/tables/lid-places.js';
import { layOutHandle } from '../../../kernel-helpers/src/surface/handle/handle.js';
import { layOutLettering } from '../../../kernel-helpers/src/surface/lettering/lettering.js';
import { chest } from './shapes.js';

const roman = typeface('roman');
const lay = (more: Partial<Parameters<typeof layOutLettering>[0]> = {}) =>
  layOutLettering({ box: chest, face: roman, text: 'TEA 2027', height: '3/4 in', ...more });
const rule = (lettering: ReturnType<typeof lay>, name: string) => lettering.findings.find((each) => each.rule === name);

describe('lettering on the lid', () => {
  test('counts letters and figures, not spaces', () => {
    expect(lay().letters).toBe(7);
    expect(lay({ text: 'TEA\n2027', height: '1/2 in' }).letters).toBe(7);
  });

  test('a capital is as high as asked for, in inches or millimetres', () => {
    const high = ({ extent }: ReturnType<typeof lay>) => extent.back - extent.front;
    expect(high(lay({ text: 'H', height: '20 mm' }))).toBeCloseTo(20 / 25.4, 9);
    expect(high(lay({ text: 'H', height: '3/4 in' }))).toBeCloseTo(0.75, 9);
  });

  test('lies in the middle of the lid, or where it is put', () => {
    const middle = ({ extent }: ReturnType<typeof lay>) => [
      (extent.left + extent.right) / 2,
      (extent.front + extent.back) / 2,
    ];
    const centred = lay();
    expect(middle(centred)[0]).toBeCloseTo(centred.field.width / 2, 9);
    expect(middle(centred)[1]).toBeCloseTo(centred.field.length / 2, 9);
    expect(middle(lay({ middleFromFront: '3 in' }))[1]).toBeCloseTo(3, 9);
  });

  test('turned front to back it is the same lettering, a quarter turn on', () => {
    const across = lay();
    const along = lay({ runs: 'front to back' });
    expect(along.extent.back - along.extent.front).toBeCloseTo(across.extent.right - across.extent.left, 9);
    expect(along.area).toBeCloseTo(across.area, 6);
    // Samples lie elsewhere on the turned outline only by rounding.
    expect(along.deepest.depth).toBeCloseTo(across.deepest.depth, 4);
  });

  test('a 60 degree bit goes deeper than one of 90 by the square root of three, for the same strokes', () => {
    expect(lay({ bitAngle: 60 }).deepest.depth / lay().deepest.depth).toBeCloseTo(Math.sqrt(3), 9);
  });

  test('twice the height: twice the depth and four times the area', () => {
    const [small, large] = [lay({ text: 'TEA', height: 0.5 }), lay({ text: 'TEA', height: 1 })];
    expect(large.deepest.depth / small.deepest.depth).toBeCloseTo(2, 2);
    expect(large.area / small.area).toBeCloseTo(4, 2);
  });

  test('what is left of the lid is its thickness less the deepest cut', () => {
    const { deepest, remaining } = lay();
    expect(remaining + deepest.depth).toBeCloseTo(0.5, 12);
  });

  test('a depth limit holds, leaves a flat bottom, and takes nothing from narrow strokes', () => {
    const limited = lay({ depthLimit: '1/32 in' });
    expect(limited.deepest.depth).toBe(1 / 32);
    expect(limited.floorArea).toBeGreaterThan(0);
    expect(limited.floorArea).toBeLessThan(limited.area);
    expect(limited.floorLength).toBeGreaterThan(0);
    const unlimited = lay({ depthLimit: '1/4 in' });
    expect(unlimited.floorArea).toBeCloseTo(0, 9);
    expect(unlimited.deepest.depth).toBeCloseTo(lay().deepest.depth, 12);
  });

  test('minutes are the way over the feed and the lifts: half the feed, twice the cutting', () => {
    const slow = lay({ feed: '20 in', liftSeconds: 0 });
    expect(slow.minutes).toBeCloseTo(slow.pathLength / 20, 9);
    expect(lay({ feed: '40 in', liftSeconds: 0 }).minutes).toBeCloseTo(slow.minutes / 2, 9);
    expect(lay({ feed: '20 in', liftSeconds: 6 }).minutes - slow.minutes).toBeCloseTo(slow.starts / 10, 9);
  });

  test('an ornament out of a drawing is cut with the text, at the height asked for', () => {
    const ring = 'M 0 0 A 5 5 0 1 0 10 0 A 5 5 0 1 0 0 0 Z M 2 0 a 3 3 0 1 0 6 0 a 3 3 0 1 0 -6 0 Z';
    const lettered = lay({ ornaments: [{ path: ring, height: '1 in', down: '2 in' }] });
    const plain = lay();
    expect(lettered.letters).toBe(7);
    expect(lettered.area - plain.area).toBeCloseTo(Math.PI * (0.5 ** 2 - 0.3 ** 2), 2);
    expect(lettered.extent.back - lettered.extent.front).toBeGreaterThan(2.4);
  });
});

describe('what must be true of it', () => {
  test('under 1/8 in of wood is a watch', () => {
    const deep = lay({ text: 'I', height: '5 in', face: typeface('plain'), bitAngle: 80, bitDiameter: '1 in' });
    expect(deep.remaining).toBeLessThan(1 / 8);
    expect(deep.remaining).toBeGreaterThan(0);
    expect(rule(deep, 'wood under the lettering')?.verdict).toBe('watch');
    expect(rule(lay(), 'wood under the lettering')?.verdict).toBe('ok');
  });

  test('lettering deeper than the lid is a stop', () => {
    const through = lay({ text: 'I', height: '6 in', face: typeface('plain'), bitAngle: 40, bitDiameter: '1 in' });
    expect(through.remaining).toBeLessThan(0);
    expect(rule(through, 'wood under the lettering')).toMatchObject({
      verdict: 'stop',
      figures: expect.stringContaining('nothing left'),
    });
  });

  test('a bit narrower than its groove is a stop, and a limit cures it', () => {
    const wide = { text: 'I', height: '6 in', face: typeface('plain'), bitDiameter: '1/4 in', passDepth: '1/16 in' };
    expect(rule(lay(wide), 'bit wide enough')?.verdict).toBe('stop');
    expect(rule(lay({ ...wide, depthLimit: '1/8 in' }), 'bit wide enough')?.verdict).toBe('ok');
  });

  test('a pass deeper than half the bit is a stop', () => {
    expect(rule(lay({ bitDiameter: '1/4 in', passDepth: '3/16 in' }), 'depth of one pass')?.verdict).toBe('stop');
  });

  test('hairlines are a watch', () => {
    expect(rule(lay({ height: '1/8 in' }), 'strokes that survive sanding')?.verdict).toBe('watch');
  });
});

describe('what cannot be cut', () => {
  test('characters that the face lacks are all named in one message', () => {
    expect(() => lay({ text: 'TEA Ж 茶 Ж' })).toThrow('text: "Ж" "茶" given; possible: characters that the face has');
  });

  test('text too wide: the message names the largest height, and that height fits', () => {
    let message = '';
    try {
      lay({ height: '1 1/2 in' });
    } catch (error) {
      message = (error as Error).message;
    }
    const [, largest] = message.match(/^height: 1 1\/2 in.* given; possible: a height of at most ([\d /]+ in)/) ?? [];
    expect(largest).toBeDefined();
    expect(() => lay({ height: largest as string })).not.toThrow();
    expect(() => lay({ height: `${inchesOf(largest as string) + 1 / 32} in` })).toThrow(
      'possible: a height of at most',
    );
  });

  test('text that no height makes fit', () => {
    expect(() => lay({ text: 'W'.repeat(150) })).toThrow('possible: a shorter text');
  });

  test('a field misspelt, an angle that is no bit, an ornament that cannot be read', () => {
    expect(() => lay({ bitAngle: 200 })).toThrow('bitAngle: 200 given; possible: a number from 20 to 150 degrees');
    expect(() => lay({ hight: '1 in' } as never)).toThrow('hight: there is no such parameter; the nearest is height');
    expect(() => lay({ ornaments: [{ path: 'M 0 0 L x', height: '1 in' }] })).toThrow('ornament: "M 0 0 L x" given');
    expect(() => lay({ ornaments: [{ path: 'M 0 0 L 5 0', height: '1 in' }] })).toThrow('encloses nothing');
  });

  test('a lid too small for anything', () => {
    const tiny = sizeBox({ insideLength: '1 in', insideWidth: '1 in', insideDepth: '1 in', species: 'walnut-black' });
    expect(() => lay({ box: tiny })).toThrow('possible: a shorter text, or another place on the lid');
  });
});

/** "15/64 in" as a number. */
function inchesOf(text: string): number {
  return text
    .replace(' in', '')
    .split(' ')
    .reduce((sum, part) => {
      const [top, under = '1'] = part.split('/');
      return sum + Number(top) / Number(under);
    }, 0);
}

describe('a lid that nothing is cut into', () => {
  const none = lay({ text: ' ' });

  test('has its whole thickness, takes no time, and asks nothing of a bit', () => {
    expect(none).toMatchObject({ text: '', letters: 0, minutes: 0, pathLength: 0, outlines: [], findings: [] });
    expect(none.remaining).toBe(none.field.thickness);
  });

  test('is drawn with its handle alone', () => {
    const handle = layOutHandle({ box: chest, kind: 'scoop', lettering: none });
    expect(handle.findings.map(({ rule: name }) => name)).not.toContain('handle clear of the lettering');
    const onLid = { lettering: none, handle };
    for (const shown of [lidDrawing(onLid), lidPlaces(onLid), lidSection(onLid)]) {
      expect(shown.text).not.toMatch(/lettering starts|deepest stroke|<td>lettering|NaN|Infinity/);
      expect(shown.text).toContain('scoop');
    }
    expect(letteringTemplate(onLid)).not.toMatch(/class="letter"|NaN|Infinity/);
    expect(lidSection({ lettering: none }).text).toBe('');
  });

  test('still refuses an ornament without text to be placed from', () => {
    const ornaments = [{ path: 'M0 0h1v1z', height: '1/2 in' }];
    expect(() => lay({ text: '', ornaments })).toThrow('text: "" given; possible: some letters or figures');
  });
});
