import { beam } from './beam.js';
import { boardGrid } from './board-grid.js';
import { BoardValues } from './board-values.js';
import type { GridBoard, GridCutting, GridJob } from './grid-job.js';
import { pack } from './pack.js';

/**
 * Cuts the same parts from the same boards, but draws the parts of one board together, so that the largest offcut is left: at the
 * board's end when sections come first, at its upper edge when strips do. Each board keeps its parts (another sharing out of the
 * parts may leave more); for these parts the offcut is the largest wherever the exhaustive search ends within the work allowed.
 *
 * @param profits  values of the parts that lead the search
 * @internal
 */
export function keepOffcut(job: GridJob, cuttings: GridCutting[], profits: Int32Array): GridCutting[] {
  let best: { area: number; cutting: GridCutting } | undefined;
  for (const cutting of cuttings) {
    const board = job.boards[cutting.board] as GridBoard;
    const side = job.firstCut === 'crosscut' ? 'length' : 'width';
    const across = job.firstCut === 'crosscut' ? board.width : board.length;
    let least = usedOf(job, cutting);
    let found = cutting;
    const area = (size: number) => (board[side] - size) * across;
    for (let low = 0; low < least - 1; ) {
      const middle = (low + least) >> 1;
      const shorter = cutFrom(job, { ...board, [side]: middle }, cutting, profits);
      if (shorter) {
        found = shorter;
        least = Math.min(middle, usedOf(job, shorter));
      } else low = middle;
    }
    if (!best || area(least) > best.area) best = { area: area(least), cutting: found };
  }
  return cuttings.map((each) => (each.board === best?.cutting.board ? best.cutting : each));
}

/** How far along, or across where strips come first, the parts of a board reach. */
function usedOf(job: GridJob, { sections }: GridCutting): number {
  if (job.firstCut === 'crosscut') return Math.max(...sections.map(({ x2 }) => x2));
  return Math.max(...sections.flatMap(({ strips }) => strips.map(({ y2 }) => y2)));
}

function cutFrom(job: GridJob, board: GridBoard, { board: number, sections }: GridCutting, profits: Int32Array) {
  const counts = new Uint16Array(job.parts.length);
  for (const { strips } of sections)
    for (const { places } of strips) for (const { part } of places) counts[part] = (counts[part] as number) + 1;
  const alone: GridJob = {
    ...job,
    boards: [board],
    parts: job.parts.map((part, index) => ({ ...part, count: counts[index] as number })),
  };
  const crosscutFirst = job.firstCut === 'crosscut';
  const values = new BoardValues(boardGrid(alone, board), profits, crosscutFirst);
  const guide = { profits, boards: [values] };
  const whole = { boards: [0], counts, guide, crosscutFirst };
  const { cuttings, impossible } = pack({ ...whole, limits: [], steps: 50_000 });
  const found = cuttings || impossible ? cuttings : beam({ ...whole, width: 4, branches: 6, steps: 20_000 }).cuttings;
  const sectionsFound = found?.[0]?.sections;
  return sectionsFound && { board: number, sections: sectionsFound };
}
