import * as z from 'zod';
import { readParameters, size, words } from '../../measure/parameters.js';
import { ShopError } from '../../measure/shop-error.js';
import type { Defect } from '../cut-plan/plan.js';

const place = (why: string) => size({ least: 0, most: 240, why });
const leastExtent = 1 / 64;
const extent = (why: string) => size({ least: leastExtent, most: 240, why });
const defectFields: z.ZodType<Defect> = z.strictObject({
  kind: words('what it is, such as knot'),
  fromEnd: place('from the marked end to its near side'),
  fromEdge: place('from the lower edge to its near side'),
  length: extent('along the grain'),
  width: extent('across the grain'),
});

const written = /^\s*(.+?)\s+at\s+(.+?)\s+by\s+(.+?)\s+size\s+(.+?)\s+by\s+(.+?)\s*$/i;
const form =
  'write it like "knot at 12 in by 3 in size 2 in by 1 1/2 in": from the marked end, from the lower edge, then along and across the grain';

/**
 * A defect as it was typed: fields, or one line `knot at 12 in by 3 in size 2 in by 1 1/2 in`.
 *
 * @throws ShopError  one line: the field, the value given, what is possible
 * @internal
 */
export function readDefect(typed: unknown): Defect {
  if (typeof typed !== 'string') return readParameters(defectFields, typed);
  const match = written.exec(typed);
  if (!match) throw new ShopError(`"${typed}" is not a defect; ${form}`);
  const [, kind, fromEnd, fromEdge, length, width] = match;
  return readParameters(defectFields, { kind, fromEnd, fromEdge, length, width });
}

/** The defects of a table's cell, parted by `|`. @throws ShopError @internal */
export function readDefects(text: string): Defect[] {
  return text
    .split('|')
    .filter((each) => each.trim() !== '')
    .map(readDefect);
}

/** Area that rectangles cover together, square inches; where two lie over one another it counts once. @internal */
export function coveredArea(areas: readonly Pick<Defect, 'fromEnd' | 'fromEdge' | 'length' | 'width'>[]): number {
  const ends = [...new Set(areas.flatMap(({ fromEnd, length }) => [fromEnd, fromEnd + length]))].sort((a, b) => a - b);
  let total = 0;
  for (const [index, from] of ends.entries()) {
    const to = ends[index + 1] ?? from;
    const here = areas
      .filter((area) => area.fromEnd <= from && area.fromEnd + area.length >= to)
      .sort((a, b) => a.fromEdge - b.fromEdge);
    let reached = Number.NEGATIVE_INFINITY;
    for (const { fromEdge, width } of here) {
      total += (to - from) * Math.max(0, fromEdge + width - Math.max(reached, fromEdge));
      reached = Math.max(reached, fromEdge + width);
    }
  }
  return total;
}
