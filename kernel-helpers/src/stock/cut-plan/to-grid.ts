import { ShopError } from '../../measure/shop-error.js';
import type { CutJob } from './cut-job.js';
import type { GridBoard, GridJob, GridPart } from './grid-job.js';
import type { CutPart } from './plan.js';

/** What stands behind one part of the grid: the real parts, one after the other along the grain. */
export interface Row {
  /** Their sizes on the grid, without kerf. */
  members: { part: CutPart; length: number; width: number }[];
}

/** A job on a grid, and the way back. */
export interface OnGrid {
  job: GridJob;
  /** One step of the grid, in. */
  step: number;
  /** Whether every length given is a whole number of steps. */
  exact: boolean;
  kerf: number;
  /** For each part of the grid, what its copies are. */
  rows: Row[][];
  /** Name of the step: `1/16 in`. */
  stepName: string;
}

const millimetre = 1 / 25.4;
const steps: { step: number; name: string }[] = [
  ...[4, 8, 16, 32, 64].map((each) => ({ step: 1 / each, name: `1/${each} in` })),
  { step: millimetre, name: '1 mm' },
  { step: millimetre / 2, name: '0.5 mm' },
  { step: millimetre / 10, name: '0.1 mm' },
];
const fallback = { step: 1 / 64, name: '1/64 in' };
const hair = 1e-7;

const isWhole = (value: number) => Math.abs(value - Math.round(value)) < hair;
const up = (value: number) => (isWhole(value) ? Math.round(value) : Math.ceil(value));
const down = (value: number) => (isWhole(value) ? Math.round(value) : Math.floor(value));

/**
 * Puts a job on a grid of whole numbers: the coarsest usual one on which every length given is exact, or else 1/64 in with parts,
 * kerf and defects rounded up and boards rounded down, so that a plan on the grid can always be cut.
 *
 * @throws ShopError  a sequence that is longer or wider than every board
 * @internal
 */
export function toGrid(job: CutJob): OnGrid {
  const lengths = [
    job.kerf,
    ...job.parts.flatMap(({ length, width }) => [length, width]),
    ...job.boards.flatMap(({ length, width, defects }) => [
      length,
      width,
      ...defects.flatMap((each) => [each.fromEnd, each.fromEdge, each.length, each.width]),
    ]),
  ];
  const fine = steps.find(({ step }) => lengths.every((length) => isWhole(length / step)));
  const { step, name } = fine ?? fallback;
  const kerf = up(job.kerf / step);
  const rows = rowsOf(job.parts, step);
  const sizes = rows.map(({ members }) => ({
    length: members.reduce((sum, { length }) => sum + length + kerf, 0),
    width: Math.max(...members.map(({ width }) => width)) + kerf,
    thickness: Math.max(...members.map(({ part }) => part.thickness)),
  }));
  // Rows that are alike are one part of the grid with a count.
  const alike = new Map<string, { part: GridPart; thickness: number; rows: Row[] }>();
  sizes.forEach(({ length, width, thickness }, index) => {
    const key = `${length} ${width} ${thickness}`;
    const known = alike.get(key) ?? { part: { length, width, count: 0 }, thickness, rows: [] };
    known.part.count++;
    known.rows.push(rows[index] as Row);
    alike.set(key, known);
  });
  const kinds = [...alike.values()];
  const boards = job.boards.map((board): GridBoard => {
    const length = down(board.length / step);
    const width = down(board.width / step);
    return {
      length: length + kerf,
      width: width + kerf,
      cost: board.cost,
      area: length * width,
      takes: kinds.map(({ thickness }) => board.thickness >= thickness - 1e-9),
      defects: board.defects.map(({ fromEnd, fromEdge, length: long, width: wide }) => ({
        x1: down(fromEnd / step) + kerf,
        x2: up((fromEnd + long) / step),
        y1: down(fromEdge / step) + kerf,
        y2: up((fromEdge + wide) / step),
      })),
    };
  });
  for (const { part, thickness, rows: of } of kinds) {
    const fits = boards.some(
      (board, index) =>
        (job.boards[index]?.thickness ?? 0) >= thickness - 1e-9 &&
        board.length >= part.length &&
        board.width >= part.width,
    );
    const sequence = of[0]?.members[0]?.part.sequence;
    if (!fits && sequence !== undefined)
      throw new ShopError(
        `sequence: "${sequence}" is ${((part.length - kerf) * step).toFixed(2)} in long with its cuts and ${((part.width - kerf) * step).toFixed(2)} in wide; ` +
          'possible: what one board of its thickness holds (the parts come one after the other off one strip)',
      );
  }
  return {
    job: { boards, parts: kinds.map(({ part }) => part), firstCut: job.firstCut },
    step,
    exact: fine !== undefined,
    kerf,
    rows: kinds.map(({ rows: of }) => of),
    stepName: name,
  };
}

function rowsOf(parts: CutPart[], step: number): Row[] {
  const member = (part: CutPart) => ({ part, length: up(part.length / step), width: up(part.width / step) });
  const rows: Row[] = [];
  const sequences = new Map<string, Row>();
  for (const part of parts) {
    const copies = Array.from({ length: part.count }, () => member(part));
    if (part.sequence === undefined) rows.push(...copies.map((copy) => ({ members: [copy] })));
    else {
      const row = sequences.get(part.sequence) ?? { members: [] };
      if (row.members.length === 0) {
        sequences.set(part.sequence, row);
        rows.push(row);
      }
      row.members.push(...copies);
    }
  }
  return rows;
}
