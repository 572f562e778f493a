import type { PiecePart } from '../box/piece.js';
import type { Finding } from '../measure/finding.js';
import { tape } from '../measure/verdict.js';
import { boardFeet } from './board-feet.js';
import type { Board } from './boards.js';
import { type MillingAllowances, type RoughPart, roughParts } from './rough-parts.js';

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
  rough: RoughPart[];
  /** What the yard charges for, bd ft. */
  bought: number;
  steps: MillingStep[];
  /** Finished wood over bought wood, 0 to 1. */
  yield: number;
  findings: Finding[];
}

/**
 * What milling takes, step by step, and whether the boards can give the parts at all.
 *
 * Which part comes out of which board is not decided here: areas are compared, and each part must fit some board.
 *
 * @param milling.parts  finished parts; plywood is left out
 * @param milling.boards  boards to be used
 * @param milling.allowances  see {@link MillingAllowances}
 * @returns rough parts, steps, findings; bd ft of 144 cubic inches
 * @throws ShopError  an allowance that is not possible
 * @see order of milling: common practice, no source
 */
export function millingLoss(milling: {
  parts: readonly PiecePart[];
  boards: Board[];
  allowances?: MillingAllowances;
}): MillingLoss {
  const { boards } = milling;
  const parts = milling.parts.filter(({ material }) => material === 'wood');
  const rough = roughParts(milling);
  const sum = <T>(items: T[], value: (item: T, index: number) => number) =>
    items.reduce((total, item, index) => total + value(item, index), 0);
  const volume = (thickness: number, width: number, length: number, count = 1) =>
    (count * thickness * width * length) / 144;

  const stages: [string, number][] = [
    ['boards as bought', sum(boards, ({ thickness, width, length }) => volume(thickness, width, length))],
    ['cut out rough', sum(rough, ({ thickness, width, length, count }) => volume(thickness, width, length, count))],
    [
      'flattened and thicknessed',
      sum(rough, ({ width, length, count }, index) =>
        volume((parts[index] as PiecePart).thickness, width, length, count),
      ),
    ],
    [
      'ripped to final width',
      sum(rough, ({ length, count }, index) => {
        const part = parts[index] as PiecePart;
        return volume(part.thickness, part.widthBefore ?? part.width, length, count);
      }),
    ],
    [
      'crosscut to final length',
      sum(parts, ({ thickness, width, length, count }) => volume(thickness, width, length, count)),
    ],
  ];
  const start = (stages[0] as [string, number])[1];
  const steps = stages.map(([step, left], index) => ({
    step,
    left,
    lost: index === 0 ? 0 : (stages[index - 1] as [string, number])[1] - left,
    yield: left / start,
  }));
  return {
    rough,
    bought: sum(boards, boardFeet),
    steps,
    yield: (steps.at(-1) as MillingStep).yield,
    findings: boardFindings(rough, boards),
  };
}

function boardFindings(rough: RoughPart[], boards: Board[]): Finding[] {
  const size = ({ length, width, thickness }: { length: number; width: number; thickness: number }) =>
    `${tape(length)} x ${tape(width)} x ${tape(thickness)}`;
  const fits = (part: RoughPart, board: Board) =>
    part.length <= board.length && part.width <= board.width && part.thickness <= board.thickness;
  const homeless = rough.find((part) => !boards.some((board) => fits(part, board)));
  const area = (pieces: { length: number; width: number; count?: number }[]) =>
    pieces.reduce((total, { length, width, count = 1 }) => total + length * width * count, 0);
  const cover = area(boards) / area(rough);
  const shortest = rough.reduce((a, b) => (b.length < a.length ? b : a));
  return [
    {
      rule: 'every part fits a board',
      verdict: homeless ? 'stop' : 'ok',
      figures: homeless
        ? `${homeless.name}: ${size(homeless)} rough fits no board`
        : 'each part is shorter, narrower and thinner than some board',
      reason: 'a part cannot be cut from a board that is smaller',
      change: 'a longer, wider or thicker board, or glue the part up from two',
    },
    {
      rule: 'enough board for the parts',
      verdict: cover < 1 ? 'stop' : cover < 1.3 ? 'watch' : 'ok',
      figures: `boards ${area(boards).toFixed(0)} square inches, rough parts ${area(rough).toFixed(0)}: ${cover.toFixed(2)} times`,
      reason: 'kerfs, knots and matching the figure take about a third on top of the rough parts',
      change: 'another board, or a wider one',
    },
    {
      rule: 'pieces long enough to plane',
      verdict: shortest.length >= 12 ? 'ok' : 'watch',
      figures: `shortest rough piece: ${shortest.name}, ${tape(shortest.length)}`,
      reason:
        "a piece shorter than the machine's stated least length is never fed alone: it can tip between the rollers",
      change: 'plane pieces as one longer blank and cut them apart afterwards; the least length stands in the manual',
    },
  ];
}
