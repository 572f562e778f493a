import * as z from 'zod';
import type { Finding } from '../../measure/finding.js';
import { evaluate, type Formula } from '../../measure/formula.js';
import { readParameters, size } from '../../measure/parameters.js';
import { judge, rounding, tape } from '../../measure/verdict.js';
import type { PiecePart } from '../../piece/piece.js';
import type { Board } from '../boards/boards.js';
import type { Blank } from './blanks.js';
import type { Planer } from './planer.js';
import type { ReadAllowances } from './rough-part.js';

/** Boards that a panel is glued up from. */
export const panelBoardsFormula: Formula<'W' | 'a' | 'w'> = {
  name: 'Boards in a panel',
  result: { tex: 'n', meaning: 'boards, glued edge to edge', unit: '' },
  expression: 'ceil((W + a) / w - 1e-9)',
  symbols: {
    W: { meaning: 'width of the finished panel', unit: 'in', min: 0 },
    a: { meaning: 'what is left on its width for the trim', unit: 'in', min: 0 },
    w: { meaning: 'widest good board', unit: 'in', min: 0.25 },
  },
  source: 'common practice, no source',
};

/** Width at which each board of a panel is ripped rough: the panel as glued, and what jointing takes at each of its joints. */
export const panelBoardWidthFormula: Formula<'W' | 'a' | 'n' | 'j'> = {
  name: 'Rough width of a board in a panel',
  result: { tex: 'b', meaning: 'width of each board, ripped rough', unit: 'in' },
  expression: '(W + a + (n - 1) * j) / n',
  symbols: {
    W: { meaning: 'width of the finished panel', unit: 'in', min: 0 },
    a: { meaning: 'what is left on its width for the trim', unit: 'in', min: 0 },
    n: { meaning: 'boards in it', unit: '', min: 1 },
    j: { meaning: 'what jointing takes of a joint, both edges together', unit: 'in', min: 0 },
  },
  source: 'common practice, no source',
};

interface Measures {
  length: number;
  width: number;
  thickness: number;
}

/** A part that is glued up edge to edge: one part in the piece, several boards at the saw and the planer. In. */
export interface Panel {
  /** Name of the finished part, and how many there are of it. */
  part: string;
  count: number;
  /** In each. */
  boards: number;
  /** In all of them together. */
  edgeJoints: number;
  /** One of its boards: its name, how wide it is ripped rough, and how wide it is once its edges are jointed. */
  board: { name: string; roughWidth: number; width: number };
  /** As it comes out of the clamps. */
  glued: Measures;
  finished: Measures;
  /** How it is flattened once the glue has cured: by hand where it is wider than the planer. */
  flattened: 'by planer' | 'by hand';
}

const fields = z.object({
  widestBoard: size({ least: 1, most: 36, why: 'widest part cut from one board' }).default(36),
});

/**
 * The parts that are wider than any good board, as the panels they are glued up from.
 *
 *   boards = (width + trim) / widest board, rounded up          edge joints = boards - 1
 *
 * The widest good board is the one stated, and none wider than is there: of the boards long and thick enough for a part, the
 * widest without its sapwood, less what the rough rip leaves on. A part that says how many boards it is made of has so many.
 *
 * @param wide.parts  finished; plywood is left out
 * @param wide.widestBoard  widest part cut from one board, text or in; 36 in unless told otherwise
 * @param wide.boards  in hand or to be had; in
 * @param wide.allowances  read; `panelWidth` and `panelThickness` are left on a glued panel, `jointing` goes off each joint
 * @returns one for each part that is glued up; in
 * @throws ShopError  a width that is not possible
 * @see {@link panelBoardsFormula}, {@link panelBoardWidthFormula}
 */
export function panelsOf(wide: {
  parts: readonly PiecePart[];
  widestBoard?: number | string | undefined;
  boards?: readonly Board[] | undefined;
  allowances: ReadAllowances;
  planer: Pick<Planer, 'widest'>;
}): Panel[] {
  const { parts, boards = [], allowances, planer } = wide;
  const stated = readParameters(fields, { widestBoard: wide.widestBoard }).widestBoard;
  const { panelWidth: a, jointing: j } = allowances;
  return parts
    .filter(({ material }) => material === 'wood')
    .flatMap((part): Panel[] => {
      const W = part.widthBefore ?? part.width;
      const w = Math.min(stated, widestFor(part, boards, allowances));
      const needed = W > w + rounding ? evaluate(panelBoardsFormula, { W, a, w }) : 1;
      const n = part.boards ?? needed;
      if (n < 2) return [];
      const { count, length, thickness } = part;
      const glued = {
        length: length + allowances.length,
        width: W + a,
        thickness: thickness + allowances.panelThickness,
      };
      return [
        {
          part: part.name,
          count,
          boards: n,
          edgeJoints: count * (n - 1),
          board: {
            name: `${part.name} board`,
            roughWidth: evaluate(panelBoardWidthFormula, { W, a, n, j }),
            width: glued.width / n,
          },
          glued,
          finished: { length, width: W, thickness },
          flattened: glued.width <= planer.widest + rounding ? 'by planer' : 'by hand',
        },
      ];
    });
}

/** Of the boards long and thick enough for a part the widest it can be cut from, whatever its width; no limit where there is none. */
function widestFor(
  part: PiecePart,
  boards: readonly Board[],
  { length, width }: Pick<ReadAllowances, 'length' | 'width'>,
): number {
  const widths = boards
    .filter((board) => board.length >= part.length + length && board.thickness > part.thickness)
    .map((board) => board.width - (board.sapwoodLower ?? 0) - (board.sapwoodUpper ?? 0) - width);
  return widths.length > 0 ? Math.max(1, ...widths) : Infinity;
}

/** Whether the planer takes the panels once they are glued. @internal */
export function panelFindings(panels: readonly Panel[], planer: Pick<Planer, 'widest'>): Finding[] {
  if (panels.length === 0) return [];
  const wide = panels.filter(({ flattened }) => flattened === 'by hand');
  const words = (panel: Panel) => `${panel.part} ${tape(panel.glued.width)}`;
  return [
    {
      rule: 'glued panels narrow enough for the planer',
      verdict: judge(wide.length === 0, 'watch'),
      figures: `${(wide.length > 0 ? wide : panels).map(words).join(', ')} as glued; the planer takes ${tape(planer.widest)}`,
      reason: 'a wider panel does not go through, and boards planed to size before they are glued do not stay level',
      change:
        'flatten them with a hand plane, as the hours here have it, with a drum sander, or at a shop with a wider planer',
    },
  ];
}

/** How many panels there are, and how many square feet of their faces are flattened by hand. */
export function panelCounts(panels: readonly Pick<Panel, 'count' | 'edgeJoints' | 'glued' | 'flattened'>[]): {
  edgeJoints: number;
  byPlaner: number;
  squareFeetByHand: number;
} {
  const sum = (of: typeof panels, value: (panel: (typeof panels)[number]) => number) =>
    of.reduce((total, panel) => total + value(panel), 0);
  const byHand = panels.filter(({ flattened }) => flattened === 'by hand');
  return {
    edgeJoints: sum(panels, ({ edgeJoints }) => edgeJoints),
    byPlaner: sum(panels, ({ flattened, count }) => (flattened === 'by planer' ? count : 0)),
    squareFeetByHand: sum(byHand, ({ count, glued }) => (2 * count * glued.length * glued.width) / 144),
  };
}

/**
 * Thickness a part is milled to before anything is cut into it: of one that is glued up, once it is flattened.
 *
 * @param stock  the decision `stock`; nothing where there is none yet
 * @returns in; nothing where the part is not cut from boards
 */
export function milledThickness(
  stock: { panels?: readonly Panel[]; toCut: { blanks: readonly Blank[] } } | undefined,
  part: string,
): number | undefined {
  const panel = stock?.panels?.find((each) => each.part === part);
  const blank = stock?.toCut.blanks.find(({ parts }) =>
    parts.some((name) => name === part || name.startsWith(`${part} `)),
  );
  return panel?.finished.thickness ?? blank?.thickness;
}
