import * as z from 'zod';
import { evaluate, type Formula, type FormulaSymbol } from '../measure/formula.js';
import { readParameters, size } from '../measure/parameters.js';
import { ShopError } from '../measure/shop-error.js';
import { rounding, tape } from '../measure/verdict.js';
import { fingerFindings, hair, widestCutter } from './finger-findings.js';
import type { Finger, FingerLayout } from './finger-layout.js';
import { groovePasses } from './groove-passes.js';

const inches = (tex: string, meaning: string): FormulaSymbol => ({ tex, meaning, unit: 'in', min: 0 });

/** Width of one finger: all fingers and sockets of a corner are alike. */
export const fingerFormula: Formula<'W' | 'N'> = {
  name: 'Width of a finger',
  result: inches('f', 'width of a finger'),
  expression: 'W / N',
  symbols: {
    W: inches('W', 'width of the boards'),
    N: { meaning: 'fingers of both boards together', unit: '', min: 2 },
  },
  source: 'common practice, no source',
};

const fields = z.strictObject({
  boardWidth: size({ least: 0.5, most: 60, why: 'width of the boards at the joint' }),
  stockThickness: size({ least: 0.125, most: 3, why: 'thickness of the stock' }),
  proud: size({ least: 0, most: 0.5, why: 'how far the joint stands past the face' }).default(0),
  fingers: z
    .number({ error: 'possible: a whole number, both boards together' })
    .int('possible: a whole number, both boards together')
    .min(2, 'possible: two or more, both boards together')
    .max(400, 'possible: at most 400')
    .optional(),
  fingerWidth: size({ least: 1 / 32, most: 6, why: 'width of a finger, about' }).optional(),
  cutter: size({ least: 1 / 64, most: widestCutter, why: 'width of the blade or the cutter' }).default(1 / 8),
  play: size({ least: 0, most: 1 / 32, why: 'room for glue in each socket, in all' }).default(0.004),
});

/** What decides a finger joint. Lengths as text or inches. */
export interface FingerInput {
  boardWidth: number | string;
  stockThickness: number | string;
  proud?: number | string;
  /** Fingers of both boards together; or give `fingerWidth`, and the count that comes nearest is taken. */
  fingers?: number;
  fingerWidth?: number | string;
  /** Width of the blade or the cutter; 1/8 in unless told otherwise. */
  cutter?: number | string;
  /** Room for glue in each socket, in all; 0.004 in unless told otherwise (common practice, no source). */
  play?: number | string;
}

type FingerRead = z.infer<typeof fields>;

/**
 * Lays out a joint of equal fingers.
 *
 *   f = W / N            an odd N gives one board both edges, an even N makes all boards alike
 *
 * At each line between two fingers a quarter of the play comes off either board, so that both are cut by one setting.
 *
 * @param joint  see {@link FingerInput}
 * @returns fingers and sockets on both boards, set-up, findings; in
 * @throws ShopError  one line: the field, the value given, the nearest that is possible, why
 * @see common practice, no source
 * @example layOutFingers({ boardWidth: '5 in', stockThickness: '1/2 in', fingerWidth: '1/2 in' }).count // 10
 */
export function layOutFingers(joint: FingerInput): FingerLayout {
  const read = readParameters(fields, { ...joint });
  const { boardWidth, stockThickness, proud, cutter, play } = read;
  const count = fingerCount(read);
  const fingerWidth = evaluate(fingerFormula, { W: boardWidth, N: count });
  const socket = fingerWidth + play / 2;
  if (cutter > socket + rounding)
    throw new ShopError(
      count > 2
        ? `fingers: ${count} given, ${tape(fingerWidth)} wide each; possible: up to ${Math.max(2, Math.floor(boardWidth / (cutter - play / 2)))} with a cutter of ${tape(cutter)} on boards ${tape(boardWidth)} wide`
        : `cutter: ${tape(cutter)} given; possible: up to ${tape(fingerWidth)} on boards ${tape(boardWidth)} wide`,
    );
  const first = fingersOf(read, count, 'finger');
  const second = fingersOf(read, count, 'socket');
  const gaugeSetting = stockThickness + proud;
  const { passes, offsets } = groovePasses({
    grooveWidth: socket - cutter < hair ? cutter : socket,
    grooveDepth: gaugeSetting,
    cutter,
  });
  const fence = (board: Finger[]) => board.filter(({ kind }) => kind === 'socket').map(({ from }) => from);
  const layout = {
    boardWidth,
    stockThickness,
    proud,
    count,
    fingerWidth,
    play,
    first,
    second,
    note:
      count % 2 === 1
        ? 'an odd count: the first board has a finger at both edges, the second a socket; the corner looks the same from above and below'
        : 'an even count: each board has a finger at one edge and a socket at the other; all boards are cut alike, and front and back stand upside down beside the sides',
    gaugeSetting,
    setUp: {
      cutterHeight: gaugeSetting,
      keyDistance: fingerWidth - play / 2,
      firstBoardFence: fence(first),
      secondBoardFence: fence(second),
      passes,
      offsets,
    },
  };
  return { ...layout, findings: fingerFindings(layout, cutter) };
}

function fingerCount({ fingers, fingerWidth, boardWidth }: FingerRead): number {
  if (fingers !== undefined && fingerWidth !== undefined)
    throw new ShopError(`fingers: ${fingers} given, and fingerWidth ${tape(fingerWidth)}; possible: one of the two`);
  if (fingers !== undefined) return fingers;
  if (fingerWidth === undefined)
    throw new ShopError('fingers: nothing given; possible: a count, or fingerWidth (about the stock is usual)');
  return Math.max(2, Math.round(boardWidth / fingerWidth));
}

function fingersOf({ boardWidth, play }: FingerRead, count: number, lowest: Finger['kind']): Finger[] {
  return Array.from({ length: count }, (_, index) => {
    const kind = (index % 2 === 0) === (lowest === 'finger') ? 'finger' : 'socket';
    // Between two pieces a quarter of the play goes to each board's side of the line; an outer edge has no line.
    const share = (kind === 'socket' ? -1 : 1) * (play / 4);
    const line = (place: number) => (boardWidth * place) / count;
    return {
      kind,
      from: index === 0 ? 0 : line(index) + share,
      to: index === count - 1 ? boardWidth : line(index + 1) - share,
    };
  });
}
