import type { DrawnPiece, Solid, Span } from '../drawn-piece.js';
import type { SizedBox } from './size-box.js';

/**
 * A sliding-lid box as it is drawn: four boards, the ends that stand proud, the bottom in its grooves, the lid with its
 * tongue. The sides run from end to end, as they do at their half pins. Tails and pins are left out.
 *
 * @param box  as `sizeBox` returns it; inches
 */
export function drawnBox({ overall, design }: Pick<SizedBox, 'overall' | 'design'>): DrawnPiece {
  const { stockThickness: t, proud, foot, bottomThickness, bottomGrooveDepth, bottomClearance } = design;
  const { lidThickness, tongueThickness, lidGrooveDepth, lidClearance } = design;
  const { width, length, height } = overall;
  const end = proud + t;
  const low = height - lidThickness;
  const inner: Span = [end, width - end];
  const reach = bottomGrooveDepth - bottomClearance / 2;
  const tongue = lidGrooveDepth - lidClearance;
  const boards: Solid[] = [
    { part: 'left side', x: [proud, end], y: [0, length], z: [0, height] },
    { part: 'right side', x: [width - end, width - proud], y: [0, length], z: [0, height] },
    { part: 'front', x: inner, y: [proud, end], z: [0, low] },
    { part: 'back', x: inner, y: [length - end, length - proud], z: [0, height] },
  ];
  // The ends of front and back, which stand past the sides' faces.
  const ends = boards.slice(2).flatMap((board): Solid[] => [
    { ...board, x: [0, proud] },
    { ...board, x: [width - proud, width] },
  ]);
  const floor = foot + bottomThickness;
  const open = (across: Span) => ({ view: 'front', across, up: [low, low + tongueThickness] }) as const;
  const panels: Solid[] = [
    {
      part: 'bottom',
      x: [end - reach, width - end + reach],
      y: [end - reach, length - end + reach],
      z: [foot, floor],
    },
    { part: 'lid', x: inner, y: [proud, length - end], z: [low, height] },
    {
      part: 'lid',
      x: [end - tongue, width - end + tongue],
      y: [proud, length - end + tongue],
      z: [low, low + tongueThickness],
    },
  ];
  return {
    name: 'the box',
    solids: [...boards, ...(proud > 0 ? ends : []), ...panels],
    looseSolids: [
      ...boards.map((board): Solid => (board.x === inner ? { ...board, x: [0, width] } : board)),
      ...panels,
    ],
    sizes: [
      { view: 'plan', side: 'below', from: end, to: width - end, what: 'inside' },
      { view: 'plan', side: 'right', from: end, to: length - end, what: 'inside' },
      { view: 'front', side: 'right', from: 0, to: low, what: 'front' },
      { view: 'right side', side: 'right', from: floor, to: floor + design.insideDepth, what: 'clear' },
    ],
    // The sides' grooves run out here, where the lid goes in.
    openings: [open([end - lidGrooveDepth, end]), open([width - end, width - end + lidGrooveDepth])],
    apart: {
      'left side': [-0.7, 0, 0],
      'right side': [0.7, 0, 0],
      front: [0, -0.5, 0],
      back: [0, 0.5, 0],
      bottom: [0, 0, -0.9],
      lid: [0, 0, 0.9],
    },
    assembly: 'The bottom slides into its grooves while the corners are closed; the lid goes in last, from the front.',
  };
}
