import type {
  Cut,
  CutBoard,
  CutBoardPlan,
  CutPart,
  CutPlan,
  FirstCut,
  PlacedPart,
} from '../../../kernel-helpers/src/stock/cut-plan/plan.js';

interface Piece {
  x1: number;
  x2: number;
  y1: number;
  y2: number;
}

/** Nothing at the saw is finer than this, in. */
const hair = 1e-6;

/**
 * Checks a plan as a second pair of eyes would, by making its cuts one after the other: knows nothing of how plans are found.
 *
 * Holds when every part is there as often as asked and no other; lies on its board, on no defect, grain along the length, on a
 * board thick enough; every cut runs from edge to edge of a piece that is there, and its kerf touches no part; the pieces left
 * hold one part each, with its size; parts of a sequence follow one another in order, one kerf apart; the first cuts go the way
 * asked; the cost is that of the boards used, each used once.
 *
 * @param plan  what was planned
 * @param job  what was asked, lengths in inches
 * @param job.rounding  how much larger than asked a part may come out, in; 1/64 unless told otherwise
 * @returns what is wrong, a line each; empty where the plan is right
 */
export function checkPlan(
  plan: CutPlan,
  job: { parts: CutPart[]; boards: CutBoard[]; kerf: number; firstCut: FirstCut; rounding?: number },
): string[] {
  const faults = plan.boards.flatMap((each) =>
    checkBoard(each, job).map((fault) => `board ${each.board.mark}: ${fault}`),
  );
  const rounding = job.rounding ?? 1 / 64;
  for (const part of job.parts) {
    const placed = plan.boards.flatMap(({ board, parts }) =>
      parts.filter(({ name }) => name === part.name).map((place) => ({ board, place })),
    );
    if (placed.length !== part.count) faults.push(`${part.name}: ${placed.length} planned, ${part.count} asked`);
    for (const { board, place } of placed) {
      const long = place.length - part.length;
      const wide = place.width - part.width;
      if (Math.min(long, wide) < -hair || Math.max(long, wide) > rounding + hair)
        faults.push(`${part.name}: ${place.length} by ${place.width} planned, ${part.length} by ${part.width} asked`);
      if (board.thickness < part.thickness - hair) faults.push(`${part.name}: board ${board.mark} is too thin`);
    }
  }
  const names = new Set(job.parts.map(({ name }) => name));
  for (const { parts } of plan.boards)
    for (const { name } of parts) if (!names.has(name)) faults.push(`${name}: nobody asked for it`);
  const marks = plan.boards.map(({ board }) => board.mark);
  if (new Set(marks).size !== marks.length) faults.push('a board is used twice');
  for (const { board } of plan.boards) {
    const given = job.boards.find(({ mark }) => mark === board.mark);
    if (!given || given.length !== board.length || given.width !== board.width || given.cost !== board.cost)
      faults.push(`board ${board.mark} was not given like that`);
  }
  const cost = plan.boards.reduce((sum, { board }) => sum + board.cost, 0);
  if (cost !== plan.cost) faults.push(`the boards cost ${cost}, the plan says ${plan.cost}`);
  if (plan.bound > plan.cost) faults.push('the bound lies above the plan');
  if (plan.proven !== (plan.bound === plan.cost)) faults.push('proven does not agree with the bound');
  return [...faults, ...checkSequences(plan, job)];
}

function checkBoard(
  { board, parts, cuts }: CutBoardPlan,
  job: { boards: CutBoard[]; kerf: number; firstCut: FirstCut; rounding?: number },
): string[] {
  const faults: string[] = [];
  const defects = job.boards.find(({ mark }) => mark === board.mark)?.defects ?? [];
  for (const part of parts) {
    if (
      part.fromEnd < -hair ||
      part.fromEdge < -hair ||
      part.fromEnd + part.length > board.length + hair ||
      part.fromEdge + part.width > board.width + hair
    )
      faults.push(`${part.name} lies over the board's end or edge`);
    for (const defect of defects)
      if (meet(boxOf(part), boxOf(defect))) faults.push(`${part.name} lies on a ${defect.kind}`);
  }
  parts.forEach((one, index) => {
    for (const other of parts.slice(index + 1))
      if (meet(boxOf(one), boxOf(other))) faults.push(`${one.name} and ${other.name} overlap`);
  });
  const first = cuts[0];
  const wrongWay =
    job.firstCut === 'rip'
      ? first?.kind === 'crosscut' &&
        cuts.some(({ kind, to, from }) => kind === 'rip' && to - from > board.length - hair)
      : false;
  if (wrongWay) faults.push('the first cut goes the wrong way');
  return [...faults, ...saw(board, parts, cuts, job)];
}

/** Makes the cuts in order; what falls off must hold the parts. */
function saw(
  board: CutBoard,
  parts: PlacedPart[],
  cuts: Cut[],
  { kerf, rounding = 1 / 64 }: { kerf: number; rounding?: number },
): string[] {
  const faults: string[] = [];
  let pieces: Piece[] = [{ x1: 0, x2: board.length, y1: 0, y2: board.width }];
  for (const [index, cut] of cuts.entries()) {
    const along = cut.kind === 'crosscut';
    const [low, high, near, far] = (along ? ['y1', 'y2', 'x1', 'x2'] : ['x1', 'x2', 'y1', 'y2']) as (keyof Piece)[] as [
      keyof Piece,
      keyof Piece,
      keyof Piece,
      keyof Piece,
    ];
    // A plan counts kerf rounded up and boards rounded down, so that an edge may lie off by that, to the plan's safe side.
    const piece = pieces.find(
      (each) =>
        each[low] > cut.from - rounding - hair &&
        each[low] < cut.from + hair &&
        each[high] > cut.to - hair &&
        each[high] < cut.to + rounding + hair &&
        each[near] < cut.at + kerf - hair &&
        each[far] > cut.at + hair,
    );
    if (!piece) {
      faults.push(`cut ${index + 1} does not run from edge to edge of a piece`);
      continue;
    }
    const from = Math.max(piece[near], cut.at);
    const to = Math.min(piece[far], cut.at + kerf);
    const dust = { ...piece, [near]: from, [far]: to };
    for (const part of parts) if (meet(boxOf(part), dust)) faults.push(`cut ${index + 1} runs through ${part.name}`);
    pieces = pieces.filter((each) => each !== piece);
    for (const rest of [
      { ...piece, [far]: from },
      { ...piece, [near]: to },
    ])
      if (rest.x2 - rest.x1 > hair && rest.y2 - rest.y1 > hair) pieces.push(rest);
  }
  for (const part of parts) {
    const box = boxOf(part);
    const piece = pieces.find((each) => meet(box, each));
    const size =
      piece && Math.max(...(['x1', 'x2', 'y1', 'y2'] as const).map((side) => Math.abs(piece[side] - box[side])));
    if (size === undefined || size > rounding + hair) faults.push(`${part.name} is not cut to its size`);
  }
  return faults;
}

function checkSequences(
  plan: CutPlan,
  { parts, kerf, rounding = 1 / 64 }: { parts: CutPart[]; kerf: number; rounding?: number },
) {
  const faults: string[] = [];
  for (const sequence of new Set(parts.flatMap((part) => part.sequence ?? []))) {
    const wanted = parts
      .filter((part) => part.sequence === sequence)
      .flatMap(({ name, count }) => Array.from({ length: count }, () => name));
    const board = plan.boards.find((each) => each.parts.some(({ name }) => name === wanted[0]));
    const row = (board?.parts ?? []).filter(({ name }) => wanted.includes(name)).sort((a, b) => a.fromEnd - b.fromEnd);
    if (row.map(({ name }) => name).join('\n') !== wanted.join('\n')) {
      faults.push(`sequence ${sequence} is not on one strip in its order`);
      continue;
    }
    row.slice(1).forEach((part, index) => {
      const before = row[index] as PlacedPart;
      const gap = part.fromEnd - before.fromEnd - before.length;
      const level = Math.min(
        Math.abs(part.fromEdge - before.fromEdge),
        Math.abs(part.fromEdge + part.width - before.fromEdge - before.width),
      );
      if (gap < kerf - hair || gap > kerf + rounding + hair || level > hair)
        faults.push(`sequence ${sequence}: ${before.name} and ${part.name} do not follow one another`);
    });
  }
  return faults;
}

const boxOf = (of: { fromEnd: number; fromEdge: number; length: number; width: number }): Piece => ({
  x1: of.fromEnd,
  x2: of.fromEnd + of.length,
  y1: of.fromEdge,
  y2: of.fromEdge + of.width,
});

const meet = (a: Piece, b: Piece) =>
  Math.min(a.x2, b.x2) - Math.max(a.x1, b.x1) > hair && Math.min(a.y2, b.y2) - Math.max(a.y1, b.y1) > hair;
