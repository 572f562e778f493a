import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../kernel-helpers/src/measure/formula.js';
import { layOutHandle } from '../../../kernel-helpers/src/surface/handle/handle.js';
import { chordFormula, wallFormula } from '../../../kernel-helpers/src/surface/handle/handle-formulas.js';
import type { LidPoint } from '../../../kernel-helpers/src/surface/lettering/outline.js';
import { chest } from '../lettering/shapes.js';

const lay = (more: Partial<Parameters<typeof layOutHandle>[0]> = {}) =>
  layOutHandle({ box: chest, kind: 'scoop', ...more });
const rule = (handle: ReturnType<typeof lay>, name: string) => handle.findings.find((each) => each.rule === name);

/** Height of the lid's top at a place, along the section. */
function heightAt(profile: readonly LidPoint[], y: number): number {
  const i = profile.findIndex(([at]) => at >= y);
  const [[fromY, from], [toY, to]] = [profile[i - 1] ?? profile[0], profile[i]] as [LidPoint, LidPoint];
  return toY === fromY ? to : from + ((to - from) * (y - fromY)) / (toY - fromY);
}

describe('a core-box cut', () => {
  test('its edge lies on the bit: half chord and height to the centre are a right triangle with the radius', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.125, max: 1.5, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (R, part) => {
          const chord = evaluate(chordFormula, { R, d: part * R });
          expect(Math.hypot(chord / 2, R - part * R)).toBeCloseTo(R, 9);
        },
      ),
    );
  });

  test('deeper than its radius it is as wide as the bit, with upright walls', () => {
    expect(evaluate(chordFormula, { R: 0.5, d: 0.8 })).toBe(1);
    expect(evaluate(wallFormula, { R: 0.5, d: 0.8 })).toBeCloseTo(90, 6);
  });

  test('half a radius deep its wall leans at 60 degrees', () => {
    // cos = (R - d) / R = 1/2
    expect(evaluate(wallFormula, { R: 0.5, d: 0.25 })).toBeCloseTo(60, 6);
  });
});

describe('the section', () => {
  test('of a scoop is as deep as asked for in its middle, and untouched beyond its chord', () => {
    const { profile, extent, chord } = lay({ depth: '1/4 in', middleFromFront: '2 in' });
    expect(heightAt(profile, 2)).toBeCloseTo(0.25, 6);
    expect(heightAt(profile, 2 - chord / 2 - 0.01)).toBeCloseTo(0.5, 9);
    expect([extent.front, extent.back]).toEqual([2 - chord / 2, 2 + chord / 2]);
  });

  test('of a notch is what a ball leaves that rises as it is drawn back, found by trying every place of it', () => {
    const [R, d, travel, middle] = [0.5, 0.25, 1, 1.2];
    const { profile } = lay({
      kind: 'thumb notch',
      bitDiameter: 2 * R,
      depth: d,
      length: travel,
      middleFromFront: middle,
    });
    for (let y = middle - 0.6; y < middle + 1.5; y += 0.03) {
      let floor = 0.5;
      for (let s = 0; s <= 1.3; s += 0.0005) {
        const off = y - (middle + s * travel);
        if (Math.abs(off) < R) floor = Math.min(floor, 0.5 - d + s * d + R - Math.sqrt(R * R - off * off));
      }
      // The front wall is drawn in 25 pieces: its chords stray by under 0.001 in.
      expect(Math.abs(heightAt(profile, y) - floor)).toBeLessThan(0.002);
    }
  });

  test('of a pull stands its height above the lid, with a cove at its foot', () => {
    const pull = lay({
      kind: 'raised pull',
      height: '1/2 in',
      bitDiameter: '1/2 in',
      length: '1/2 in',
      middleFromFront: '2 in',
    });
    expect(heightAt(pull.profile, 2)).toBe(1);
    expect(pull.lidStock).toBe(1);
    expect(pull.extent.back - pull.extent.front).toBe(1);
    expect(heightAt(pull.profile, 2 - 0.25 - 0.25)).toBeCloseTo(0.5, 9);
  });
});

describe('what must be true of a handle', () => {
  test('a pull needs a lid milled thicker: a stop where it was milled as sized', () => {
    const pull = {
      kind: 'raised pull',
      height: '1/2 in',
      bitDiameter: '1/2 in',
      length: '1/2 in',
      middleFromFront: '2 in',
    } as const;
    expect(rule(lay({ ...pull, milled: '1/2 in' }), 'pull milled from the lid')).toMatchObject({
      verdict: 'stop',
      figures: expect.stringContaining('the lid is milled to 1/2 in'),
      change: expect.stringContaining('set lidStock in sheet 07 to 1 in'),
    });
    expect(rule(lay({ ...pull, milled: '1 in' }), 'pull milled from the lid')?.verdict).toBe('watch');
  });

  test('nothing left under it is a stop, under 1/8 in a watch', () => {
    expect(rule(lay({ depth: '1/2 in' }), 'wood under the handle')?.verdict).toBe('stop');
    expect(rule(lay({ depth: '7/16 in' }), 'wood under the handle')?.verdict).toBe('watch');
    expect(rule(lay({ depth: '1/4 in' }), 'wood under the handle')?.verdict).toBe('ok');
  });

  test('over the lettering is a stop, near it a watch, clear of it fine', () => {
    const lettering = (front: number) => ({ extent: { left: 1, right: 5, front, back: front + 0.75 } });
    const at = (front: number) => lay({ middleFromFront: '1 1/2 in', lettering: lettering(front) });
    expect(rule(at(1.2), 'handle clear of the lettering')?.verdict).toBe('stop');
    expect(rule(at(2), 'handle clear of the lettering')?.verdict).toBe('watch');
    expect(rule(at(4), 'handle clear of the lettering')?.verdict).toBe('ok');
  });

  test('a hollow too small or too flat for a finger is a watch', () => {
    expect(rule(lay({ bitDiameter: '1/2 in', depth: '1/4 in', width: '3/4 in' }), 'room for a finger')?.verdict).toBe(
      'watch',
    );
    expect(rule(lay({ bitDiameter: '1 1/2 in', depth: '1/16 in' }), 'room for a finger')?.verdict).toBe('watch');
    expect(rule(lay(), 'room for a finger')?.verdict).toBe('ok');
  });

  test('at the shoulder of the tongue is a watch', () => {
    expect(rule(lay({ width: '6 1/8 in' }), 'handle clear of the grooves')?.verdict).toBe('watch');
  });

  test('too deep a pass is a stop', () => {
    const name = 'depth of one pass of the core-box bit';
    expect(rule(lay({ bitDiameter: '1/2 in', passDepth: '3/8 in' }), name)?.verdict).toBe('stop');
  });
});

describe('a handle that cannot be', () => {
  test.each([
    [{ kind: 'knob' }, 'kind: "knob" given; possible: scoop, raised pull, thumb notch'],
    [{ depth: '3 in' }, 'depth: "3 in" given; possible: 1/32 in'],
    [{ width: '8 in' }, 'possible: what lies on the lid'],
    [{ width: '1/2 in' }, 'what the bit cuts where it only goes down and up'],
    [{ kind: 'raised pull', height: '1/4 in' }, 'the cove around the foot is no higher than the pull'],
    [{ middleFromFront: '0 in' }, 'possible: what lies on the lid'],
  ])('%o', (more, message) => {
    expect(() => lay(more as never)).toThrow(message);
  });
});
