import { describe, expect, it, test } from 'vitest';
import { layOutDovetails } from '../../../kernel-helpers/src/joints/dovetails.js';
import { layOutFingers } from '../../../kernel-helpers/src/joints/finger-joint.js';
import { gluedFaces } from '../../../kernel-helpers/src/surface/finish/glued-faces.js';
import { planGluing } from '../../../kernel-helpers/src/surface/finish/gluing.js';

const board = { boardWidth: '5 in', stockThickness: '1/2 in' };
const tails = { tails: 3, pinWidth: '1/4 in', halfPin: '3/8 in', slope: '1:8' };
const proud = layOutDovetails({ ...board, ...tails, proud: '1/8 in' });
const flush = layOutDovetails({ ...board, ...tails });
const fingers = layOutFingers({ ...board, fingers: 10 });
const verdict = (layout: Parameters<typeof gluedFaces>[0], on: string) => gluedFaces(layout, on).findings[0]?.verdict;

describe('the faces of a corner that get glue, worked by hand on 5 in of 1/2 in stock', () => {
  test('long grain: six sides of three tails, each 1/2 in wide and 1/2 root(1 + 1/64) long', () => {
    expect(gluedFaces(proud, 'long grain').area).toBeCloseTo(6 * 0.25 * 1.0077822, 6);
  });

  test('all faces: the floors of the sockets too', () => {
    const floors = (5 - 3 * 1.125) / 2 + (3 * (1.125 + 1.25)) / 4;
    expect(gluedFaces(proud, 'all faces').area).toBeCloseTo(6 * 0.25 * 1.0077822 + floors, 6);
  });

  test('the inner third of the sides takes a third of the glue', () => {
    const millilitres = (on: string) =>
      planGluing({
        ...{ glue: 'hide-liquid', joints: 4, minutesPerJoint: 1.5, temperatureC: 20 },
        area: 4 * gluedFaces(proud, on).area,
      }).millilitres;
    expect(millilitres('inner third') / millilitres('long grain')).toBeCloseTo(1 / 3, 9);
  });
});

describe('the inner third', () => {
  it('is a choice for dovetails that stand proud, to be watched on flush ones, and no glue-up of fingers', () => {
    expect(verdict(proud, 'inner third')).toBe('ok');
    expect(verdict(flush, 'inner third')).toBe('watch');
    expect(verdict(fingers, 'inner third')).toBe('stop');
  });

  it('is no rule: all long grain, or all faces, is in order with every joint', () => {
    for (const layout of [proud, flush, fingers])
      for (const on of ['long grain', 'all faces']) expect(verdict(layout, on)).toBe('ok');
  });
});

it('refuses other words, by their name in the sheet', () => {
  expect(() => gluedFaces(proud, 'pins')).toThrow(
    'glueOn: "pins" given; possible: long grain, all faces, inner third (which faces of the joint are spread with glue)',
  );
});
