import * as z from 'zod';
import type { Finding } from '../measure/finding.js';
import { oneOf, readParameters, size } from '../measure/parameters.js';
import { judge, rounding, tape } from '../measure/verdict.js';

/** How a routed cut is set up. Lengths as text or inches. */
export interface RouterSetUp {
  /** What guides the cut: `template`, `fence`, `carving machine` or `freehand`. */
  guide: string;
  /** How the work is held: `clamped`, `vacuum` or `by hand`. */
  held: string;
  /** Which way the bit meets the wood: `against the turning` or `with the turning`. */
  feed: string;
  /** `on` or `off`. */
  guard: string;
  /** Length of the piece as it is cut. */
  pieceLength: string | number;
  /** Shortest piece that the set-up holds safely. */
  leastLength?: string | number;
}

const fields = z.strictObject({
  guide: oneOf(['template', 'fence', 'carving machine', 'freehand'], 'what guides the cut'),
  held: oneOf(['clamped', 'vacuum', 'by hand'], 'how the work is held'),
  feed: oneOf(['against the turning', 'with the turning'], 'which way the bit meets the wood'),
  guard: oneOf(['on', 'off'], 'guard or shield of the router'),
  pieceLength: size({ least: 0.25, most: 120, why: 'length of the piece as it is cut' }),
  leastLength: size({ least: 1, most: 36, why: 'shortest piece the set-up holds safely' }).default(6),
});

/**
 * Whether a routed cut is set up so that it can be done: an unsafe set-up is a `stop`.
 *
 * @param setUp  see {@link RouterSetUp}
 * @throws ShopError  one line: the field, the value given, what is possible, why
 * @see common practice, no source; the machine's manual comes first
 */
export function setUpFindings(setUp: RouterSetUp): Finding[] {
  const { guide, held, feed, guard, pieceLength, leastLength } = readParameters(fields, { ...setUp });
  const byMachine = guide === 'carving machine';
  return [
    {
      rule: 'work held',
      verdict: judge(held !== 'by hand', 'stop'),
      absolute: 'unsafe',
      figures: `the lid is held ${held === 'by hand' ? 'by hand' : `by ${held === 'clamped' ? 'clamps' : 'vacuum'}`}`,
      reason: 'a bit that catches turns or throws the piece, and the hand with it',
      change: 'clamp it, with the clamps clear of the cut',
    },
    {
      rule: 'cut guided',
      verdict: judge(guide !== 'freehand', 'stop'),
      absolute: 'unsafe',
      figures: `guided by ${guide === 'freehand' ? 'nothing' : `a ${guide}`}`,
      reason: 'along the grain a bit follows the grain, not the line, and dives where it is soft',
      change: 'make a template or a fence, let a carving machine follow the file, or cut it by chisel',
    },
    {
      rule: 'feed direction',
      verdict: judge(feed === 'against the turning' || byMachine, 'stop'),
      absolute: 'unsafe',
      figures: `fed ${feed} of the bit`,
      reason: 'a climb cut by hand pulls the router along and out of the hands',
      change: 'feed against the turning of the bit',
    },
    {
      rule: 'guard on',
      verdict: judge(guard === 'on', 'stop'),
      absolute: 'unsafe',
      figures: `the guard is ${guard}`,
      reason: 'chips and a broken bit fly at the face that bends over them',
      change: 'put the guard on',
    },
    {
      rule: 'piece long enough to hold',
      verdict: judge(pieceLength >= leastLength - rounding, 'stop'),
      absolute: 'unsafe',
      figures: `${tape(pieceLength)} long; the set-up holds ${tape(leastLength)} and longer`,
      reason: 'a short piece tips and is thrown',
      change: 'cut letters and handle in the longer blank, and saw the piece to length afterwards',
    },
  ];
}
