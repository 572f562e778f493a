import type { GridCutting, GridPlace, GridSection, GridStrip } from './grid-job.js';
import type { Cut, CutBoard, CutBoardPlan, Defect, Offcut, PlacedPart } from './plan.js';
import type { OnGrid, Row } from './to-grid.js';

interface Box {
  x1: number;
  x2: number;
  y1: number;
  y2: number;
}

/**
 * The cuts of one board in the order in which they are made, and what comes out: sections are crosscut from the marked end;
 * each is ripped into strips from its lower edge; each strip is crosscut into parts; a part narrower than its strip is ripped once.
 *
 * @param cutting  the board on the grid
 * @param take  gives the next real part, or sequence, for a part of the grid
 * @internal
 */
export function cutList(
  grid: OnGrid,
  cutting: GridCutting,
  board: CutBoard,
  least: { length: number; width: number },
  take: (part: number) => Row,
): CutBoardPlan {
  const { kerf, step, job } = grid;
  const of = job.boards[cutting.board] as (typeof job.boards)[number];
  const whole: Box = { x1: 0, x2: of.length - kerf, y1: 0, y2: of.width - kerf };
  const cuts: Cut[] = [];
  const parts: PlacedPart[] = [];
  const left: Box[] = [];
  const crosscut = (at: number, within: Box) => {
    if (at < within.x2) cuts.push({ kind: 'crosscut', at: at * step, from: within.y1 * step, to: within.y2 * step });
  };
  const rip = (at: number, within: Box) => {
    if (at < within.y2) cuts.push({ kind: 'rip', at: at * step, from: within.x1 * step, to: within.x2 * step });
  };
  const keep = (box: Box) => {
    if (box.x2 > box.x1 && box.y2 > box.y1) left.push(box);
  };

  const cutPart = (place: GridPlace, strip: Box): void => {
    const size = job.parts[place.part] as (typeof job.parts)[number];
    const atLow = place.y === strip.y1;
    const top = place.y + size.width - kerf;
    let x = place.x;
    for (const member of take(place.part).members) {
      const end = x + member.length;
      const y = atLow ? place.y : top - member.width;
      const piece = { ...strip, x1: x, x2: end };
      crosscut(end, { ...strip, x1: x });
      if (y + member.width < strip.y2 && atLow) {
        rip(y + member.width, piece);
        keep({ ...piece, y1: y + member.width + kerf });
      } else if (!atLow && y > strip.y1) {
        rip(y - kerf, piece);
        keep({ ...piece, y2: y - kerf });
      }
      parts.push({
        name: member.part.name,
        fromEnd: x * step,
        fromEdge: y * step,
        length: member.length * step,
        width: member.width * step,
      });
      x = end + kerf;
    }
  };

  const cutStrip = (strip: GridStrip, section: Box): void => {
    const box: Box = { x1: section.x1, x2: section.x2, y1: strip.y1, y2: Math.min(strip.y2 - kerf, section.y2) };
    let x = section.x1;
    for (const place of strip.places) {
      if (place.x > x) {
        crosscut(place.x - kerf, { ...box, x1: x });
        keep({ ...box, x1: x, x2: place.x - kerf });
      }
      cutPart(place, box);
      x = place.x + (job.parts[place.part]?.length as number);
    }
    keep({ ...box, x1: x });
  };

  const cutSection = (section: GridSection, x2: number): void => {
    const box: Box = { ...whole, x1: section.x1, x2 };
    const strips: GridStrip[] = [];
    let y = 0;
    for (const strip of section.strips) {
      if (strip.y1 > y) {
        rip(strip.y1 - kerf, { ...box, y1: y });
        keep({ ...box, y1: y, y2: strip.y1 - kerf });
      }
      rip(strip.y2 - kerf, { ...box, y1: strip.y1 });
      strips.push(strip);
      y = strip.y2;
    }
    keep({ ...box, y1: y });
    for (const strip of strips) cutStrip(strip, box);
  };

  // All sections first: that is the order at the saw.
  for (const section of cutting.sections) crosscut(section.x2 - kerf, { ...whole, x1: section.x1 });
  for (const section of cutting.sections) cutSection(section, Math.min(section.x2 - kerf, whole.x2));
  keep({ ...whole, x1: cutting.sections.at(-1)?.x2 ?? 0 });
  return { board, parts, cuts, offcuts: left.map((box) => offcut(box, step, board)).filter(isWorthKeeping(least)) };
}

const isWorthKeeping = (least: { length: number; width: number }) => (each: Offcut) =>
  each.length >= least.length - 1e-9 && each.width >= least.width - 1e-9;

function offcut({ x1, x2, y1, y2 }: Box, step: number, board: CutBoard): Offcut {
  const [fromEnd, fromEdge, length, width] = [x1 * step, y1 * step, (x2 - x1) * step, (y2 - y1) * step];
  const defects = board.defects.flatMap((each): Defect[] => {
    const near = Math.max(each.fromEnd, fromEnd);
    const far = Math.min(each.fromEnd + each.length, fromEnd + length);
    const low = Math.max(each.fromEdge, fromEdge);
    const high = Math.min(each.fromEdge + each.width, fromEdge + width);
    if (far - near <= 1e-9 || high - low <= 1e-9) return [];
    return [
      { kind: each.kind, fromEnd: near - fromEnd, fromEdge: low - fromEdge, length: far - near, width: high - low },
    ];
  });
  return { fromEnd, fromEdge, length, width, defects };
}
