import { type CornerLayout, cornerPieces } from '../../joints/corner.js';
import { type DovetailLayout, dividerFormula, slopeFormula } from '../../joints/dovetails.js';
import { fingerFormula } from '../../joints/finger-joint.js';
import type { FingerLayout } from '../../joints/finger-layout.js';
import { formatLength } from '../../measure/length.js';
import { dividerWalk } from '../drawing/divider-walk.js';
import { type DrawingOptions, lengthText, settingText } from '../drawing/kit/lengths.js';
import type { DisplayItem } from '../kit/display.js';
import { markdown } from '../kit/escape.js';
import { table } from '../kit/table.js';
import { working } from './working.js';

const right = (head: string) => ({ head, align: 'right' as const });
const caliper = (inches: number) => formatLength(inches, { system: 'caliper' });

/**
 * How a corner is set out, step by step: the formulas worked, what gauge, dividers, bevel or jig stand at, and every place
 * for checking with a rule.
 *
 * @param layout  dovetails or fingers
 * @param options  how sizes are shown
 */
export function settingOut(layout: CornerLayout, options: DrawingOptions = {}): (DisplayItem | string)[] {
  return 'tails' in layout ? dovetails(layout, options) : fingers(layout, options);
}

function dovetails(layout: DovetailLayout, options: DrawingOptions): (DisplayItem | string)[] {
  const { boardWidth, tails, pins, walk, slope, sawAngle, gaugeSetting, dividerSetting } = layout;
  const show = lengthText(options);
  const pin = pins.find(({ half }) => !half);
  const values = {
    W: boardWidth,
    h1: walk.up[0] ?? 0,
    h2: boardWidth - (walk.down[0] ?? boardWidth),
    p: pin ? pin.to - pin.from : 0,
    t: tails.length,
  };
  return [
    markdown`**The dividers.** Take away the two half pins, give back one pin, and share the rest among the tails: that is one tail and one pin together. Set ${settingText(options)(dividerSetting)} by trial, stepping along the board, not by the rule: a hair off is off ${tails.length} times.`,
    ...working(dividerFormula, values, { lengths: options.lengths ?? 'tape', denominator: 64 }),
    dividerWalk(layout, options),
    markdown`**The slope.** Set the bevel to ${sawAngle.toFixed(1)} degrees from the line of the board, or to one across and ${slope} along. The marking gauge stands at **${show(gaugeSetting)}**: thickness plus proud.`,
    ...working(slopeFormula, { n: slope }, { digits: 3 }),
    table({
      columns: ['Tail', right('From the lower edge'), right('to'), right('At the baseline from'), right('to')],
      rows: tails.map((tail, i) => [
        i + 1,
        ...[tail.from, tail.to, tail.baselineFrom, tail.baselineTo].map((place) => show(place)),
      ]),
      caption: 'Tails, for checking with a rule; the dividers need none of it',
    }),
    table({
      columns: ['Socket', right('Outside face from'), right('to'), right('Inside face from'), right('to')],
      rows: cornerPieces(layout).sockets.map(({ from, to, baselineFrom, baselineTo }, i) => [
        i + 1,
        ...[from, to, baselineFrom, baselineTo].map((place) => show(place)),
      ]),
      caption: 'Sockets on the end of the pin board, from its lower edge: traced from the tails, this is to check by',
    }),
  ];
}

function fingers(layout: FingerLayout, options: DrawingOptions): (DisplayItem | string)[] {
  const { boardWidth, count, fingerWidth, play, setUp, note } = layout;
  const { cutterHeight, keyDistance, firstBoardFence, secondBoardFence, passes, offsets } = setUp;
  const show = lengthText(options);
  const place = (inches?: number) => (inches === undefined ? '' : show(inches));
  const longest = Math.max(firstBoardFence.length, secondBoardFence.length);
  return [
    markdown`**The fingers.** All are alike: the width of the boards shared among them, ${note}.`,
    ...working(fingerFormula, { W: boardWidth, N: count }, { lengths: options.lengths ?? 'tape', denominator: 64 }),
    markdown`**The jig.** Raise the cutter to **${show(cutterHeight)}**: thickness plus proud. The key is as wide as a socket, ${caliper(fingerWidth + play / 2)}, and stands ${caliper(keyDistance)} from the cut${passes === 1 ? '' : `; each socket takes ${passes} passes, moved by ${offsets.slice(1).map(caliper).join(', ')} from the first`}. Set the first board's lower edge against the key; the second board starts with the socket at its edge, one finger nearer.`,
    table({
      columns: ['Socket', right('First board, from the lower edge'), right('Second board')],
      rows: Array.from({ length: longest }, (_, i) => [i + 1, place(firstBoardFence[i]), place(secondBoardFence[i])]),
      caption: 'Where each socket begins, for checking with a rule',
    }),
  ];
}
