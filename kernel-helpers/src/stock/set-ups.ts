import { ShopError } from '../measure/shop-error.js';
import type { Blank } from './blanks.js';
import type { BoardLayout, NumberedCut } from './board-layouts.js';
import type { RoughPart } from './rough-parts.js';

/** One setting of a machine, and all that is done while it stands there. In. */
export interface SetUp {
  stage: 'rough' | 'planing' | 'final';
  machine: 'crosscut stop' | 'rip fence' | 'planer';
  /** From the blade to the stop or fence, or the thickness. */
  setting: number;
  /** `board A: cut 2 (side)` or `side, 2 pieces`. */
  pieces: string[];
}

interface Area {
  from: number;
  to: number;
  low: number;
  high: number;
}

/** Settings closer than this are one, in. */
const same = 1 / 128;

/**
 * The rough cuts by machine and setting: stop or fence is set once, and every cut of that setting is made, board by board in
 * the order of their numbers. The setting is the size of the piece that is kept.
 *
 * @param layouts  see `boardLayouts`; in
 * @param kerf  of the saw, in
 * @returns crosscuts and rips, largest setting first
 * @throws ShopError  a cut that does not go right across a piece: it cannot be sawn
 */
export function roughSetUps(layouts: readonly BoardLayout[], kerf: number): SetUp[] {
  const all: SetUp[] = [];
  for (const layout of layouts) {
    const areas: Area[] = [{ from: 0, to: layout.board.length, low: 0, high: layout.board.width }];
    for (const cut of layout.cuts) {
      if (cut.trims) {
        part(areas, cut, kerf, layout.board.mark);
        continue;
      }
      const [near, far] = part(areas, cut, kerf, layout.board.mark);
      const inside = (area: Area) =>
        layout.parts.filter(
          ({ fromEnd, fromEdge, length, width }) =>
            fromEnd >= area.from - same &&
            fromEnd + length <= area.to + same &&
            fromEdge >= area.low - same &&
            fromEdge + width <= area.high + same,
        );
      const kept = inside(near).length > 0 || inside(far).length === 0 ? near : far;
      const setting = cut.kind === 'crosscut' ? kept.to - kept.from : kept.high - kept.low;
      const names = [...new Set(inside(kept).map(({ name }) => name))].join(', ') || 'offcut';
      add(all, {
        stage: 'rough',
        machine: cut.kind === 'crosscut' ? 'crosscut stop' : 'rip fence',
        setting,
        pieces: [`board ${layout.board.mark}: cut ${cut.number} (${names})`],
      });
    }
  }
  return ordered(all);
}

/**
 * Planer, rip fence and crosscut stop for the finished sizes: each is set once for all parts of that size.
 *
 * @param rough  see `roughParts`; in
 * @param blanks  see `blanksOf`; in
 * @returns planer from thick to thin, then rips and crosscuts, largest setting first
 * @see common practice, no source
 */
export function finalSetUps(rough: readonly RoughPart[], blanks: readonly Blank[]): SetUp[] {
  const planing: SetUp[] = [];
  for (const { name, parts, thickness, because } of blanks)
    add(planing, {
      stage: 'planing',
      machine: 'planer',
      setting: thickness,
      pieces: [because === 'part' ? name : `${name} (${parts.join(', ')})`],
    });
  const final: SetUp[] = [];
  for (const { name, count, finished } of rough) {
    const pieces = [count === 1 ? name : `${name}, ${count} pieces`];
    add(final, { stage: 'final', machine: 'rip fence', setting: finished.width, pieces });
    add(final, { stage: 'final', machine: 'crosscut stop', setting: finished.length, pieces });
  }
  return [
    ...ordered(planing),
    ...ordered(final)
      .reverse()
      .sort((a, b) => order(a) - order(b) || b.setting - a.setting),
  ];
}

const order = ({ machine }: SetUp) => (machine === 'rip fence' ? 0 : 1);

/** Parts the piece that a cut goes right across, and gives both halves. */
function part(areas: Area[], cut: NumberedCut, kerf: number, mark: string): [Area, Area] {
  const { kind, at, from, to } = cut;
  const index = areas.findIndex((area) =>
    kind === 'crosscut'
      ? Math.abs(area.low - from) < same && Math.abs(area.high - to) < same && area.from < at + same && at < area.to
      : Math.abs(area.from - from) < same && Math.abs(area.to - to) < same && area.low < at + same && at < area.high,
  );
  const area = areas[index];
  if (!area)
    throw new ShopError(`board ${mark}: cut ${cut.number} does not go right across a piece; a saw cannot make it`);
  const near = kind === 'crosscut' ? { ...area, to: at } : { ...area, high: at };
  const far =
    kind === 'crosscut'
      ? { ...area, from: Math.min(area.to, at + kerf) }
      : { ...area, low: Math.min(area.high, at + kerf) };
  areas.splice(index, 1, near, far);
  return [near, far];
}

function add(all: SetUp[], next: SetUp): void {
  const before = all.find(
    ({ machine, setting }) => machine === next.machine && Math.abs(setting - next.setting) < same,
  );
  if (before) before.pieces.push(...next.pieces);
  else all.push(next);
}

/** Crosscuts before rips before planing; in each the largest first, so that a stop only moves one way. */
function ordered(setUps: SetUp[]): SetUp[] {
  const rank = { 'crosscut stop': 0, 'rip fence': 1, planer: 2 };
  return [...setUps].sort((a, b) => rank[a.machine] - rank[b.machine] || b.setting - a.setting);
}
