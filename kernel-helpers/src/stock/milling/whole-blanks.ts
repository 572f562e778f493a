import type { Cut, CutBoardPlan, Offcut, PlacedPart } from '../cut-plan/plan.js';
import type { Blank } from './blanks.js';

/** A cut, and whether it waits until its blank is planed. */
export interface TimedCut extends Cut {
  afterPlaning: boolean;
}

const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;

/**
 * Leaves blanks whole until they are planed: where a plan cuts the parts of a blank apart at once, the blank is cut off in one
 * piece and ripped once, and its parts are cut apart after everything else. What is left beside it stays one offcut.
 *
 * @param planned  a board's plan; in
 * @param blanks  see `blanksOf`
 * @param kerf  of the saw, in
 * @returns its cuts in their new order, and its offcuts; in
 */
export function wholeBlanks(
  planned: Pick<CutBoardPlan, 'parts' | 'cuts' | 'offcuts'>,
  blanks: readonly Blank[],
  kerf: number,
): { cuts: TimedCut[]; offcuts: Offcut[] } {
  let cuts: TimedCut[] = planned.cuts.map((cut) => ({ ...cut, afterPlaning: false }));
  let offcuts = [...planned.offcuts];
  for (const { parts: names } of blanks) {
    const parts = planned.parts.filter(({ name }) => names.includes(name));
    const [first] = parts;
    if (names.length < 2 || !first || parts.length < names.length) continue;
    if (parts.some(({ fromEdge, width }) => !near(fromEdge, first.fromEdge) || !near(width, first.width))) continue;
    ({ cuts, offcuts } = keptWhole(cuts, offcuts, parts, kerf));
  }
  return { cuts: [...cuts.filter((cut) => !cut.afterPlaning), ...cuts.filter((cut) => cut.afterPlaning)], offcuts };
}

function keptWhole(
  cuts: readonly TimedCut[],
  offcuts: Offcut[],
  parts: readonly PlacedPart[],
  kerf: number,
): { cuts: TimedCut[]; offcuts: Offcut[] } {
  const from = Math.min(...parts.map((part) => part.fromEnd));
  const to = Math.max(...parts.map((part) => part.fromEnd + part.length));
  const low = (parts[0] as PlacedPart).fromEdge;
  const high = low + (parts[0] as PlacedPart).width;
  const over = (cut: Cut) => cut.kind === 'crosscut' && cut.from <= low + 1e-6 && cut.to >= high - 1e-6;
  const apart = cuts.filter((cut) => over(cut) && cut.at > from + 1e-6 && cut.at < to - 1e-6);
  const start = cuts.indexOf(apart[0] as TimedCut);
  if (start < 0) return { cuts: [...cuts], offcuts };
  // Single parts are freed by rips along their own edge, made once they are cut off.
  const freeing = cuts.filter(
    (cut, index) =>
      index > start &&
      cut.kind === 'rip' &&
      (near(cut.at, high) || (cut.at < low && cut.at > low - kerf - 1e-6)) &&
      parts.some((part) => near(part.fromEnd, cut.from)),
  );
  const off = cuts.filter((cut, index) => index > start && over(cut) && near(cut.at, to));
  const taken = new Set<Cut>([...apart, ...freeing, ...off]);
  const ends = Math.max(to, ...freeing.map((cut) => cut.to));
  const rips = [...new Map(freeing.map((cut) => [cut.at.toFixed(6), { ...cut, from, to: ends }])).values()];
  const parting = apart.map((cut) => ({ ...cut, from: low, to: high, afterPlaning: true }));
  return {
    cuts: [...cuts.slice(0, start), ...off, ...rips, ...parting, ...cuts.slice(start).filter((cut) => !taken.has(cut))],
    offcuts: joined(offcuts, from, to, low, high),
  };
}

/** Offcuts beside the blank that lie in a row over its length become one. */
function joined(offcuts: Offcut[], from: number, to: number, low: number, high: number): Offcut[] {
  const beside = offcuts.filter(
    (each) =>
      each.fromEnd > from - 1e-6 &&
      each.fromEnd + each.length < to + 1e-6 &&
      (each.fromEdge > high - 1e-6 || each.fromEdge + each.width < low + 1e-6),
  );
  const [first] = beside;
  if (!first || beside.some((each) => !near(each.fromEdge, first.fromEdge) || !near(each.width, first.width)))
    return offcuts;
  const { fromEdge, width } = first;
  return [...offcuts.filter((each) => !beside.includes(each)), { fromEnd: from, fromEdge, length: to - from, width }];
}
