import type { DrawnPiece, Solid, SolidBlock, Span } from '../drawn-piece.js';
import type { PiecePart } from '../piece.js';
import type { Drawer } from './drawer.js';

/**
 * A drawer as it is drawn. Where boards cross at a corner the block is the side's: the dovetails share it out.
 *
 * @param drawer  as `sizeDrawer` returns it; inches
 */
export function drawnDrawer({ design, inside, overall, parts }: Drawer): DrawnPiece {
  const { sideThickness: t, frontThickness: front, lap, bottomThickness, bottomGrooveDepth, bottomGrooveUp } = design;
  const { width, height, length: depth } = overall;
  const up: Span = [bottomGrooveUp, bottomGrooveUp + bottomThickness];
  const groove = front - bottomGrooveDepth;
  const floor = parts.find(({ name }) => name === 'drawer bottom') as PiecePart;
  const bottomDepth = floor.grain === 'side to side' ? floor.width : floor.length;
  const reach = bottomGrooveDepth - design.bottomClearance / 2;
  const whole: Span = [0, height];
  const turned = ({ x, y, z }: SolidBlock): SolidBlock => ({ x: [width - x[1], width - x[0]], y, z });

  const sideCuts: SolidBlock[] = [{ x: [t - bottomGrooveDepth, t], y: [Math.max(lap, groove), depth], z: up }];
  const behindLap: SolidBlock = { x: [t, width - t], y: [Math.max(lap, groove), front], z: up };
  // A groove deeper than the tails reaches on into the lap.
  const intoLap: SolidBlock = { x: [t - bottomGrooveDepth, width - t + bottomGrooveDepth], y: [groove, lap], z: up };
  const sides: Solid[] = [
    { part: 'left side', x: [0, t], y: [lap, depth], z: whole, cuts: sideCuts },
    { part: 'right side', x: [width - t, width], y: [lap, depth], z: whole, cuts: sideCuts.map(turned) },
  ];
  const bottom: Solid = { part: 'bottom', x: [t - reach, width - t + reach], y: [groove, groove + bottomDepth], z: up };
  const back: Solid = { part: 'back', x: [t, width - t], y: [depth - t, depth], z: [up[1], height] };
  return {
    name: 'the drawer',
    solids: [
      ...sides,
      { part: 'front', x: [0, width], y: [0, lap], z: whole, cuts: groove < lap ? [intoLap] : [] },
      { part: 'front', x: [t, width - t], y: [lap, front], z: whole, cuts: [behindLap] },
      back,
      bottom,
    ],
    looseSolids: [
      ...sides,
      { part: 'front', x: [0, width], y: [0, front], z: whole },
      { ...back, x: [0, width] },
      bottom,
    ],
    sizes: [
      { view: 'plan', side: 'below', from: t, to: width - t, what: 'inside' },
      { view: 'plan', side: 'right', from: front, to: front + inside.length, what: 'inside' },
      { view: 'right side', side: 'right', from: up[1], to: height, what: 'clear' },
    ],
    apart: {
      'left side': [-0.6, 0, 0],
      'right side': [0.6, 0, 0],
      front: [0, -0.5, 0],
      back: [0, 0.5, 0],
      bottom: [0, 0, -0.7],
    },
    assembly:
      'The four corners are glued and squared first; the bottom slides in from behind, under the back, and is held by a screw.',
  };
}
