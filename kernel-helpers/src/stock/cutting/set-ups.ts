import { ShopError } from '../../measure/shop-error.js';
import { blankWords, partsIn, rippedWidth } from '../milling/blanks.js';
import type { MilledBlank } from '../milling/milled-blank.js';
import type { Panel } from '../milling/panels.js';
import type { RoughCut } from '../milling/rough-cut.js';
import type { BoardLayout, NumberedCut } from './board-layouts.js';

/** One setting of a machine, and all that is done while it stands there. In. */
export interface SetUp {
  stage: 'rough' | 'resawing' | 'planing' | 'ripping' | 'parting' | 'flattening' | 'final';
  machine: 'crosscut stop' | 'band saw fence' | 'rip fence' | 'planer';
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
 * All cuts and passes by machine and setting: stop, fence or thickness is set once, and all that is for it is done, as far as
 * the order of each board's cuts allows. Rough cuts come first; then blanks are planed and ripped to width whole, cut apart, and
 * parts brought to length: no saw is fed a part that is shorter than it takes. The setting of a rough cut is the size of the piece
 * that is kept. A rough board has no flat face yet for the table saw: it is ripped at the band saw.
 *
 * @param work.layouts  see `boardLayouts`; in
 * @param work.cut  see `roughCut`; nothing for sheets, which are sawn to size at once
 * @param work.milled  see `millingLoss`: which blanks are resawn before they are planed
 * @param work.kerf  of the saw, in
 * @returns planing and final sizes with the largest setting first, so that a stop only moves one way
 * @throws ShopError  a cut that does not go right across a piece: it cannot be sawn
 * @see common practice, no source
 */
export function setUps(work: {
  layouts: readonly BoardLayout[];
  cut?: Pick<RoughCut, 'rough' | 'toCut' | 'planer' | 'panels'>;
  milled?: readonly Pick<MilledBlank, 'blank' | 'resawn'>[];
  kerf: number;
}): SetUp[] {
  const { layouts, cut, milled = [], kerf } = work;
  const cuts = layouts.map((layout) => sawn(layout, kerf));
  const of = (stage: SetUp['stage']) => inTurn(cuts.map((board) => board.filter((cut) => cut.stage === stage)));
  const sawnThin = milled.flatMap(({ blank, resawn }): SetUp[] =>
    resawn
      ? [{ stage: 'resawing', machine: 'band saw fence', setting: resawn.thickness, pieces: [blankWords(blank)] }]
      : [],
  );
  return [
    ...of('rough'),
    ...together(sawnThin),
    ...(cut ? together(planed(cut)) : []),
    ...(cut ? together(ripped(cut)) : []),
    ...of('parting'),
    ...(cut ? together(flattened(cut)) : []),
    ...(cut ? together([...toLength(cut), ...trimmed(cut)]) : []),
  ];
}

function planed({ toCut, planer }: Pick<RoughCut, 'toCut' | 'planer'>): SetUp[] {
  return toCut.blanks.map((blank) => ({
    stage: 'planing',
    machine: 'planer',
    setting: blank.thickness,
    pieces: [
      `${blankWords(blank)}${blank.thickness < planer.leastThickness ? ' on a carrier board, whose thickness is added' : ''}`,
    ],
  }));
}

/** Panels once their glue has cured: those that go through the planer. */
function flattened({ panels }: Pick<RoughCut, 'panels'>): SetUp[] {
  return panels
    .filter(({ flattened: how }) => how === 'by planer')
    .map((panel) => ({
      stage: 'flattening',
      machine: 'planer',
      setting: panel.finished.thickness,
      pieces: [panelWords(panel)],
    }));
}

/** Panels at the size of their part. */
function trimmed({ panels }: Pick<RoughCut, 'panels'>): SetUp[] {
  return panels.flatMap((panel): SetUp[] => [
    { stage: 'final', machine: 'rip fence', setting: panel.finished.width, pieces: [panelWords(panel)] },
    { stage: 'final', machine: 'crosscut stop', setting: panel.finished.length, pieces: [panelWords(panel)] },
  ]);
}

const panelWords = ({ part, count }: Panel) => (count === 1 ? part : `${part}, ${count} pieces`);

/** Each blank at the width of its parts, but for boards of a panel, whose edges are jointed; where one is narrower than the others, it comes down by itself once they are apart. */
function ripped(cut: Pick<RoughCut, 'rough' | 'toCut'>): SetUp[] {
  return cut.toCut.blanks.flatMap((blank): SetUp[] => {
    const parts = partsIn(blank, cut);
    if (parts.some(({ panel }) => panel)) return [];
    const strip = parts.every((part) => part.strip);
    const how = strip ? ', as the strip that falls away from the fence: measured from the blade outward' : '';
    const pieces = [`${blankWords(blank)}${how}`];
    return [{ stage: 'ripping', machine: 'rip fence', setting: rippedWidth(parts), pieces }];
  });
}

function toLength(cut: Pick<RoughCut, 'rough' | 'toCut'>): SetUp[] {
  const single = cut.rough.filter(({ panel }) => !panel);
  return single.flatMap((part): SetUp[] => {
    const { name, count, finished } = part;
    const pieces = [count === 1 ? name : `${name}, ${count} pieces`];
    const narrower = cut.toCut.blanks
      .map((blank) => partsIn(blank, cut))
      .some((others) => others.includes(part) && finished.width < rippedWidth(others) - same);
    return [
      ...(narrower ? [{ stage: 'final', machine: 'rip fence', setting: finished.width, pieces } as const] : []),
      { stage: 'final', machine: 'crosscut stop', setting: finished.length, pieces },
    ];
  });
}

const alike = (a: SetUp, b: SetUp) => a.machine === b.machine && Math.abs(a.setting - b.setting) < same;

/** Largest setting first; final rips before crosscuts, so that a torn corner goes with the end. */
function together(all: readonly SetUp[]): SetUp[] {
  const list: SetUp[] = [];
  for (const next of all) {
    const before = list.find((setUp) => alike(setUp, next));
    if (before) before.pieces.push(...next.pieces);
    else list.push({ ...next, pieces: [...next.pieces] });
  }
  const last = ({ machine }: SetUp) => (machine === 'crosscut stop' ? 1 : 0);
  return list.sort((a, b) => last(a) - last(b) || b.setting - a.setting);
}

/**
 * Cuts of several boards with as few settings as their order allows. A board's cuts stay in the order of their numbers: a stop
 * measures from an end that the cut before has made.
 */
function inTurn(boards: readonly (readonly SetUp[])[]): SetUp[] {
  const waiting = boards.map((cuts) => [...cuts]);
  const list: SetUp[] = [];
  for (;;) {
    const heads = waiting.flatMap(([head]) => head ?? []);
    const first = ({ machine }: SetUp) => (machine === 'crosscut stop' ? 0 : 1);
    const [next] = heads.sort((a, b) => first(a) - first(b) || b.setting - a.setting);
    if (!next) return list;
    const pieces: string[] = [];
    for (const cuts of waiting) while (cuts[0] && alike(cuts[0], next)) pieces.push(...(cuts.shift()?.pieces ?? []));
    list.push({ ...next, pieces });
  }
}

/** Each cut of a board with its setting. */
function sawn(layout: BoardLayout, kerf: number): SetUp[] {
  const { board } = layout;
  const areas: Area[] = [{ from: 0, to: board.length, low: 0, high: board.width }];
  return layout.cuts.flatMap((cut): SetUp[] => {
    const [near, far] = part(areas, cut, kerf, board.mark);
    if (cut.trims) return [];
    const inside = (area: Area) =>
      layout.parts.filter(
        ({ fromEnd, fromEdge, length, width }) =>
          fromEnd >= area.from - same &&
          fromEnd + length <= area.to + same &&
          fromEdge >= area.low - same &&
          fromEdge + width <= area.high + same,
      );
    const kept = inside(near).length > 0 || inside(far).length === 0 ? near : far;
    const names = inside(kept).map(({ name }) => name);
    const rough = !board.plywood && !cut.afterPlaning;
    return [
      {
        stage: cut.afterPlaning ? 'parting' : 'rough',
        machine: cut.kind === 'crosscut' ? 'crosscut stop' : rough ? 'band saw fence' : 'rip fence',
        setting: cut.kind === 'crosscut' ? kept.to - kept.from : kept.high - kept.low,
        pieces: [`board ${board.mark}: cut ${cut.number} (${names.join(', ') || 'offcut'})`],
      },
    ];
  });
}

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
