import { ShopError } from '../../measure/shop-error.js';
import type { Board } from '../boards/boards.js';
import type { Cut, CutBoardPlan, CutPlan, Offcut, PlacedPart } from '../cut-plan/plan.js';
import type { Blank } from '../milling/blanks.js';
import type { TrimmedBoard } from '../milling/trimmed-boards.js';
import { type TimedCut, wholeBlanks } from '../milling/whole-blanks.js';

/** A part on its board, with the number it has on drawing and label. */
export interface NumberedPart extends PlacedPart {
  number: number;
}

/** A cut with its place in the order of cutting, whether it trims sapwood or ends, and whether it waits for the planer. */
export interface NumberedCut extends TimedCut {
  number: number;
  trims: boolean;
}

/** A board with everything that comes out of it, measured on the whole board from its marked end and lower edge. In. */
export interface BoardLayout {
  board: Board;
  parts: NumberedPart[];
  cuts: NumberedCut[];
  offcuts: Offcut[];
}

/**
 * A cut plan on the boards as they lie there: places are counted from the marked end and the lower edge of the whole board, the
 * cuts that trim it come first, blanks stay whole until they are planed, parts are numbered through over all boards and cuts on
 * each.
 *
 * @param layout.plan  in
 * @param layout.boards  the trimmed boards that it was made for; in
 * @param layout.blanks  see `blanksOf`: what is planed before it is cut apart
 * @param layout.kerf  of the saw, in
 * @returns one for each board that is used, in the order of the plan
 * @throws ShopError  a plan for a board that is not among them
 */
export function boardLayouts(layout: {
  plan: Pick<CutPlan, 'boards'>;
  boards: readonly TrimmedBoard[];
  blanks?: readonly Blank[];
  kerf: number;
}): BoardLayout[] {
  let parts = 0;
  return layout.plan.boards.map((planned) => {
    const trimmed = layout.boards.find(({ board }) => board.mark === planned.board.mark);
    if (!trimmed)
      throw new ShopError(
        `plan: board ${planned.board.mark} given; possible: ${layout.boards.map(({ board }) => board.mark).join(', ')}`,
      );
    const { board, trim } = trimmed;
    const moved = <T extends { fromEnd: number; fromEdge: number }>(each: T): T => ({
      ...each,
      fromEnd: each.fromEnd + trim.start,
      fromEdge: each.fromEdge + trim.lower,
    });
    const numbered = [...planned.parts]
      .sort((a, b) => a.fromEnd - b.fromEnd || a.fromEdge - b.fromEdge)
      .map((part) => moved({ ...part, number: ++parts }));
    const whole = wholeBlanks(planned, layout.blanks ?? [], layout.kerf);
    const cuts = [
      ...trimCuts(trimmed, layout.kerf).map((cut) => ({ ...cut, trims: true, afterPlaning: false })),
      ...whole.cuts.map((cut) => ({ ...movedCut(cut, trimmed), trims: false, afterPlaning: cut.afterPlaning })),
    ];
    return {
      board,
      parts: numbered,
      cuts: cuts.map((cut, index) => ({ ...cut, number: index + 1 })),
      offcuts: whole.offcuts.map(({ fromEnd, fromEdge, length, width }) => moved({ fromEnd, fromEdge, length, width })),
    };
  });
}

function movedCut(cut: CutBoardPlan['cuts'][number], { trim }: TrimmedBoard): Cut {
  const [along, across] = cut.kind === 'crosscut' ? [trim.start, trim.lower] : [trim.lower, trim.start];
  return { kind: cut.kind, at: cut.at + along, from: cut.from + across, to: cut.to + across };
}

/** Ends first, then edges between them; the kerf falls in what is trimmed off. */
function trimCuts({ board, trim }: TrimmedBoard, kerf: number): Cut[] {
  const crosscuts = [
    ...(trim.start > 0 ? [Math.max(0, trim.start - kerf)] : []),
    ...(trim.end > 0 ? [board.length - trim.end] : []),
  ];
  const rips = [
    ...(trim.lower > 0 ? [Math.max(0, trim.lower - kerf)] : []),
    ...(trim.upper > 0 ? [board.width - trim.upper] : []),
  ];
  return [
    ...crosscuts.map((at) => ({ kind: 'crosscut' as const, at, from: 0, to: board.width })),
    ...rips.map((at) => ({ kind: 'rip' as const, at, from: trim.start, to: board.length - trim.end })),
  ];
}
