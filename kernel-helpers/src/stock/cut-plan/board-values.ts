import { type Band, type BoardGrid, firstAtLeast } from './board-grid.js';

/** Best values of the strips and of the lower part of a section that begins at one place, for each place where it may end. */
export interface SectionValues {
  from: number;
  /** For each band, by the place where the section ends; null where the band cannot matter within the slack. */
  strips: (Int32Array | null)[];
  /** For each place across, by the place where the section ends: the best that strips up to there give. */
  upTo: Int32Array[];
  slack: number;
  /** `row[parts][length]`: the most a clean strip gives from the narrowest so many parts. */
  row: Int32Array[];
}

/**
 * The most that a board can give when each part has a value: a dynamic programme over strips, sections, board.
 *
 * Each figure is an upper limit for every cutting of the class that holds no part more often than its count: counts are kept
 * within a clean strip, not across strips. Values are whole numbers, so that sums are exact.
 */
export class BoardValues {
  readonly layout: BoardGrid;
  /** Value of each of the layout's parts. */
  readonly value: Int32Array;
  /** From each place along to the board's end; `rest[0]` is the whole board. */
  readonly rest: Int32Array;
  readonly #crosscutFirst: boolean;
  /** `rows[parts][length]`: a clean strip that the narrowest so many parts fit. */
  readonly #rows: Int32Array[];
  readonly #kept = new Map<number, SectionValues>();
  /** Length of the longest part. */
  readonly #longest: number;
  /** For values of sections that nobody keeps. */
  readonly #scratch: ReturnType<typeof newSection>;

  /**
   * @param values  of the job's parts, whole numbers of zero or more
   * @param crosscutFirst  sections, or strips over the whole board
   */
  constructor(layout: BoardGrid, values: ArrayLike<number>, crosscutFirst: boolean) {
    this.layout = layout;
    this.#crosscutFirst = crosscutFirst;
    this.value = Int32Array.from(layout.parts, (part) => values[part] as number);
    this.#rows = cleanRows(layout, this.value, layout.count);
    this.rest = new Int32Array(layout.xs.length);
    this.#longest = Math.max(0, ...layout.length);
    this.#scratch = newSection(layout);
    this.#fillRest();
  }

  /** About how much work the values were, in steps of the search. */
  get work(): number {
    const { xs, bands } = this.layout;
    return Math.ceil((xs.length * bands.length * (this.#crosscutFirst ? xs.length : 8)) / 400);
  }

  /** The most the whole board can give. */
  get best(): number {
    return this.rest[0] as number;
  }

  /** Values of all sections that begin at a place, from the parts left alone. */
  sectionOf(from: number, left: Uint16Array): SectionValues {
    const { parts } = this.layout;
    const rows = cleanRows(
      this.layout,
      this.value,
      Int32Array.from(parts, (part) => left[part] as number),
    );
    const value = this.value.map((each, part) => (left[parts[part] as number] === 0 ? 0 : each));
    return this.#sectionValues(from, (this.rest[from] as number) >> 3, newSection(this.layout), rows, value);
  }

  /** Values of all sections that begin at a place, exact to within the slack; kept for the next time. */
  section(from: number, slack: number): SectionValues {
    const kept = this.#kept.get(from);
    if (kept && kept.slack >= slack) return kept;
    if (this.#kept.size > 300) this.#kept.clear();
    const fresh = this.#sectionValues(from, slack);
    this.#kept.set(from, fresh);
    return fresh;
  }

  /**
   * Copies of each of the job's parts in a cutting that gives `best`, as the programme counts them: a part may come more often
   * than it is needed.
   *
   * @param parts  how many the job has
   */
  bestPattern(parts: number): Uint16Array {
    const pattern = new Uint16Array(parts);
    const { rest } = this;
    const last = this.layout.xs.length - 1;
    for (let from = 0; (rest[from] as number) > 0; ) {
      let to = this.#crosscutFirst ? from + 1 : last;
      if (rest[from] !== rest[to] || to === last) {
        const held = this.#sectionValues(from, 0, this.#scratch);
        const whole = held.upTo.at(-1) as Int32Array;
        while ((whole[to] as number) + (rest[to] as number) !== rest[from]) to++;
        this.#addSection(held, to, pattern);
      }
      from = to;
    }
    return pattern;
  }

  /** Adds the parts of a section whose strips give most, from its upper strip down. */
  #addSection({ from, strips, upTo, row }: SectionValues, to: number, pattern: Uint16Array): void {
    const { bands, bandsTo, xs } = this.layout;
    for (let y = upTo.length - 1; y > 0; ) {
      const value = (upTo[y] as Int32Array)[to] as number;
      if (value === (upTo[y - 1] as Int32Array)[to]) {
        y--;
        continue;
      }
      const index = (bandsTo[y] as number[]).find((each) => {
        const strip = strips[each];
        const low = (upTo[(bands[each] as Band).low] as Int32Array)[to] as number;
        return strip && low + (strip[to] as number) === value;
      }) as number;
      const band = bands[index] as Band;
      const ofStrip = (strips[index] as Int32Array)[to] as number;
      const parts = this.layout.partsOf[band.heightClass] as number;
      const room = (xs[to] as number) - (xs[from] as number);
      if (ofStrip === (row[parts] as Int32Array)[room]) this.#addClean(parts, room, pattern);
      else this.#addDefective(index, from, to, pattern);
      y = band.low;
    }
  }

  /** Adds the parts of the best clean strip of a length, from the narrowest so many parts. */
  #addClean(parts: number, length: number, pattern: Uint16Array): void {
    const { layout, value } = this;
    let room = length;
    for (let part = parts - 1; part >= 0; part--) {
      const with_ = (this.#rows[part + 1] as Int32Array)[room] as number;
      const without = this.#rows[part] as Int32Array;
      let copies = 0;
      while (
        (without[room - copies * (layout.length[part] as number)] as number) + copies * (value[part] as number) !==
        with_
      )
        copies++;
      room -= copies * (layout.length[part] as number);
      pattern[layout.parts[part] as number] = (pattern[layout.parts[part] as number] as number) + copies;
    }
  }

  /** Adds the parts of the best strip that runs past defects, from its right end. */
  #addDefective(index: number, from: number, to: number, pattern: Uint16Array): void {
    const { layout, value } = this;
    const { xs, ends, fits } = layout;
    const band = layout.bands[index] as Band;
    const fit = fits[index] as Uint8Array;
    const places = xs.length;
    const parts = layout.partsOf[band.heightClass] as number;
    const reach = firstStain(band, xs[from] as number, xs, places);
    const row = this.#rows[parts] as Int32Array;
    const clean = Int32Array.from(xs, (x, at) => (at < from ? 0 : (row[x - (xs[from] as number)] as number)));
    const best = new Int32Array(places);
    this.#fillStained(index, from, reach, places - 1, clean, best);
    let at = to;
    while (at > reach && at > from) {
      const here = best[at] as number;
      if (here === best[at - 1]) {
        at--;
        continue;
      }
      let begin = -1;
      for (let part = 0; part < parts && begin < 0; part++)
        for (let place = at - 1; place >= from; place--)
          if (
            (ends[part * places + place] as number) === at &&
            (fit[part * places + place] as number) > 0 &&
            (best[place] as number) + (value[part] as number) === here
          ) {
            pattern[layout.parts[part] as number] = (pattern[layout.parts[part] as number] as number) + 1;
            begin = place;
            break;
          }
      at = begin;
    }
    this.#addClean(parts, (xs[at] as number) - (xs[from] as number), pattern);
  }

  #fillRest(): void {
    const { board, parts, xs } = this.layout;
    const last = xs.length - 1;
    const { rest } = this;
    if (parts.length === 0) return;
    if (!this.#crosscutFirst) {
      rest[0] = this.#sectionValues(0, 0, this.#scratch).upTo.at(-1)?.[last] as number;
      return;
    }
    const clean = this.#cleanSections();
    for (let from = last - 1; from >= 0; from--) {
      const start = xs[from] as number;
      const defect = Math.min(...board.defects.filter(({ x2 }) => x2 > start).map(({ x1 }) => x1));
      let best = rest[from + 1] as number;
      let to = from + 1;
      for (; to <= last && (xs[to] as number) <= defect; to++)
        best = Math.max(best, (clean[(xs[to] as number) - start] as number) + (rest[to] as number));
      // Sections with defects are worth looking at only where clean ones of their length would give more.
      let first = 0;
      let end = 0;
      for (; to <= last; to++)
        if ((clean[(xs[to] as number) - start] as number) + (rest[to] as number) > best) {
          first ||= to;
          end = to;
        }
      if (first > 0) {
        const whole = this.#sectionValues(from, 0, this.#scratch, this.#rows, undefined, first, end).upTo.at(-1);
        for (to = first; to <= end; to++) best = Math.max(best, (whole?.[to] as number) + (rest[to] as number));
      }
      rest[from] = best;
    }
  }

  /** The most that a section without defects gives, by its length. */
  #cleanSections(): Int32Array {
    const { board, ys, bands, bandsTo, partsOf } = this.layout;
    const size = board.length + 1;
    const upTo = [new Int32Array(size)];
    for (let y = 1; y < ys.length; y++) {
      const here = Int32Array.from(upTo[y - 1] as Int32Array);
      for (const index of bandsTo[y] as number[]) {
        const { low, tight, heightClass } = bands[index] as Band;
        if (tight)
          raise(here, upTo[low] as Int32Array, this.#rows[partsOf[heightClass] as number] as Int32Array, 0, size);
      }
      upTo.push(here);
    }
    return upTo.at(-1) as Int32Array;
  }

  #sectionValues(
    from: number,
    slack: number,
    into = newSection(this.layout),
    rows = this.#rows,
    value = this.value,
    first = this.#crosscutFirst ? from : this.layout.xs.length - 1,
    last = this.layout.xs.length - 1,
  ): SectionValues {
    const { layout } = this;
    const { xs, ys, bands, bandsTo, heights } = layout;
    const places = last + 1;
    const start = xs[from] as number;
    const clean = heights.map((_, index) => {
      const row = rows[layout.partsOf[index] as number] as Int32Array;
      const values = into.clean[index] as Int32Array;
      for (let to = from; to < places; to++) values[to] = row[(xs[to] as number) - start] as number;
      return values;
    });
    const upTo = into.upTo;
    (upTo[0] as Int32Array).fill(0, from);
    for (let y = 1; y < ys.length; y++) {
      const here = upTo[y] as Int32Array;
      const below = upTo[y - 1] as Int32Array;
      for (let to = from; to < places; to++) here[to] = below[to] as number;
      const to = bandsTo[y] as number[];
      const defective: number[] = [];
      for (const index of to) {
        const band = bands[index] as Band;
        const values = clean[band.heightClass] as Int32Array;
        const reach = firstStain(band, start, xs, xs.length);
        if (reach < last) {
          defective.push(index);
          continue;
        }
        into.strips[index] = values;
        raise(here, upTo[band.low] as Int32Array, values, first, places);
      }
      for (const index of defective) {
        const band = bands[index] as Band;
        const values = clean[band.heightClass] as Int32Array;
        const low = upTo[band.low] as Int32Array;
        if (!mayMatter(here, low, values, first, places, slack)) {
          into.strips[index] = null;
          continue;
        }
        const own = into.own[index] ?? new Int32Array(xs.length);
        into.own[index] = own;
        this.#defectiveStrip(index, from, last, values, own, value);
        into.strips[index] = own;
        raise(here, low, own, first, places);
      }
    }
    return { from, strips: into.strips, upTo, slack, row: rows };
  }

  /** A strip that runs past defects: parts one after the other, each where it is clear under itself. */
  #defectiveStrip(
    index: number,
    from: number,
    last: number,
    clean: Int32Array,
    into: Int32Array,
    value?: Int32Array,
  ): void {
    const { bands, xs } = this.layout;
    const reach = firstStain(bands[index] as Band, xs[from] as number, xs, xs.length);
    this.#fillStained(index, from, reach, last, clean, into, value);
    for (let to = from; to <= last; to++)
      if ((into[to] as number) > (clean[to] as number)) into[to] = clean[to] as number;
  }

  /** Fills in the most that parts one after the other give up to each place, counts left aside past the first defect. */
  #fillStained(
    index: number,
    from: number,
    reach: number,
    last: number,
    clean: Int32Array,
    into: Int32Array,
    value = this.value,
  ): void {
    const { bands, xs } = this.layout;
    const { first, part, end } = (bands[index] as Band).moves as NonNullable<Band['moves']>;
    for (let to = from; to <= last; to++) into[to] = to <= reach ? (clean[to] as number) : 0;
    // Parts that end before the first defect are in the clean strip's values.
    const near = Math.max(from, firstAtLeast(xs, (xs[Math.max(from, reach)] as number) - this.#longest));
    let best = 0;
    for (let at = near; at <= last; at++) {
      const here = into[at] as number;
      if (here > best) best = here;
      else into[at] = best;
      for (let move = first[at] as number, stop = first[at + 1] as number; move < stop; move++) {
        const to = end[move] as number;
        const with_ = best + (value[part[move] as number] as number);
        if (to > reach && to <= last && with_ > (into[to] as number)) into[to] = with_;
      }
    }
  }
}

function newSection(layout: BoardGrid) {
  const row = () => new Int32Array(layout.xs.length);
  return {
    strips: layout.bands.map((): Int32Array | null => null),
    own: layout.bands.map((): Int32Array | null => null),
    upTo: Array.from(layout.ys, row),
    clean: layout.heights.map(row),
  };
}

/** The last place along up to which a strip that begins at `start` is clean; past the last place where all of it is. */
function firstStain(band: Band, start: number, xs: Int32Array, places: number): number {
  const defect = band.defectiveStrips.find(({ x2 }) => x2 > start);
  if (!defect) return places;
  let low = 0;
  let high = places;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((xs[middle] as number) > defect.x1) high = middle;
    else low = middle + 1;
  }
  return low - 1;
}

function raise(here: Int32Array, low: Int32Array, strip: Int32Array, first: number, places: number): void {
  for (let to = first; to < places; to++) {
    const value = (low[to] as number) + (strip[to] as number);
    if (value > (here[to] as number)) here[to] = value;
  }
}

function mayMatter(here: Int32Array, low: Int32Array, strip: Int32Array, first: number, places: number, slack: number) {
  for (let to = first; to < places; to++) {
    const value = (low[to] as number) + (strip[to] as number);
    if (value > 0 && value > (here[to] as number) - slack) return true;
  }
  return false;
}

/** Bounded knapsacks over length, one row more for each part, narrow parts first. */
function cleanRows(layout: BoardGrid, value: Int32Array, count: Int32Array): Int32Array[] {
  const size = layout.board.length + 1;
  const rows = [new Int32Array(size)];
  for (let part = 0; part < layout.parts.length; part++) {
    const row = Int32Array.from(rows[part] as Int32Array);
    const length = layout.length[part] as number;
    let left = count[part] as number;
    for (let copies = 1; left > 0; copies *= 2) {
      const taken = Math.min(copies, left);
      left -= taken;
      const span = taken * length;
      const profit = taken * (value[part] as number);
      if (profit > 0)
        for (let at = size - 1; at >= span; at--) {
          const candidate = (row[at - span] as number) + profit;
          if (candidate > (row[at] as number)) row[at] = candidate;
        }
    }
    rows.push(row);
  }
  return rows;
}
