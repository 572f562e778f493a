import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { oneOf, readParameters, size } from '../../measure/parameters.js';
import { judge, rounding, tape } from '../../measure/verdict.js';

const fields = z.strictObject({
  insideLength: size({ least: 0.25, most: 60, why: 'inside, front to back' }),
  insideWidth: size({ least: 0.25, most: 60, why: 'inside, side to side' }),
  insideDepth: size({ least: 0.25, most: 60, why: 'clear depth' }),
  reach: oneOf(['hand', 'finger and thumb'], 'what has to go in').default('hand'),
  handWidth: size({ least: 2, most: 6, why: 'over the knuckles; measure the one who will use it' }).default(3.5),
  handThickness: size({ least: 0.5, most: 4, why: 'of a hand that holds something' }).default(1.75),
  fingerLength: size({ least: 1, most: 5, why: 'as far as fingers reach without the knuckles going in' }).default(3),
});

/**
 * Whether what lies on the bottom can be reached. No sheet takes it yet: kept for the sizing of a box by what goes in.
 *
 * A box shallower than the fingers are long needs room for finger and thumb only; a deeper one needs the hand's width one way and
 * its thickness the other.
 *
 * @param room.reach  `hand`, or `finger and thumb` where things are picked out one by one
 * @param room.handWidth, room.handThickness, room.fingerLength  3 1/2, 1 3/4 and 3 in unless told otherwise
 * @returns one finding, with the nearest size that is possible
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source: measure the hand
 */
export function fingerRoom(room: {
  insideLength: number | string;
  insideWidth: number | string;
  insideDepth: number | string;
  reach?: 'hand' | 'finger and thumb';
  handWidth?: number | string;
  handThickness?: number | string;
  fingerLength?: number | string;
}): Finding {
  const read = readParameters(fields, { ...room });
  const { insideLength, insideWidth, insideDepth, reach, handWidth, handThickness, fingerLength } = read;
  const wholeHand = reach === 'hand' && insideDepth > fingerLength;
  const [wide, narrow] = wholeHand ? [handWidth, handThickness] : [1.5, 0.75];
  const longer = Math.max(insideLength, insideWidth);
  const shorter = Math.min(insideLength, insideWidth);
  const lengthIsLonger = insideLength >= insideWidth;
  const [longField, shortField] = lengthIsLonger ? ['insideLength', 'insideWidth'] : ['insideWidth', 'insideLength'];
  const needed = [
    longer < wide - rounding ? `${longField} at least ${tape(wide)}` : '',
    shorter < narrow - rounding ? `${shortField} at least ${tape(narrow)}` : '',
  ].filter(Boolean);
  return {
    rule: 'room for the hand',
    verdict: judge(needed.length === 0, 'stop'),
    figures: `inside ${tape(longer)} by ${tape(shorter)}, ${tape(insideDepth)} deep; ${wholeHand ? 'a hand' : 'finger and thumb'} ${tape(wide)} by ${tape(narrow)}`,
    reason: wholeHand
      ? 'it is deeper than fingers are long: the hand has to go in to reach the bottom'
      : 'finger and thumb have to close on what lies in it',
    change:
      needed.length === 0
        ? 'nothing'
        : `${needed.join(' and ')}${wholeHand ? `, or insideDepth at most ${tape(fingerLength)}` : ''}`,
  };
}
