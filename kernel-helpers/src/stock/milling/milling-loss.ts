import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { oneOf, readParameters, size } from '../../measure/parameters.js';
import type { PiecePart } from '../../piece/piece.js';
import { boardFeet } from '../boards/board-feet.js';
import type { Board } from '../boards/boards.js';
import { coveredArea } from '../boards/defects.js';
import type { CutPlan } from '../cut-plan/plan.js';
import { type Blank, blanksOf, type PartsToCut } from './blanks.js';
import { type Flattened, flattened } from './flattening.js';
import { millingFindings } from './milling-findings.js';
import { type PlanerPass, planerPasses, readPlaner, type TypedPlaner } from './planer.js';
import { type MillingAllowances, type RoughPart, readAllowances, roughParts } from './rough-parts.js';
import { type SnipeRemedy, snipeRemedies } from './snipe.js';

/** What is left after a step, and what the step took. True volume in board feet (an inch counts as what it is). */
export interface MillingStep {
  step: string;
  left: number;
  lost: number;
  /** Of what was bought, 0 to 1. */
  yield: number;
}

/** A blank and the board it comes out of: what flattening leaves of it, and how it is planed. In. */
export interface MilledBlank extends Flattened {
  blank: Blank;
  /** The board's mark. */
  board: string;
  passes: PlanerPass[];
}

/** From bought boards to finished parts. */
export interface MillingLoss {
  rough: RoughPart[];
  /** What the yard charges for, bd ft. */
  bought: number;
  steps: MillingStep[];
  /** Finished wood over bought wood, 0 to 1. */
  yield: number;
  /** Parts as the cut plan takes them, and the blanks they are planed in. */
  toCut: PartsToCut;
  /** Each blank on its board; without a plan on the board that leaves it thickest. */
  milled: MilledBlank[];
  snipe: SnipeRemedy[];
  findings: Finding[];
}

/** What milling is worked out from. */
export interface Milling {
  /** Finished parts of a box or of any other piece; plywood is left out. */
  parts: readonly PiecePart[];
  /** Boards to be used. */
  boards: readonly Board[];
  allowances?: MillingAllowances;
  planer?: TypedPlaner;
  /** Of the saw that cuts blanks apart; 1/8 in unless told otherwise. */
  kerf?: number | string;
  /** Parts in the order in which the figure runs on: `[['side', 'front', 'side', 'back']]`. */
  sequences?: readonly (readonly string[])[];
  /** How pieces too short for the planer are fed: in longer blanks unless told otherwise. */
  shortPieces?: string;
  /** Moisture the piece will live at, %. */
  service?: number;
  /** Which part comes out of which board, where that is decided. */
  plan?: Pick<CutPlan, 'boards'>;
}

const machineFields = z.strictObject({
  kerf: size({ least: 0, most: 0.5, why: "width of the saw's cut" }).default(1 / 8),
  shortPieces: oneOf(['in blanks', 'alone'], 'how pieces too short for the planer are fed').default('in blanks'),
});

/**
 * What milling takes, step by step, how thick each part can still be, and whether the boards can give the parts at all.
 *
 * @param milling  see {@link Milling}
 * @returns rough parts, blanks, steps, remedies for snipe, findings; in, and bd ft of 144 cubic inches
 * @throws ShopError  an allowance, a machine's figure, a way to feed or a sequence that is not possible
 * @see order of milling: common practice, no source; thickness left: {@link flattened}
 */
export function millingLoss(milling: Milling): MillingLoss {
  const { boards } = milling;
  const allowances = readAllowances(milling.allowances);
  const planer = readPlaner(milling.planer);
  const rough = roughParts(milling);
  const { sequences = [], ...typed } = milling;
  const { kerf, shortPieces } = readParameters(machineFields, { kerf: typed.kerf, shortPieces: typed.shortPieces });
  const inBlanks = blanksOf({ rough, leastLength: planer.leastLength, kerf, sequences });
  const toCut = shortPieces === 'alone' ? blanksOf({ rough, leastLength: 0, kerf, sequences }) : inBlanks;

  const reachOn = (blank: Blank, board: Board): MilledBlank => {
    const flat = flattened({
      board,
      piece: blank,
      allowance: allowances.thickness,
      cleanFaces: allowances.cleanFaces,
    });
    const passes = planerPasses({ from: board.thickness - allowances.cleanFaces / 2, to: blank.thickness, planer });
    return { blank, board: board.mark, ...flat, passes };
  };
  const milled = toCut.blanks.flatMap((blank) => {
    const fitting = boards.filter((board) => blank.length <= board.length && blank.width <= board.width);
    const planned =
      milling.plan && fitting.filter((board) => carries(milling.plan as Pick<CutPlan, 'boards'>, board, blank));
    const choices = (planned?.length ? planned : fitting).map((board) => reachOn(blank, board));
    const [first, ...others] = choices;
    return first ? [others.reduce((best, other) => (other.reach > best.reach ? other : best), first)] : [];
  });
  const steps = millingSteps(boards, rough, toCut, milling.parts);
  return {
    rough,
    bought: boards.reduce((sum, board) => sum + boardFeet(board), 0),
    steps,
    yield: (steps.at(-1) as MillingStep).yield,
    toCut,
    milled,
    snipe: snipeRemedies({
      thicknesses: toCut.blanks.map(({ thickness }) => thickness),
      overLength: allowances.length,
      planer,
    }),
    findings: millingFindings({ ...milling, boards, rough, toCut, inBlanks, milled, planer, allowances }),
  };
}

function carries(plan: Pick<CutPlan, 'boards'>, board: Board, blank: Blank): boolean {
  const here = plan.boards.filter((each) => each.board.mark === board.mark).flatMap(({ parts }) => parts);
  return blank.parts.every((name) => here.some((part) => part.name === name));
}

function millingSteps(
  boards: readonly Board[],
  rough: readonly RoughPart[],
  { blanks, partOf }: PartsToCut,
  parts: readonly PiecePart[],
): MillingStep[] {
  const sum = <T>(items: readonly T[], value: (item: T) => number) =>
    items.reduce((total, item) => total + value(item), 0);
  // A blank is cut from the board that the thickest of its parts asks for.
  const soldFor = new Map(rough.map((part) => [part.name, part.thickness]));
  const bought = sum(boards, ({ thickness, width, length }) => (thickness * width * length) / 144);
  const stages: [string, number][] = [
    ['boards as bought', bought],
    ['knots and sapwood left out', bought - sum(boards, (board) => (board.thickness * lostArea(board)) / 144)],
    [
      'cut out rough',
      sum(
        blanks,
        ({ parts: [name = ''], width, length }) => ((soldFor.get(partOf[name] ?? '') ?? 0) * width * length) / 144,
      ),
    ],
    ['flattened and thicknessed', sum(blanks, ({ thickness, width, length }) => (thickness * width * length) / 144)],
    [
      'ripped to final width',
      sum(blanks, ({ parts: names, length, thickness }) => {
        const width = Math.max(
          ...names.map((name) => rough.find((part) => part.name === partOf[name])?.finished.width ?? 0),
        );
        return (thickness * width * length) / 144;
      }),
    ],
    [
      'crosscut to final length',
      sum(
        parts.filter(({ material }) => material === 'wood'),
        ({ thickness, width, length, count }) => (count * thickness * width * length) / 144,
      ),
    ],
  ];
  return stages.map(([step, left], index) => ({
    step,
    left,
    lost: index === 0 ? 0 : (stages[index - 1] as [string, number])[1] - left,
    yield: left / bought,
  }));
}

function lostArea({ length, width, defects = [], sapwoodLower = 0, sapwoodUpper = 0 }: Board): number {
  return coveredArea([
    ...defects,
    { fromEnd: 0, fromEdge: 0, length, width: sapwoodLower },
    { fromEnd: 0, fromEdge: width - sapwoodUpper, length, width: sapwoodUpper },
  ]);
}
