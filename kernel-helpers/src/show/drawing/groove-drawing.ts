import type { GrooveRun } from '../../joints/groove-runs.js';
import { ShopError } from '../../measure/shop-error.js';
import type { SizedBox } from '../../piece/box/sized-box.js';
import { capital } from '../kit/capital.js';
import type { DisplayItem } from '../kit/display.js';
import { figure } from '../kit/figure.js';
import type { Dimension, Side } from './kit/dimension.js';
import { type DrawingOptions, dimensionText, lengthText } from './kit/lengths.js';
import { drawRows } from './kit/sheet.js';
import { rectangle, type Shape, type View } from './kit/view.js';

/** What the drawing needs of a sized box; see {@link SizedBox}. Inches. */
export type GroovedBox = Pick<SizedBox, 'parts' | 'markingGauge'>;

/** Wood that is taken away. */
const grey = '#d4d4d4';

/**
 * Each board's inside face with its grooves, a figure each: where they run out, where they stop, and why.
 *
 * @param box  as `sizeBox` returns it; inches
 * @param runs  as `grooveRuns` returns them; inches
 * @param options  how sizes are shown
 * @throws ShopError  when a run names a board that the box does not have
 */
export function grooveDrawing(box: GroovedBox, runs: readonly GrooveRun[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  const size = dimensionText(options);
  const boards = [...new Set(runs.map(({ board }) => board))];
  const drawn = boards.map((board) => {
    const part = box.parts.find(({ name }) => name === board);
    if (!part)
      throw new ShopError(
        `runs: a groove on the ${board} given; possible: ${box.parts.map(({ name }) => name).join(', ')}`,
      );
    const own = runs.filter((run) => run.board === board);
    const view = boardView({ board, length: part.length, height: part.width, gauge: box.markingGauge }, own, size);
    return figure({
      ...drawRows([[view]], { height: 420 }),
      alt: own.map((run) => `${capital(board)}: ${runText(run, show)}`).join(' '),
      caption: `${own.map((run) => runText(run, show)).join(' ')} To scale; thin lines are the baselines of the joint.`,
    });
  });
  return { mime: 'text/html', text: drawn.map(({ text }) => text).join('') };
}

interface GroovedBoard {
  board: GrooveRun['board'];
  length: number;
  height: number;
  gauge: number;
}

function boardView(board: GroovedBoard, runs: readonly GrooveRun[], show: (inches: number) => string): View {
  const { length, height, gauge } = board;
  const upwards = [...runs].sort((a, b) => a.fromBottom - b.fromBottom);
  const drawn = upwards.map(
    (run, i) => ({ run, side: i > 0 && i === upwards.length - 1 ? 'above' : 'below' }) as const,
  );
  const stops = drawn.flatMap(({ run, side }) => [
    ...(run.from > 0 ? [{ side, from: 0, to: run.from, at: run.from, run }] : []),
    ...(run.to < length ? [{ side, from: run.to, to: length, at: run.to, run }] : []),
  ]);
  const levels = upwards.flatMap(({ fromBottom, width }, i): Dimension[] => {
    const under = upwards[i - 1];
    const from = under ? under.fromBottom + under.width : 0;
    return [upright('left', from, fromBottom), upright('left', fromBottom, fromBottom + width)].filter(
      ({ from: low, to }) => to > low,
    );
  });
  const baselines = [gauge, length - gauge].map((x): Shape => ({ points: vertical(x, 0, height), type: 'thin' }));
  return {
    name: names[board.board] ?? `Inside of the ${board.board}`,
    width: length,
    height,
    shapes: [
      ...upwards.map(
        ({ from, to, fromBottom, width }): Shape => ({
          points: rectangle([from, to], [fromBottom, fromBottom + width]),
          type: 'outline',
          fill: grey,
        }),
      ),
      ...baselines,
      ...stops.map(({ side, at, run }): Shape => {
        const [from, to] = side === 'above' ? [run.fromBottom + run.width, height] : [0, run.fromBottom];
        return { points: vertical(at, from, to), type: 'thin' };
      }),
      { points: rectangle([0, length], [0, height]), type: 'outline', fill: 'none' },
    ],
    dimensions: [
      ...stops.map(({ side, from, to }): Dimension => ({ side, from, to, text: show(to - from) })),
      { side: 'below', from: 0, to: length, text: show(length) },
      ...levels,
      upright('right', 0, height),
    ],
  };

  function upright(side: Side, from: number, to: number): Dimension {
    return { side, from, to, text: show(to - from) };
  }
}

/** A side is seen with its front at the left: so stands the left one, and the right one is its mirror image. */
const names: Partial<Record<GrooveRun['board'], string>> = {
  side: 'Inside of the left side, front at the left (the right side is its mirror image)',
};

function runText(run: GrooveRun, show: (inches: number) => string): string {
  const [first, last] = run.ends;
  const [near, far] = run.board === 'side' ? ['front', 'back'] : ['left', 'right'];
  const ends = first === last ? `${first} at both ends` : `${first} at the ${near} end, ${last} at the ${far} end`;
  return `Groove for the ${run.groove}, ${show(run.width)} wide and ${show(run.depth)} deep, ${ends}. It ${run.why}.`;
}

function vertical(x: number, from: number, to: number): Shape['points'] {
  return [
    [x, from],
    [x, to],
  ];
}
