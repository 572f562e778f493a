import type { Band } from './board-grid.js';
import type { BoardValues, SectionValues } from './board-values.js';
import type { GridSection, GridStrip } from './grid-job.js';

/** A section that may come next on a board, and the parts left after it. */
export interface NextSection {
  section: GridSection;
  /** Index of the place along where it ends. */
  to: number;
  /** Copies of each of the job's parts that are left. */
  left: Uint16Array;
  /** Value of the parts in it. */
  value: number;
}

/** Copies left as a key of a map. */
export function keyOf(left: Uint16Array): string {
  // A quarter of the time that spreading takes.
  return String.fromCharCode.apply(null, left as unknown as number[]);
}

/** Looks for the sections that begin at one place of a board. */
interface SectionSearch {
  /** Adds the sections that end at a place and are worth at least so much, until the work allowed is done. */
  look(to: number, need: number, mostSteps: number): void;
  readonly sections: NextSection[];
  readonly steps: number;
  /** Whether every search so far came to its end. */
  readonly complete: boolean;
}

/**
 * All sections that begin at a place and give up no more than some value against the best; of sections that hold the same
 * parts the shortest. A section that another one, no longer, adds parts to may be left out.
 *
 * @param values  the board and what parts are worth
 * @param from  index of the place along
 * @param left  copies of each of the job's parts still to cut
 * @param slack  value that may be given up
 * @param mostSteps  work allowed, in steps
 * @param ends  ends of the section that are asked for, as indexes of places; all, or only the board's end
 * @returns the sections, and the steps used; `complete` is false where the work allowed did not do
 * @internal
 */
export function nextSections(
  values: BoardValues,
  from: number,
  left: Uint16Array,
  slack: number,
  mostSteps: number,
  ends: 'all' | 'last',
): { sections: NextSection[]; steps: number; complete: boolean } {
  const held = values.section(from, slack + 1);
  const search = sectionSearch(values, held, left);
  const whole = held.upTo.at(-1) as Int32Array;
  const places = values.layout.xs.length;
  for (let to = ends === 'all' ? from + 1 : places - 1; to < places && search.complete; to++) {
    const need = Math.max(1, (values.rest[from] as number) - slack - (values.rest[to] as number));
    if ((whole[to] as number) >= need) search.look(to, need, mostSteps);
  }
  return search;
}

/**
 * A few sections that may well come next: for the most promising places to end, what fits there at best from the parts left.
 *
 * @param most  how many sections are wanted
 * @internal
 */
export function likelySections(
  values: BoardValues,
  from: number,
  left: Uint16Array,
  most: number,
  ends: 'all' | 'last',
): { sections: NextSection[]; steps: number } {
  const held = values.sectionOf(from, left);
  const search = sectionSearch(values, held, left);
  const whole = held.upTo.at(-1) as Int32Array;
  const promising: { to: number; loss: number }[] = [];
  for (let to = ends === 'all' ? from + 1 : whole.length - 1; to < whole.length; to++) {
    const value = whole[to] as number;
    if (ends === 'last' || value > (whole[to - 1] as number) || (to === from + 1 && value > 0))
      promising.push({ to, loss: (values.rest[from] as number) - value - (values.rest[to] as number) });
  }
  promising.sort((a, b) => a.loss - b.loss || a.to - b.to);
  for (const { to } of promising) {
    if (search.sections.length >= most) break;
    const before = search.sections.length;
    for (const share of [0.97, 0.85, 0.6, 0.3, 0]) {
      search.look(to, Math.max(1, Math.floor((whole[to] as number) * share)), search.steps + 150);
      if (search.sections.length > before) break;
    }
    // The best two of one length are enough.
    const found = search.sections.splice(before).sort((a, b) => b.value - a.value);
    search.sections.push(...found.slice(0, 2));
  }
  return search;
}

function sectionSearch(values: BoardValues, held: SectionValues, left: Uint16Array): SectionSearch {
  const { layout } = values;
  const { xs, ys, bands, bandsTo, parts, ends: endsOf, fits, length, width, partsOf } = layout;
  const profits = values.value;
  const places = xs.length;
  const { from, row } = held;
  const start = xs[from] as number;
  const seen = new Set<string>();
  /** Whether sections came of a beginning with so much left below a place. */
  const reached = new Map<string, boolean>();
  const sections: NextSection[] = [];
  const now = left.slice();
  const strips: GridStrip[] = [];
  let steps = 0;
  let complete = true;
  let to = 0;
  let last = 0;
  let mostSteps = 0;

  const clearBetween = (lower: Band, upper: Band) =>
    !layout.board.defects.some(
      ({ x1, x2, y1, y2 }) =>
        x2 > start && x1 < last && y1 < (ys[upper.high] as number) && y2 > (ys[lower.low] as number),
    );

  /** Places strips below `y` whose value is at least `need`; tells whether any was found. */
  function below(y: number, need: number, given: number, above: Band | undefined): boolean {
    if (++steps > mostSteps) {
      complete = false;
      return true;
    }
    // What is left decides the value given so far, so that the same again leads to the same sections.
    const state = above && strips.length > 1 ? String.fromCharCode(y, above.high) + keyOf(now) : '';
    const before = reached.get(state);
    if (before !== undefined) return before;
    let found = false;
    for (let top = y; top > 0 && ((held.upTo[top] as Int32Array)[to] as number) >= need; top--)
      for (const index of bandsTo[top] as number[]) {
        const band = bands[index] as Band;
        const strip = held.strips[index];
        if (!strip) continue;
        const low = (held.upTo[band.low] as Int32Array)[to] as number;
        if ((strip[to] as number) === 0 || (strip[to] as number) + low < need) continue;
        const clean = cleanWithin(band, start, last);
        if (clean && !band.tight) continue;
        // Two strips that touch may be swapped where both together are clean: the wider one lies below.
        if (above?.low === top && band.heightClass < above.heightClass && clearBetween(band, above)) continue;
        const more = (value: number) => below(band.low, need - value, given + value, band);
        if (clean ? fillClean(band, need - low, more) : fillStained(index, strip, need - low, more)) found = true;
        if (!complete) return true;
      }
    if (state !== '') reached.set(state, found || need <= 0);
    if (found) return true;
    if (need > 0) return false;
    if (strips.length === 0) return false;
    const key = keyOf(now);
    if (!seen.has(key)) {
      seen.add(key);
      sections.push({
        section: {
          x1: start,
          x2: last,
          strips: strips.map((strip) => ({ ...strip, places: [...strip.places] })).reverse(),
        },
        to,
        left: now.slice(),
        value: given,
      });
    }
    return true;
  }

  /** Fills a clean strip with at least `need`; order does not matter there. */
  function fillClean(band: Band, need: number, more: (value: number) => boolean): boolean {
    const strip: GridStrip = { y1: ys[band.low] as number, y2: ys[band.high] as number, places: [] };
    strips.push(strip);
    const most = partsOf[band.heightClass] as number;
    let found = false;
    const choose = (upTo: number, room: number, value: number): void => {
      if (++steps > mostSteps) {
        complete = false;
        return;
      }
      if (value + ((row[upTo] as Int32Array)[room] as number) < need) return;
      if (upTo === 0) {
        if (strip.places.length === 0) return;
        for (let part = 0; part < most; part++)
          if ((now[parts[part] as number] as number) > 0 && (length[part] as number) <= room) return;
        if (more(value)) found = true;
        return;
      }
      const part = upTo - 1;
      const span = length[part] as number;
      const number = parts[part] as number;
      const copies = Math.min(now[number] as number, Math.floor(room / span));
      for (let taken = 0; taken < copies; taken++)
        strip.places.push({ part: number, x: last - room + taken * span, y: strip.y1 });
      now[number] = (now[number] as number) - copies;
      for (let taken = copies; taken >= 0; taken--) {
        choose(upTo - 1, room - taken * span, value + taken * (profits[part] as number));
        if (taken > 0) {
          strip.places.pop();
          now[number] = (now[number] as number) + 1;
        }
        if (!complete) {
          for (let rest = taken - 1; rest > 0; rest--) {
            strip.places.pop();
            now[number] = (now[number] as number) + 1;
          }
          break;
        }
      }
    };
    choose(most, last - start, 0);
    strips.pop();
    return found;
  }

  /** Fills a strip that runs past defects, from its right end: the last part as far right as it goes leaves most room. */
  function fillStained(index: number, best: Int32Array, need: number, more: (value: number) => boolean): boolean {
    const band = bands[index] as Band;
    const fit = fits[index] as Uint8Array;
    const strip: GridStrip = { y1: ys[band.low] as number, y2: ys[band.high] as number, places: [] };
    strips.push(strip);
    const most = partsOf[band.heightClass] as number;
    const tried = new Set<string>();
    let found = false;
    const choose = (end: number, value: number): boolean => {
      if (++steps > mostSteps) {
        complete = false;
        return true;
      }
      if (value + (best[end] as number) < need) return false;
      const key = `${String.fromCharCode(end)}${keyOf(now)}`;
      if (tried.has(key)) return true;
      tried.add(key);
      let longer = false;
      for (let part = most - 1; part >= 0; part--) {
        const number = parts[part] as number;
        if ((now[number] as number) === 0) continue;
        const row = part * places;
        let at = lastBefore(endsOf, row, from, end);
        while (at >= from && (fit[row + at] as number) === 0) at--;
        if (at < from) continue;
        if (value + (profits[part] as number) + (best[at] as number) < need) continue;
        const x = xs[at] as number;
        const y = (fit[row + at] as number) & 1 ? strip.y1 : strip.y2 - (width[part] as number);
        strip.places.unshift({ part: number, x, y });
        now[number] = (now[number] as number) - 1;
        if (choose(at, value + (profits[part] as number))) longer = true;
        now[number] = (now[number] as number) + 1;
        strip.places.shift();
        if (!complete) return true;
      }
      if (longer) return true;
      if (value < need || strip.places.length === 0) return false;
      if (more(value)) found = true;
      return true;
    };
    choose(to, 0);
    strips.pop();
    return found;
  }

  return {
    look(end, need, most) {
      to = end;
      last = xs[to] as number;
      mostSteps = most;
      complete = true;
      reached.clear();
      below(ys.length - 1, need, 0, undefined);
    },
    sections,
    get steps() {
      return steps;
    },
    get complete() {
      return complete;
    },
  };
}

function cleanWithin(band: Band, from: number, to: number): boolean {
  return !band.defectiveStrips.some(({ x1, x2 }) => x2 > from && x1 < to);
}

/** Largest place at or after `from` whose end is no later than `end`; less than `from` where there is none. */
function lastBefore(ends: Int32Array, row: number, from: number, end: number): number {
  let low = from;
  let high = end;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((ends[row + middle] as number) <= end) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
