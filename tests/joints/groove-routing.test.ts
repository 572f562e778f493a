import { describe, expect, it } from 'vitest';
import { grooveRouting, type RouterKind, routerWords } from '../../kernel-helpers/src/joints/groove-routing.js';

type Vector = readonly [number, number];

/** Speed of a tooth on the side `at` of a bit, seen from above: x to the right, y away from the user. */
const tooth = (turning: 1 | -1, [x, y]: Vector): Vector => [-turning * y, turning * x];
const along = ([ax, ay]: Vector, [bx, by]: Vector) => ax * bx + ay * by;

const right: Vector = [1, 0];
const left: Vector = [-1, 0];
const away: Vector = [0, 1];
const towards: Vector = [0, -1];

describe('which way work or router goes', () => {
  // Independent of the words: the turning of the bit, the side of it that meets wood, and Newton's third law. A bit turns with the
  // clock seen from its motor: seen from above with the clock in the hand, against it in a table, where the motor hangs below.
  const inTable = 1;
  const inHand = -1;

  it('at a table: from right to left, in front of the fence and in a groove', () => {
    expect(routerWords('router table').direction).toContain('from right to left');
    // On the edge and in a widening pass the wood meets the side towards the user: the teeth push it against its feed.
    expect(along(tooth(inTable, towards), left)).toBeLessThan(0);
    // In a full groove the wood comes from the right: the teeth push it to the fence.
    expect(along(tooth(inTable, right), away)).toBeGreaterThan(0);
  });

  it('in the hand: from left to right on an edge that faces you, and the guide on it is drawn in', () => {
    expect(routerWords('hand router').direction).toContain('from left to right');
    // The wood lies beyond the bit: its push on the router, the opposite of the teeth, is against the way it goes.
    const push = tooth(inHand, away).map((v) => -v) as unknown as Vector;
    expect(along(push, right)).toBeLessThan(0);
    // In a full groove the leading side drives the router away from the user, and so draws the guide against the edge.
    const drive = tooth(inHand, right).map((v) => -v) as unknown as Vector;
    expect(along(drive, away)).toBeGreaterThan(0);
  });

  it('by a machine: as the file says, with nobody holding the work', () => {
    expect(routerWords('carving machine').direction).not.toMatch(/left|right/);
  });
});

const run = (...ends: ('through' | 'stopped')[]) => ({ board: 'front' as const, ends: ends as ['through', 'stopped'] });
const front = { name: 'front', length: 8, width: 4 };
const routed = (machine: RouterKind, runs = [run('stopped', 'stopped')], board = front) =>
  grooveRouting({ runs, parts: [board, { name: 'lid', length: 3, width: 1 }], router: { machine } });

describe('a stopped groove', () => {
  it('begins between blocks, by plunging, or on a ramp', () => {
    expect(routed('router table').lines.join()).toMatch(/start block on the right.*lower the board/);
    expect(routed('hand router').lines.join()).toContain('plunge');
    expect(routed('carving machine').lines.join()).toContain('ramps down');
  });

  it('at one end or at none needs less said', () => {
    expect(routed('router table', [run('through', 'stopped')]).lines.join()).not.toContain('stopped at both ends:');
    expect(routed('router table', [run('through', 'through')]).lines).toHaveLength(1);
  });
});

describe('boards at the table', () => {
  it('stop where they are shorter or narrower than it takes by hand', () => {
    const verdict = (length: number, width: number, machine: RouterKind = 'router table') =>
      routed(machine, undefined, { ...front, length, width }).findings.map((finding) => finding.verdict);
    expect(verdict(6, 1.5)).toEqual(['ok']);
    expect(verdict(5.9, 4)).toEqual(['stop']);
    expect(verdict(8, 1.4)).toEqual(['stop']);
    expect(verdict(5.9, 1.4, 'hand router')).toEqual(['ok']);
    expect(verdict(5.9, 1.4, 'carving machine')).toEqual(['ok']);
  });

  it('are routed by one of three machines, and no other', () => {
    expect(() => routerWords('shaper')).toThrow(
      'machine: "shaper" given; possible: router table, hand router, carving',
    );
  });
});
