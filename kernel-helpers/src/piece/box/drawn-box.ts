import type { DrawnPiece, Solid, SolidBlock, Span } from '../drawn-piece.js';
import type { Part, SizedBox } from './sized-box.js';

/**
 * A sliding-lid box put together: four boards with their grooves, the ends that stand proud, the bottom in its grooves, the
 * lid with its tongue. The sides run from end to end, as they do at their half pins. Tails and pins are left out.
 *
 * @param box  as `sizeBox` returns it; inches
 */
export function drawnBox({ overall, design, parts }: Pick<SizedBox, 'overall' | 'design' | 'parts'>): DrawnPiece {
  const {
    stockThickness: t,
    proud,
    foot,
    bottomThickness,
    bottomGrooveDepth,
    tongueThickness,
    lidGrooveDepth,
  } = design;
  const { width, length, height } = overall;
  const end = proud + t;
  const low = height - design.lidThickness;
  const floor = foot + bottomThickness;
  const shoulder = low + tongueThickness;
  const inner: Span = [end, width - end];
  const sideCuts: SolidBlock[] = [
    {
      x: [end - bottomGrooveDepth, end],
      y: [end - bottomGrooveDepth, length - end + bottomGrooveDepth],
      z: [foot, floor],
    },
    { x: [end - lidGrooveDepth, end], y: [0, length - end + lidGrooveDepth], z: [low, shoulder] },
  ];
  const turned = ({ x, ...rest }: SolidBlock): SolidBlock => ({ x: [width - x[1], width - x[0]], ...rest });
  const intoBack = (depth: number, z: Span): SolidBlock => ({ x: inner, y: [length - end, length - end + depth], z });
  const frontCut: SolidBlock = { x: inner, y: [end - bottomGrooveDepth, end], z: [foot, floor] };
  const backCuts = [intoBack(bottomGrooveDepth, [foot, floor]), intoBack(lidGrooveDepth, [low, shoulder])];
  const boards: Solid[] = [
    { part: 'left side', x: [proud, end], y: [0, length], z: [0, height], cuts: sideCuts },
    { part: 'right side', x: [width - end, width - proud], y: [0, length], z: [0, height], cuts: sideCuts.map(turned) },
    { part: 'front', x: inner, y: [proud, end], z: [0, low], cuts: [frontCut] },
    { part: 'back', x: inner, y: [length - end, length - proud], z: [0, height], cuts: backCuts },
  ];
  // The ends of front and back, which stand past the sides' faces.
  const ends = boards.slice(2).flatMap(({ cuts: _cuts, ...board }): Solid[] => [
    { ...board, x: [0, proud] },
    { ...board, x: [width - proud, width] },
  ]);
  const open = (across: Span) => ({ view: 'front', across, up: [low, shoulder] }) as const;
  const sized = (name: Part['name']) => parts.find((part) => part.name === name) as Part;
  const middle = (whole: number, size: number): Span => [(whole - size) / 2, (whole + size) / 2];
  const bottom = sized('bottom');
  const [across, along] =
    bottom.grain === 'side to side' ? [bottom.length, bottom.width] : [bottom.width, bottom.length];
  const lid = sized('lid');
  const [left, right] = middle(width, lid.width);
  const panels: Solid[] = [
    { part: 'bottom', x: middle(width, across), y: middle(length, along), z: [foot, floor] },
    // What the rabbets, as wide as the groove is deep, leave of the lid over its tongue.
    {
      part: 'lid',
      x: [left + lidGrooveDepth, right - lidGrooveDepth],
      y: [proud, proud + lid.length - lidGrooveDepth],
      z: [shoulder, height],
    },
    { part: 'lid', x: [left, right], y: [proud, proud + lid.length], z: [low, shoulder] },
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
