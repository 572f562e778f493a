import * as z from 'zod';
import type { Finding } from '../measure/finding.js';
import { evaluate, type Formula, type FormulaSymbol } from '../measure/formula.js';
import { amount, readParameters, size } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { judge, tape } from '../measure/verdict.js';

const inches = (tex: string, meaning: string): FormulaSymbol => ({ tex, meaning, unit: 'in', min: 0 });

/** Divider setting that walks the tails and, walked back from the other side, the pins. */
export const dividerFormula: Formula<'W' | 'h1' | 'h2' | 'p' | 't'> = {
  name: 'Divider setting',
  result: inches('S', 'divider setting: one tail and one pin'),
  expression: '(W - h1 - h2 + p) / t',
  symbols: {
    W: inches('W', 'width of the board'),
    h1: inches('h_1', 'half pin at the lower edge'),
    h2: inches('h_2', 'half pin at the upper edge'),
    p: inches('p', 'narrow side of a pin'),
    t: { meaning: 'tails', unit: '', min: 1 },
  },
  source: 'common practice, no source',
};

/** Angle of the slope from the line of the board. */
export const slopeFormula: Formula<'n'> = {
  name: 'Angle of the slope',
  result: { tex: '\\alpha', meaning: 'angle from the line of the board', unit: 'deg' },
  expression: 'atan(1 / n) * 180 / pi',
  symbols: { n: { meaning: 'slope, one across to n along', unit: '', min: 3, max: 12 } },
  source: 'trigonometry; 1 in 8 for all woods, never steeper than 1 in 6: Fairham, Woodwork Joints, section on angles',
};

/** A tail or a pin across the width of the tail board, from its lower edge. Inches. */
export interface JointPiece {
  /** On the end of the tail board. */
  from: number;
  to: number;
  /** On the baseline, where the slope has taken its share. */
  baselineFrom: number;
  baselineTo: number;
}

/** A joint as it is scribed. Inches, from the lower edge of the boards. */
export interface DovetailLayout {
  boardWidth: number;
  stockThickness: number;
  proud: number;
  tails: JointPiece[];
  /** From the lower half pin to the upper one. */
  pins: (JointPiece & { half: boolean })[];
  dividerSetting: number;
  /** Distance of the baseline from the end: thickness plus proud. */
  gaugeSetting: number;
  /** Degrees from the line of the board. */
  sawAngle: number;
  /** One across to so many along. */
  slope: number;
  /** Where the divider's point lands: up from the lower half pin, and down from the upper one. */
  walk: { up: number[]; down: number[] };
  findings: Finding[];
}

/** What decides a joint. Lengths as text or inches. */
export interface DovetailInput {
  boardWidth: number | string;
  stockThickness: number | string;
  proud?: number | string;
  /** How many tails; or give `tailToPin` instead. */
  tails?: number;
  /** How many narrow pins wide a tail should be, about: the count that comes nearest is taken. */
  tailToPin?: number;
  /** Narrow side of a pin. */
  pinWidth: number | string;
  halfPin: number | string;
  /** Half pin at the upper edge, where it differs: a front that is lowered for a sliding lid. */
  topHalfPin?: number | string;
  /** One across to so many along: 8, or `1:8`. */
  slope: number | string;
  /** Width of the saw's cut; 1/32 in unless told otherwise. */
  kerf?: number | string;
  /** Thickness by which the board is lowered once its tails are cut: a sliding lid's. */
  lowered?: number | string;
}

const fields = z.strictObject({
  boardWidth: size({ least: 0.5, most: 60, why: 'width of the boards at the joint' }),
  stockThickness: size({ least: 0.125, most: 3, why: 'thickness of the stock' }),
  proud: size({ least: 0, most: 0.5, why: 'how far the joint stands past the face' }).default(0),
  tails: z
    .number()
    .int('possible: a whole number of tails')
    .min(1, 'possible: one tail or more')
    .max(200, 'possible: at most 200')
    .optional(),
  tailToPin: amount({ least: 0.5, most: 12, why: 'how many narrow pins wide a tail is' }).optional(),
  pinWidth: size({ least: 1 / 64, most: 6, why: 'narrow side of a pin' }),
  halfPin: size({ least: 1 / 64, most: 6, why: 'half pin at the edge' }),
  topHalfPin: size({ least: 1 / 64, most: 6, why: 'half pin at the upper edge' }).optional(),
  kerf: size({ least: 0.005, most: 0.25, why: "width of the saw's cut" }).default(1 / 32),
  lowered: size({ least: 0, most: 3, why: 'by how much the board is lowered afterwards' }).default(0),
});

/** Least width that a chisel still clears. Common practice, no source. */
const chisel = 1 / 8;

/**
 * Lays out dovetails on the end of the tail board.
 *
 *   S = (W - h1 - h2 + p) / t          divider setting
 *   tail = S - p                        on the end; narrower by 2 gauge / n at the baseline
 *
 * Stepping the divider t times up from the lower half pin lands one pin past the upper one; stepping down from there marks
 * the other side of each pin.
 *
 * @param input  see {@link DovetailInput}
 * @returns tails and pins at the end and at the baseline, settings, the divider's walk, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source; slope: Fairham, Woodwork Joints
 * @example layOutDovetails({ boardWidth: '5 in', stockThickness: '5/8 in', tails: 3, pinWidth: '1/4 in', halfPin: '3/8 in', slope: '1:8' })
 */
export function layOutDovetails(input: DovetailInput): DovetailLayout {
  const { slope: typedSlope, ...rest } = input;
  const read = readParameters(fields, rest);
  const slope = readSlope(typedSlope);
  const { boardWidth, stockThickness, proud, pinWidth, halfPin, topHalfPin = halfPin } = read;
  const gaugeSetting = stockThickness + proud;
  const between = boardWidth - halfPin - topHalfPin;
  const spread = (2 * gaugeSetting) / slope;
  // A tail that is no wider at its baseline than the slope takes away would vanish there.
  const most = Math.floor((between + pinWidth) / (pinWidth + spread) - 1e-9);
  if (most < 1)
    throw new ShopError(
      `halfPin: ${tape(halfPin)}${topHalfPin === halfPin ? '' : ` and ${tape(topHalfPin)}`} given; no tail fits between them on a board ${tape(boardWidth)} wide; possible: smaller half pins, a wider board, or a slope nearer 1:8`,
    );
  const tails = tailCount(read, between, most);
  if (tails > most)
    throw new ShopError(
      `tails: ${tails} given; possible: 1 to ${most} on a board ${tape(boardWidth)} wide with pins of ${tape(pinWidth)} (more would vanish at the baseline)`,
    );

  const dividerSetting = evaluate(dividerFormula, {
    W: boardWidth,
    h1: halfPin,
    h2: topHalfPin,
    p: pinWidth,
    t: tails,
  });
  const slant = gaugeSetting / slope;
  const tail = (index: number): JointPiece => {
    const from = halfPin + index * dividerSetting;
    const to = from + dividerSetting - pinWidth;
    return { from, to, baselineFrom: from + slant, baselineTo: to - slant };
  };
  const tailPieces = Array.from({ length: tails }, (_, index) => tail(index));
  const pins = Array.from({ length: tails + 1 }, (_, index) => {
    const below = tailPieces[index - 1];
    const above = tailPieces[index];
    return {
      half: !below || !above,
      from: below?.to ?? 0,
      to: above?.from ?? boardWidth,
      baselineFrom: below?.baselineTo ?? 0,
      baselineTo: above?.baselineFrom ?? boardWidth,
    };
  });
  const steps = Array.from({ length: tails + 1 }, (_, index) => index * dividerSetting);
  const layout = {
    boardWidth,
    stockThickness,
    proud,
    tails: tailPieces,
    pins,
    dividerSetting,
    gaugeSetting,
    sawAngle: evaluate(slopeFormula, { n: slope }),
    slope,
    walk: { up: steps.map((step) => halfPin + step), down: steps.map((step) => boardWidth - topHalfPin - step) },
  };
  return { ...layout, findings: dovetailFindings(layout, read) };
}

function readSlope(given: number | string): number {
  const slope = typeof given === 'number' ? given : Number(/^\s*1\s*:\s*(\d+(?:\.\d+)?)\s*$/.exec(given)?.[1] ?? given);
  if (slope >= 3 && slope <= 12) return slope;
  throw new ShopError(
    `slope: ${JSON.stringify(given)} given; possible: 1:3 to 1:12 (1:8 is usual in hard wood, 1:6 in soft)`,
  );
}

function tailCount(read: z.infer<typeof fields>, between: number, most: number): number {
  const { tails, tailToPin, pinWidth } = read;
  if (tails !== undefined && tailToPin !== undefined)
    throw new ShopError(`tails: ${tails} given, and tailToPin ${tailToPin}; possible: one of the two`);
  if (tails !== undefined) return tails;
  if (tailToPin === undefined)
    throw new ShopError('tails: nothing given; possible: a count, or tailToPin (2 to 4 looks hand-made)');
  return Math.min(most, Math.max(1, Math.round((between + pinWidth) / (pinWidth * (tailToPin + 1)))));
}

function dovetailFindings(layout: Omit<DovetailLayout, 'findings'>, read: z.infer<typeof fields>): Finding[] {
  const { pinWidth, halfPin, topHalfPin = halfPin, kerf, lowered } = read;
  const [tail] = layout.tails as [JointPiece];
  const tailWidth = tail.to - tail.from;
  const baseline = tail.baselineTo - tail.baselineFrom;
  const ratio = tailWidth / pinWidth;
  const least = kerf + chisel;
  const findings: Finding[] = [
    {
      rule: 'pin wide enough to clear',
      verdict: judge(pinWidth >= least, pinWidth > kerf ? 'watch' : 'stop'),
      absolute: 'impossible',
      figures: `pin ${tape(pinWidth)}, saw ${tape(kerf)} and a chisel of ${tape(chisel)}`,
      reason: 'the socket between two tails is sawn on both sides and cleared with a chisel',
      change: `pinWidth at least ${tape(least)}, or a thinner saw`,
    },
    {
      rule: 'tail left at the baseline',
      verdict: judge(baseline >= chisel, 'stop'),
      figures: `${tape(tailWidth)} wide at its end, ${tape(baseline)} at the baseline`,
      reason: 'a tail thinner than a chisel at its root breaks off',
      change: 'fewer tails, narrower pins, or a gentler slope',
    },
    {
      rule: 'tails two to four pins wide',
      verdict: judge(ratio >= 2 && ratio <= 4, 'watch'),
      figures: `${ratio.toFixed(1)} pins wide`,
      reason: 'tails about as wide as pins look cut by a machine; very wide ones leave few pins to hold',
      change: 'another count of tails, or another pin',
    },
    {
      rule: 'half pins as strong as pins',
      verdict: judge(Math.min(halfPin, topHalfPin) >= pinWidth, 'watch'),
      figures: `half pins ${tape(halfPin)} and ${tape(topHalfPin)}, pins ${tape(pinWidth)}`,
      reason: 'the half pin at the edge has wood on one side only and is knocked first',
      change: `halfPin at least ${tape(pinWidth)}`,
    },
    {
      rule: 'slope',
      verdict: judge(layout.slope >= 6 && layout.slope <= 8, 'watch'),
      figures: `1:${layout.slope}, ${layout.sawAngle.toFixed(2)} degrees`,
      reason:
        'steeper than 1:6 the corners of the tails are short grain and crumble; flatter than 1:8 they hardly hold',
      change: '1:8 in hard wood, 1:6 in soft, 1:7 in either',
    },
  ];
  if (lowered > 0)
    findings.push({
      rule: 'upper half pin covers the lid',
      verdict: judge(topHalfPin >= lowered, 'stop'),
      figures: `half pin ${tape(topHalfPin)}, lowered by ${tape(lowered)}`,
      reason:
        'the front is lowered by the lid after its tails are cut: a smaller half pin would leave the top tail cut into',
      change: `topHalfPin at least ${tape(lowered)}`,
    });
  return findings;
}
