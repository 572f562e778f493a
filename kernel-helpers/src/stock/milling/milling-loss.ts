import type { Finding } from '../../measure/finding.js';
import { boardFeet } from '../boards/board-feet.js';
import type { Board } from '../boards/boards.js';
import { coveredArea } from '../boards/defects.js';
import type { CutPlan } from '../cut-plan/plan.js';
import { type Blank, partsIn, rippedWidth } from './blanks.js';
import { flattened } from './flattening.js';
import type { MilledBlank } from './milled-blank.js';
import { millingFindings } from './milling-findings.js';
import type { Panel } from './panels.js';
import { planerPasses } from './planer.js';
import { resawn } from './resawing.js';
import type { RoughCut } from './rough-cut.js';
import { type SnipeRemedy, snipeRemedies } from './snipe.js';

/** What is left after a step, and what the step took. True volume in board feet (an inch counts as what it is). */
export interface MillingStep {
  step: string;
  left: number;
  lost: number;
  /** Of what was bought, 0 to 1. */
  yield: number;
}

/** From bought boards to finished parts. */
export interface MillingLoss {
  /** What the yard charges for, bd ft. */
  bought: number;
  steps: MillingStep[];
  /** Finished wood over bought wood, 0 to 1. */
  yield: number;
  /** Each blank on its board; without a plan on the board that leaves it thickest. */
  milled: MilledBlank[];
  snipe: SnipeRemedy[];
  findings: Finding[];
}

/** What a loss is worked out from. */
export interface MillingLossInput {
  /** See {@link roughCut}. */
  cut: RoughCut;
  /** Boards to be used. */
  boards: readonly Board[];
  /** Which part comes out of which board, where that is decided. */
  plan?: Pick<CutPlan, 'boards'>;
  /** Moisture the piece will live at, %. */
  service?: number;
  /** Meter reading of the stack, taken for a board that has none of its own, %. */
  stackMoisture?: number | undefined;
}

/**
 * What milling takes of boards, step by step, how thick each part can still be, and whether the boards can give the parts at
 * all.
 *
 * @param input  see {@link MillingLossInput}
 * @returns steps, blanks on their boards, remedies for snipe, findings; in, and bd ft of 144 cubic inches
 * @see order of milling: common practice, no source; thickness left: {@link flattened}
 */
export function millingLoss(input: MillingLossInput): MillingLoss {
  const { cut, boards, plan } = input;
  const { toCut, allowances, planer } = cut;
  const reachOn = (blank: Blank, board: Board): MilledBlank => {
    const { thickness: allowance, cleanFaces } = allowances;
    const flat = flattened({ board, piece: blank, allowance, cleanFaces });
    const sawn = resawn({ board, blank, reach: flat.reach, allowance, kerf: cut.kerf });
    const from = sawn?.thickness ?? board.thickness - cleanFaces / 2;
    const passes = planerPasses({ from, to: blank.thickness, planer });
    return { blank, board: board.mark, ...flat, ...(sawn ? { resawn: sawn } : {}), passes };
  };
  const milled = toCut.blanks.flatMap((blank) => {
    const fitting = boards.filter((board) => blank.length <= board.length && blank.width <= board.width);
    const planned = plan && fitting.filter((board) => carries(plan, board, blank));
    const choices = (planned?.length ? planned : fitting).map((board) => reachOn(blank, board));
    const [first, ...others] = choices;
    return first ? [others.reduce((best, other) => (other.reach > best.reach ? other : best), first)] : [];
  });
  const steps = millingSteps(boards, cut);
  return {
    bought: boards.reduce((sum, board) => sum + boardFeet(board), 0),
    steps,
    yield: (steps.at(-1) as MillingStep).yield,
    milled,
    snipe: snipeRemedies({
      thicknesses: toCut.blanks.map(({ thickness }) => thickness),
      overLength: allowances.length,
      planer,
    }),
    findings: millingFindings({ ...input, milled }),
  };
}

function carries(plan: Pick<CutPlan, 'boards'>, board: Board, blank: Blank): boolean {
  const here = plan.boards.filter((each) => each.board.mark === board.mark).flatMap(({ parts }) => parts);
  return blank.parts.every((name) => here.some((part) => part.name === name));
}

function millingSteps(
  boards: readonly Board[],
  { parts, panels, rough, toCut: { blanks, partOf } }: RoughCut,
): MillingStep[] {
  const sum = <T>(items: readonly T[], value: (item: T) => number) =>
    items.reduce((total, item) => total + value(item), 0);
  // A blank is cut from the board that the thickest of its parts asks for.
  const soldFor = new Map(rough.map((part) => [part.name, part.thickness]));
  const bought = sum(boards, ({ thickness, width, length }) => (thickness * width * length) / 144);
  const ripped = sum(
    blanks,
    (blank) => (blank.thickness * rippedWidth(partsIn(blank, { rough, toCut: { partOf } })) * blank.length) / 144,
  );
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
    ['ripped to final width', ripped],
    ...(panels.length > 0
      ? ([['panels flattened and ripped to width', ripped - sum(panels, trimmedOff)]] satisfies [string, number][])
      : []),
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

/** What comes off the panels of a part between the clamps and their width and thickness, bd ft. */
function trimmedOff({ count, glued, finished }: Panel): number {
  const { length, width, thickness } = glued;
  return (count * length * (width * thickness - finished.width * finished.thickness)) / 144;
}

function lostArea({ length, width, defects = [], sapwoodLower = 0, sapwoodUpper = 0 }: Board): number {
  return coveredArea([
    ...defects,
    { fromEnd: 0, fromEdge: 0, length, width: sapwoodLower },
    { fromEnd: 0, fromEdge: width - sapwoodUpper, length, width: sapwoodUpper },
  ]);
}
