/** A tiny job in whole units: every way to cut it is tried, one unit at a time. Knows nothing of how plans are found. */
export interface TinyJob {
  kerf: number;
  firstCut: 'crosscut' | 'rip';
  boards: { length: number; width: number; cost: number; defects: { x: number; y: number; w: number; h: number }[] }[];
  parts: { length: number; width: number; count: number }[];
}

type Board = TinyJob['boards'][number];

/**
 * The least cost at which all parts can be cut, by full enumeration: every section, every strip, every place of every part.
 *
 * @returns undefined where they cannot be cut from all boards together
 */
export function cheapestByEnumeration(job: TinyJob): number | undefined {
  const { parts } = job;
  const radix: number[] = [];
  let size = 1;
  for (const { count } of parts) {
    radix.push(size);
    size *= count + 1;
  }
  const everything = size - 1;
  const copies = (state: number, part: number) =>
    Math.floor(state / (radix[part] as number)) % ((parts[part]?.count as number) + 1);
  /** Both together, or undefined where a part is there more often than it is needed: that is no better than not cutting it. */
  const join = (a: number, b: number) =>
    parts.every(({ count }, part) => copies(a, part) + copies(b, part) <= count) ? a + b : undefined;

  function fromBoard(board: Board): Set<number> {
    const { length, width, defects } = board;
    const clear = (x: number, y: number, l: number, w: number) =>
      !defects.some((d) => x < d.x + d.w && x + l > d.x && y < d.y + d.h && y + w > d.y);

    /** What a strip from a to b and from c to d can hold. */
    function strip(a: number, b: number, c: number, d: number): Set<number> {
      const from = new Map<number, Set<number>>();
      for (let x = b; x >= a; x--) {
        const here = new Set<number>([0, ...(from.get(x + 1) ?? [])]);
        parts.forEach((part, index) => {
          if (x + part.length > b || part.width > d - c) return;
          if (!clear(x, c, part.length, part.width) && !clear(x, d - part.width, part.length, part.width)) return;
          const next = Math.min(b, x + part.length + job.kerf);
          for (const state of next === x ? [0] : (from.get(next) ?? [0])) {
            const both = join(state, radix[index] as number);
            if (both !== undefined) here.add(both);
          }
        });
        from.set(x, here);
      }
      return from.get(a) as Set<number>;
    }

    function section(a: number, b: number): Set<number> {
      const from = new Map<number, Set<number>>();
      for (let c = width; c >= 0; c--) {
        const here = new Set<number>([0, ...(from.get(c + 1) ?? [])]);
        for (let d = c + 1; d <= width; d++) {
          const above = from.get(Math.min(width, d + job.kerf)) as Set<number>;
          for (const one of strip(a, b, c, d))
            for (const other of above) {
              const both = join(one, other);
              if (both !== undefined) here.add(both);
            }
        }
        from.set(c, here);
      }
      return from.get(0) as Set<number>;
    }

    if (job.firstCut === 'rip') return section(0, length);
    const from = new Map<number, Set<number>>();
    for (let a = length; a >= 0; a--) {
      const here = new Set<number>([0, ...(from.get(a + 1) ?? [])]);
      for (let b = a + 1; b <= length; b++) {
        const after = from.get(Math.min(length, b + job.kerf)) as Set<number>;
        for (const one of section(a, b))
          for (const other of after) {
            const both = join(one, other);
            if (both !== undefined) here.add(both);
          }
      }
      from.set(a, here);
    }
    return from.get(0) as Set<number>;
  }

  const each = job.boards.map(fromBoard);
  let best: number | undefined;
  for (let chosen = 1; chosen < 2 ** job.boards.length; chosen++) {
    const boards = [...job.boards.keys()].filter((board) => chosen & (1 << board));
    const cost = boards.reduce((sum, board) => sum + (job.boards[board] as Board).cost, 0);
    if (best !== undefined && cost >= best) continue;
    let states = new Set([0]);
    for (const board of boards) {
      const next = new Set<number>();
      for (const one of states)
        for (const other of each[board] as Set<number>) {
          const both = join(one, other);
          if (both !== undefined) next.add(both);
        }
      states = next;
    }
    if (states.has(everything)) best = cost;
  }
  return best;
}
