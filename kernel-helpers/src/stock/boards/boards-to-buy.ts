import { randomLcg } from 'd3-random';
import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { amount, oneOf, readParameters, size } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import { judge, tape } from '../../measure/verdict.js';
import { boardFeet } from './board-feet.js';
import { lumberGrade } from './lumber-data.js';

/** How many boards of a grade to order unseen. */
export interface BoardsToBuy {
  /** Fewest boards that are enough with the odds asked for. */
  boards: number;
  /** For each number of boards: how often it is enough, 0 to 1, and what it comes to on average. */
  byNumber: { boards: number; odds: number; boardFeet: number; cost: number }[];
  /** What the parts need of clear wood, square inches. */
  needed: number;
  findings: Finding[];
  seed: number;
}

const fields = z.object({
  grade: oneOf(['fas', 'selects', 'no-1-common', 'no-2a-common', 'no-3a-common'], 'grade of hardwood lumber'),
  thickness: size({ least: 0.25, most: 6, why: 'rough thickness' }).default(1),
  widest: size({ least: 3, most: 40, why: "widest board of the yard's run" }).default(10),
  longest: size({ least: 48, most: 240, why: "longest board of the yard's run" }).default(144),
  price: amount({ least: 0, most: 10000, why: 'price of a board foot' }),
  odds: amount({ least: 0.5, most: 0.99, why: 'how sure you want to be, 0.9 is nine times in ten' }).default(0.9),
  cuttingLoss: amount({ least: 0, most: 0.9, why: 'part of the clear wood that kerfs and fitting take' }).default(0.25),
  simulations: amount({ least: 100, most: 100_000, why: 'how many orders are drawn' }).default(4000),
  seed: amount({ least: 0, most: 2 ** 31, why: 'the same seed gives the same odds' }).default(1),
});

const mostBoards = 200;

/**
 * How many boards of a grade to buy when they cannot be seen: many orders are drawn at random and counted.
 *
 * Drawn evenly: width from the grade's least to the yard's widest, length in whole feet from the grade's least to the yard's
 * longest, clear wood from the grade's least share to halfway from there to a whole board. Of the clear wood kerfs and fitting
 * take `cuttingLoss`. A board that is too short or too narrow for every part gives nothing.
 *
 * @param order.parts  rough parts, see `roughParts`; in
 * @param order.grade  `fas`, `selects`, `no-1-common`, `no-2a-common`, `no-3a-common`
 * @param order.price  of a board foot, whole currency units
 * @param order.odds  0.9 unless told otherwise
 * @param order.seed  the same seed gives the same odds
 * @throws ShopError  one line: the field, the value given, what is possible; parts that 200 boards do not give
 * @see shares and least sizes of the grades: data/lumber.json; spread within a grade and loss: common practice, no source
 */
export function boardsToBuy(order: {
  parts: readonly { name: string; count: number; length: number; width: number }[];
  grade: string;
  price: number;
  thickness?: number | string;
  widest?: number | string;
  longest?: number | string;
  odds?: number;
  cuttingLoss?: number;
  simulations?: number;
  seed?: number;
}): BoardsToBuy {
  const { parts } = order;
  const read = readParameters(fields, { ...order });
  const grade = lumberGrade(read.grade);
  if (parts.length === 0) throw new ShopError('parts: none given; possible: one part or more');
  if (read.widest < grade.leastWidth)
    throw new ShopError(
      `widest: ${tape(read.widest)} given; possible: at least ${tape(grade.leastWidth)}, the least width of ${grade.name}`,
    );
  const needed = parts.reduce((sum, { count, length, width }) => sum + count * length * width, 0);
  const random = randomLcg(read.seed);
  const between = (from: number, to: number) => from + (to - from) * random();
  const leastClear = grade.clearTwelfths / 12;
  const useful = (length: number, width: number) => parts.some((part) => part.length <= length && part.width <= width);

  const enough = new Int32Array(mostBoards + 1);
  let allFeet = 0;
  let drawn = 0;
  for (let i = 0; i < read.simulations; i++) {
    let clear = 0;
    for (let boards = 1; boards <= mostBoards; boards++) {
      const width = between(grade.leastWidth, read.widest);
      const feet = Math.floor(
        between(grade.leastFeet, Math.max(grade.leastFeet, Math.floor(read.longest / 12)) + 1 - 1e-9),
      );
      const share = between(leastClear, (1 + leastClear) / 2);
      const length = 12 * feet;
      allFeet += boardFeet({ thickness: read.thickness, width, length });
      drawn++;
      if (useful(length, width)) clear += length * width * share * (1 - read.cuttingLoss);
      if (clear < needed) continue;
      enough[boards] = (enough[boards] as number) + 1;
      break;
    }
  }
  return {
    ...counted(enough, read, allFeet / drawn),
    needed,
    findings: [cuttingsLargeEnough(parts, grade)],
    seed: read.seed,
  };
}

function counted(
  enough: Int32Array,
  { simulations, odds, price }: { simulations: number; odds: number; price: number },
  feetEach: number,
): Pick<BoardsToBuy, 'boards' | 'byNumber'> {
  const byNumber: BoardsToBuy['byNumber'] = [];
  let sum = 0;
  for (let boards = 1; boards <= mostBoards; boards++) {
    sum += enough[boards] as number;
    const share = sum / simulations;
    if (share > 0)
      byNumber.push({ boards, odds: share, boardFeet: boards * feetEach, cost: boards * feetEach * price });
    if (share > 0.995) break;
  }
  const first = byNumber.find((each) => each.odds >= odds);
  if (!first)
    throw new ShopError(
      `parts: ${mostBoards} boards of this grade are not enough for them; possible: fewer or smaller parts, or a better grade`,
    );
  return { boards: first.boards, byNumber };
}

function cuttingsLargeEnough(
  parts: readonly { name: string; length: number; width: number }[],
  grade: ReturnType<typeof lumberGrade>,
): Finding {
  const within = (part: { length: number; width: number }) =>
    grade.leastCuttings.some(({ width, feet }) => part.width <= width && part.length <= 12 * feet);
  const large = parts.find((part) => !within(part));
  const least = grade.leastCuttings.map(({ width, feet }) => `${tape(width)} by ${feet} ft`).join(' or ');
  return {
    rule: 'grade promises cuttings as large as the parts',
    verdict: judge(!large, 'watch'),
    figures: large
      ? `${large.name} is ${tape(large.length)} by ${tape(large.width)} rough; ${grade.name} promises clear pieces of ${least}`
      : `every part fits a clear piece of ${least}`,
    reason: 'a board can have its share of clear wood in pieces too small for a wide or long part',
    change: 'ask for a better grade or for wide boards, go and look, or glue the part up',
  };
}
