import fc from 'fast-check';
import type {
  Cut,
  CutBoard,
  CutBoardPlan,
  CutPlan,
  Offcut,
  PlacedPart,
} from '../../kernel-helpers/src/stock/cut-plan/plan.js';

export const kerf = 1 / 8;

/** A plan of these boards, with what a plan says besides. */
export function planOf(...boards: CutBoardPlan[]): CutPlan {
  const cost = boards.reduce((sum, { board }) => sum + board.cost, 0);
  return { boards, cost, yield: 0.5, bound: cost, proven: true, bounds: 'made by hand' };
}

/** One board, cut by hand across at 12 and then along at 4: two parts side by side on 12 in, the rest kept. */
export function handMade(board: CutBoard): CutBoardPlan {
  return {
    board,
    parts: [
      { name: 'side', fromEnd: 0, fromEdge: 0, length: 12, width: 4 },
      { name: 'rail', fromEnd: 0, fromEdge: 4 + kerf, length: 12, width: 1.5 },
    ],
    cuts: [
      { kind: 'crosscut', at: 12, from: 0, to: board.width },
      { kind: 'rip', at: 4, from: 0, to: 12 },
      { kind: 'rip', at: 5.5 + kerf, from: 0, to: 12 },
    ],
    offcuts: [{ fromEnd: 12 + kerf, fromEdge: 0, length: board.length - 12 - kerf, width: board.width }],
  };
}

interface Area {
  from: number;
  low: number;
  length: number;
  width: number;
}

/** Boards sawn at random from edge to edge, down to tiny pieces; each piece is a part, an offcut that is kept, or waste. */
export const sawnAtRandom: fc.Arbitrary<CutBoardPlan> = fc
  .record({
    length: fc.integer({ min: 12, max: 192 }),
    width: fc.integer({ min: 2, max: 14 }),
    choices: fc.array(fc.integer({ min: 0, max: 999 }), { minLength: 90, maxLength: 90 }),
    names: fc.array(fc.constantFrom('side', 'lid', 'door panel, upper left', 'W', 'fingerleiste'), {
      minLength: 1,
      maxLength: 5,
    }),
  })
  .map(({ length, width, choices, names }) => {
    const board: CutBoard = { mark: 'A', thickness: 1, width, length, cost: 100, defects: [] };
    const cuts: Cut[] = [];
    const parts: PlacedPart[] = [];
    const offcuts: Offcut[] = [];
    let next = 0;
    const choose = (count: number) => (choices[next++ % choices.length] as number) % count;
    const saw = (area: Area, depth: number): void => {
      const place = { fromEnd: area.from, fromEdge: area.low, length: area.length, width: area.width };
      const side = choose(2) === 0 ? area.length : area.width;
      if (depth === 0 || choose(5) === 0 || side < 1) {
        const kind = choose(4);
        if (kind > 1) parts.push({ name: names[choose(names.length)] as string, ...place });
        else if (kind === 1) offcuts.push(place);
        return;
      }
      const across = side === area.length;
      const at = Math.round(side * (0.15 + choose(70) / 100) * 16) / 16;
      const begin = across ? area.from : area.low;
      const [from, to] = across ? [area.low, area.low + area.width] : [area.from, area.from + area.length];
      cuts.push({ kind: across ? 'crosscut' : 'rip', at: begin + at, from, to });
      const rest = side - at - kerf;
      saw(across ? { ...area, length: at } : { ...area, width: at }, depth - 1);
      if (rest <= 0.05) return;
      saw(
        across ? { ...area, from: begin + at + kerf, length: rest } : { ...area, low: begin + at + kerf, width: rest },
        depth - 1,
      );
    };
    saw({ from: 0, low: 0, length, width }, 5);
    return { board, parts, cuts, offcuts };
  });
