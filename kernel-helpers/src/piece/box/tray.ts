import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { judge, tape } from '../../measure/verdict.js';
import type { Piece } from '../piece.js';

/** A tray that stands in a box. Inches. No sheet takes it yet: kept for boxes fitted out inside. */
export interface Tray extends Piece {
  inside: { length: number; width: number; depth: number };
  /** Clear depth left under it, or over it when it stands on the bottom. */
  roomLeft: number;
}

const fields = z.strictObject({
  length: size({ least: 0.5, most: 60, why: 'length of the tray, front to back' }).optional(),
  depth: size({ least: 0.25, most: 18, why: 'height of the tray' }),
  stockThickness: size({ least: 0.125, most: 1, why: "thickness of the tray's boards" }).default(1 / 4),
  bottomThickness: size({ least: 1 / 32, most: 0.5, why: "thickness of the tray's bottom" }).default(1 / 8),
  bottomGrooveDepth: size({ least: 0, most: 0.5, why: 'depth of its groove; 0 when it is glued under' }).default(1 / 8),
  foot: size({ least: 0, most: 1, why: 'wood under the groove' }).default(1 / 8),
  clearance: size({ least: 0, most: 0.5, why: 'between tray and box, each side' }).default(1 / 32),
});

/**
 * Sizes a tray for a box: through joints, plywood bottom, loose all round.
 *
 *   outside = inside of the box - 2 clearance          inside depth = depth - foot - bottom
 *
 * @param tray.box  the box it stands in: anything with its inside sizes
 * @param tray.length  front to back; the whole length unless told otherwise, half of it for a tray that slides
 * @returns parts, overall, inside, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source
 */
export function sizeTray(tray: {
  box: { design: { insideLength: number; insideWidth: number; insideDepth: number } };
  length?: number | string;
  depth: number | string;
  stockThickness?: number | string;
  bottomThickness?: number | string;
  bottomGrooveDepth?: number | string;
  foot?: number | string;
  clearance?: number | string;
}): Tray {
  const { box, ...typed } = tray;
  const read = readParameters(fields, typed);
  const { depth, stockThickness, bottomThickness, bottomGrooveDepth, clearance } = read;
  const foot = bottomGrooveDepth > 0 ? read.foot : 0;
  const { insideLength, insideWidth, insideDepth } = box.design;
  const longest = insideLength - 2 * clearance;
  const overall = { length: read.length ?? longest, width: insideWidth - 2 * clearance, height: depth };
  const most = (field: string, given: number, limit: number, why: string) => {
    if (given > limit) throw new ShopError(`${field}: ${tape(given)} given; possible: up to ${tape(limit)} (${why})`);
  };
  most('depth', depth, insideDepth, 'the clear depth of the box');
  most('length', overall.length, longest, 'the inside of the box less the clearance');
  most('bottomGrooveDepth', bottomGrooveDepth, stockThickness / 2, 'half of the boards');
  const inside = {
    length: overall.length - 2 * stockThickness,
    width: overall.width - 2 * stockThickness,
    depth: depth - foot - bottomThickness,
  };
  if (Math.min(inside.length, inside.width, inside.depth) <= 0)
    throw new ShopError(
      `depth: a tray ${tape(overall.length)} by ${tape(overall.width)} by ${tape(depth)} has no room inside; possible: thinner boards, or one over ${tape(2 * stockThickness)} wide and ${tape(foot + bottomThickness)} deep`,
    );
  const board = { count: 2, width: depth, thickness: stockThickness, material: 'wood' } as const;
  const play = bottomGrooveDepth > 0 ? 1 / 32 : 0;
  const under = (clear: number) =>
    bottomGrooveDepth > 0 ? clear + 2 * bottomGrooveDepth - play : clear + 2 * stockThickness;
  const findings: Finding[] = [
    {
      rule: 'tray lifts out',
      verdict: judge(clearance >= 1 / 64 && clearance <= 1 / 16, 'watch'),
      figures: `${tape(clearance)} each side`,
      reason: 'the box moves little along its boards, but a tray without play sticks, and one with much of it rattles',
      change: 'clearance from 1/64 to 1/16 in',
    },
  ];
  return {
    parts: [
      { ...board, name: 'tray side', length: overall.length, grain: 'front to back', note: 'front to back' },
      { ...board, name: 'tray end', length: overall.width, grain: 'side to side', note: 'side to side' },
      {
        name: 'tray bottom',
        count: 1,
        length: under(inside.length),
        width: under(inside.width),
        thickness: bottomThickness,
        grain: 'none',
        material: 'plywood',
        note: bottomGrooveDepth > 0 ? 'in its grooves' : 'glued under the boards',
      },
    ],
    overall,
    inside,
    roomLeft: insideDepth - depth,
    findings,
  };
}
