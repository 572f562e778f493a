import type { BoardLayout } from '../../stock/cutting/board-layouts.js';
import type { SetUp } from '../../stock/cutting/set-ups.js';
import { type DrawingOptions, lengthText } from '../drawing/kit/lengths.js';
import type { DisplayItem } from '../kit/display.js';
import { right, table } from '../kit/table.js';

/** The parts of a cut plan by the numbers of its drawing: sizes as cut out rough, and where each lies. */
export function partTable(layouts: readonly BoardLayout[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  return table({
    columns: [
      right('No.'),
      'Part',
      'Board',
      right('Length'),
      right('Width'),
      right('From the end'),
      right('From the edge'),
    ],
    rows: layouts.flatMap(({ board, parts }) =>
      parts.map(({ number, name, length, width, fromEnd, fromEdge }) => [
        String(number),
        name,
        board.mark,
        show(length),
        show(width),
        show(fromEnd),
        show(fromEdge),
      ]),
    ),
    caption: 'Parts by their numbers, as cut out rough; places from the marked end and the lower edge',
  });
}

/** The cuts of each board in the order they are made, with the place of the saw's near side. */
export function cutTable(layouts: readonly BoardLayout[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  return table({
    columns: ['Board', right('Cut'), 'Which', right('At'), 'Over'],
    rows: layouts.flatMap(({ board, cuts }) =>
      cuts.map(({ number, kind, at, from, to, trims, afterPlaning }) => [
        board.mark,
        String(number),
        `${kind}${trims ? ', trims' : ''}${afterPlaning ? ', after planing and ripping' : ''}`,
        `${show(at)} from the ${kind === 'crosscut' ? 'end' : 'edge'}`,
        `${show(from)} to ${show(to)}`,
      ]),
    ),
    caption:
      "Cuts in order; the saw's near side stands at the place given, its kerf beyond it. Places are those of the board as it came: what a stop or fence stands at once an end is off is under set-ups",
  });
}

/** Settings of the machines, each set once, with all that is cut or planed at it. */
export function setUpTable(list: readonly SetUp[], options: DrawingOptions = {}): DisplayItem {
  const show = lengthText(options);
  return table({
    columns: ['Stage', 'Machine', right('Set to'), 'What is done at it'],
    rows: list.map(({ stage, machine, setting, pieces }) => [stage, machine, show(setting), pieces.join('; ')]),
    caption: 'Set each stop, fence or thickness once and do all that it is for',
  });
}
