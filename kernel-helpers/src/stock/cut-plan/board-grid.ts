import type { GridBoard, GridJob } from './grid-job.js';

/** A place for a strip: its lower and upper rip, and what the defects leave of it. */
export interface Band {
  low: number;
  high: number;
  height: number;
  /** Which of the layout's heights is the largest that fits; the band counts as a clean one of that height. */
  heightClass: number;
  /** No higher than its widest part, so that it serves where it is clean. */
  tight: boolean;
  /** Left and right ends of the defects in it, merged, from left to right. */
  defectiveStrips: { x1: number; x2: number }[];
  /** Of a band with defects: parts that may lie in it, by the place along where they begin; where each ends. */
  moves: Moves | undefined;
}

/** `part` and `end` from `first[at]` up to `first[at + 1]` are those of the parts that may begin at the place. */
interface Moves {
  first: Int32Array;
  part: Uint16Array;
  end: Int32Array;
}

/**
 * What is worth asking of one board, whatever its parts are worth: at which places cuts may be needed, which strips.
 *
 * Places are the normal ones: every plan can be pushed toward the marked end and the lower edge until each part and each cut
 * rests on the board's end, a defect's far side, or another part, and a row of parts that rest on one another holds none twice.
 */
export interface BoardGrid {
  board: GridBoard;
  /** Parts that fit the board, narrow ones first: their numbers in the job. */
  parts: number[];
  length: Int32Array;
  width: Int32Array;
  count: Int32Array;
  /** Places along and across, rising; the first is 0, the last the board's end. */
  xs: Int32Array;
  ys: Int32Array;
  /** For each part and place along: the first place at or after the part's end, or the number of places where it overhangs. */
  ends: Int32Array;
  bands: Band[];
  /** Bands by their upper rip. */
  bandsTo: number[][];
  /** For each band, 1 where a part may begin at a place along at the strip's lower edge, 2 at its upper edge, 3 both. */
  fits: Uint8Array[];
  heights: number[];
  /** For each height, how many of the parts a strip of it takes: the narrowest so many. */
  partsOf: number[];
  /** The first place along from which the rest of the board is clean. */
  cleanFrom: number;
}

/** Places that are a defect's far side or the board's end plus the sizes of different parts; capped at the board. */
function places(starts: number[], sizes: number[], counts: number[], end: number): Int32Array {
  const reach = new Uint8Array(end + 1);
  for (const start of starts) if (start >= 0 && start < end) reach[start] = 1;
  sizes.forEach((size, index) => {
    // Copies used since the last place reached without this part: never more than its count.
    const used = new Int32Array(end + 1).fill(-1);
    for (let at = 0; at <= end; at++) {
      if (reach[at]) used[at] = 0;
      else if (
        at >= size &&
        (used[at - size] as number) >= 0 &&
        (used[at - size] as number) < (counts[index] as number)
      )
        used[at] = (used[at - size] as number) + 1;
    }
    for (let at = 0; at <= end; at++) if ((used[at] as number) >= 0) reach[at] = 1;
  });
  reach[0] = 1;
  reach[end] = 1;
  return Int32Array.from([...reach.keys()].filter((at) => reach[at]));
}

/** First index whose value is at least the one asked for; the length where none is. */
export function firstAtLeast(sorted: ArrayLike<number>, value: number): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) >= value) high = middle;
    else low = middle + 1;
  }
  return low;
}

function merged(spans: { x1: number; x2: number }[]): { x1: number; x2: number }[] {
  const sorted = [...spans].sort((a, b) => a.x1 - b.x1);
  const result: { x1: number; x2: number }[] = [];
  for (const span of sorted) {
    const last = result.at(-1);
    if (last && span.x1 <= last.x2) last.x2 = Math.max(last.x2, span.x2);
    else result.push({ ...span });
  }
  return result;
}

function movesOf(fit: Uint8Array, ends: Int32Array, places: number): Moves {
  let total = 0;
  for (let row = 0; row < fit.length; row++) if (fit[row] !== 0) total++;
  const moves = { first: new Int32Array(places + 1), part: new Uint16Array(total), end: new Int32Array(total) };
  let count = 0;
  for (let at = 0; at < places; at++) {
    moves.first[at] = count;
    for (let part = 0, row = at; row < fit.length; part++, row += places) {
      if (fit[row] === 0) continue;
      moves.part[count] = part;
      moves.end[count++] = ends[row] as number;
    }
  }
  moves.first[places] = count;
  return moves;
}

/**
 * Lays out a board of a job.
 *
 * @param job  parts with their counts, on the grid
 * @param board  one of the job's boards
 * @internal
 */
export function boardGrid(job: GridJob, board: GridBoard): BoardGrid {
  const { defects } = board;
  const widthOf = (index: number) => (job.parts[index] as GridJob['parts'][number]).width;
  const parts = [...job.parts.keys()]
    .filter((index) => {
      const part = job.parts[index] as GridJob['parts'][number];
      return board.takes[index] && part.count > 0 && part.length <= board.length && part.width <= board.width;
    })
    .sort((a, b) => widthOf(a) - widthOf(b) || a - b);
  const sizes = (key: 'length' | 'width' | 'count') =>
    Int32Array.from(parts, (index) => (job.parts[index] as GridJob['parts'][number])[key]);
  const length = sizes('length');
  const width = sizes('width');
  const count = sizes('count');
  const xs = places([0, ...defects.map(({ x2 }) => x2)], [...length], [...count], board.length);
  const ys = places([0, ...defects.map(({ y2 }) => y2)], [...width], [...count], board.width);
  const ends = new Int32Array(parts.length * xs.length);
  for (let part = 0; part < parts.length; part++)
    for (let at = 0; at < xs.length; at++)
      ends[part * xs.length + at] = firstAtLeast(xs, (xs[at] as number) + (length[part] as number));

  // For each part and height above the lower edge, 1 at the places along where it lies on a defect; alike for many bands.
  const known = new Map<number, Uint8Array>();
  const coveredAt = (part: number, y: number): Uint8Array => {
    const key = part * board.width + y;
    const before = known.get(key);
    if (before) return before;
    const covered = new Uint8Array(xs.length);
    known.set(key, covered);
    for (const { x1, x2, y1, y2 } of defects)
      if (y < y2 && y + (width[part] as number) > y1)
        covered.fill(1, firstAtLeast(xs, x1 - (length[part] as number) + 1), firstAtLeast(xs, x2));
    return covered;
  };
  const heights = [...new Set(width)].sort((a, b) => a - b);
  const tops = defects.map(({ y2 }) => y2);
  const bands: Band[] = [];
  const bandsTo: number[][] = Array.from(ys, () => []);
  const fits: Uint8Array[] = [];
  for (const [from, low] of ys.entries()) {
    const highs = new Set<number>();
    for (const height of heights) {
      highs.add(low + height);
      for (const top of tops) if (top > low) highs.add(top + height);
    }
    const ceilings = new Set([...highs].map((high) => firstAtLeast(ys, high)));
    for (const to of [...ceilings].sort((a, b) => a - b)) {
      if (to >= ys.length) continue;
      const high = ys[to] as number;
      const height = high - low;
      const heightClass = heights.findLastIndex((least) => least <= height);
      if (heightClass < 0) continue;
      const defectiveStrips = merged(defects.filter(({ y1, y2 }) => y1 < high && y2 > low));
      // A clean strip that is wider than its widest part is never needed.
      const tight = firstAtLeast(ys, low + (heights[heightClass] as number)) === to;
      if (defectiveStrips.length === 0 && !tight) continue;
      const fit = new Uint8Array(parts.length * xs.length);
      if (defectiveStrips.length > 0)
        for (let part = 0; part < parts.length; part++) {
          if ((width[part] as number) > height) continue;
          const lower = coveredAt(part, low);
          const upper = coveredAt(part, high - (width[part] as number));
          for (let at = 0, row = part * xs.length; at < xs.length; at++, row++) {
            if ((ends[row] as number) >= xs.length) break;
            fit[row] = 3 - (lower[at] as number) - 2 * (upper[at] as number);
          }
        }
      (bandsTo[to] as number[]).push(bands.length);
      const moves = defectiveStrips.length > 0 ? movesOf(fit, ends, xs.length) : undefined;
      bands.push({ low: from, high: to, height, heightClass, tight, defectiveStrips, moves });
      fits.push(fit);
    }
  }
  const lastStain = Math.max(0, ...defects.map(({ x2 }) => x2));
  return {
    board,
    parts,
    length,
    width,
    count,
    xs,
    ys,
    ends,
    bands,
    bandsTo,
    fits,
    heights,
    partsOf: heights.map((height) => width.filter((each) => each <= height).length),
    cleanFrom: firstAtLeast(xs, lastStain),
  };
}
