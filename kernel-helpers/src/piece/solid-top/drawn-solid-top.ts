import type { DrawnPiece, Solid } from '../drawn-piece.js';
import type { SolidTop } from './solid-top.js';

/**
 * A solid top as it is drawn, its grain from left to right, its boards one behind another.
 *
 * @param top  as `sizeSolidTop` returns it; inches
 */
export function drawnSolidTop({ design, overall }: SolidTop): DrawnPiece {
  const { boards, inset, fixed } = design;
  const { length, width, height } = overall;
  const board = width / boards;
  const names = Array.from({ length: boards }, (_, index) => `board ${index + 1}`);
  const solids = names.map(
    (part, index): Solid => ({ part, x: [0, length], y: [index * board, (index + 1) * board], z: [0, height] }),
  );
  const middle = (boards - 1) / 2;
  return {
    name: 'the top',
    solids,
    sizes: [
      { view: 'plan', side: 'right', from: 0, to: board, what: 'board' },
      { view: 'plan', side: 'right', from: width - inset, to: width, what: 'slots at' },
      ...(fixed === 'middle'
        ? [{ view: 'plan', side: 'left', from: 0, to: width / 2, what: 'fixed at' } as const]
        : []),
    ],
    apart: Object.fromEntries(names.map((part, index) => [part, [0, (0.3 * (index - middle)) / boards, 0] as const])),
    assembly:
      'Edges are planed straight and glued, rings laid so that the boards do not all cup one way. The top is screwed fast along one line only; every other fastener sits in a slot.',
  };
}
