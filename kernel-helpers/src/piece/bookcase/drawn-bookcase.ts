import type { DrawnPiece, Solid, SolidBlock, Span } from '../drawn-piece.js';
import type { Bookcase } from './bookcase.js';

/**
 * A bookcase carcase as it is drawn: everything where it stands, with its dadoes and the rabbet of the back.
 *
 * @param bookcase  as `sizeBookcase` returns it; inches
 */
export function drawnBookcase({ design, dadoes, compartment, overall }: Bookcase): DrawnPiece {
  const { shelfEnds, thickness: t, plinth, dadoDepth, backThickness, backRabbet } = design;
  const { width, height, length: depth } = overall;
  const inFront = depth - backThickness;
  const across: Span = [t - dadoDepth, width - t + dadoDepth];
  const underTop = height - t;
  // Older records say nothing of it.
  const held =
    shelfEnds === 'sliding dovetail'
      ? 'shelves that end in dovetails are slid in from behind instead'
      : `then the ends are held by ${shelfEnds ?? 'pegs'}`;
  const lap = underTop + backRabbet;

  /** What is cut out of the left side, from its inside face; the right side has the same, turned round. */
  const sideCuts: SolidBlock[] = [
    ...dadoes.map((from): SolidBlock => ({ x: [t - dadoDepth, t], y: [0, inFront], z: [from, from + t] })),
    // The top's rabbet goes on over the back.
    { x: [t - dadoDepth, t], y: [inFront, depth], z: [lap, height] },
    { x: [t - backRabbet, t], y: [inFront, depth], z: [plinth, lap] },
    ...(dadoDepth > backRabbet
      ? [{ x: [t - dadoDepth, t - backRabbet], y: [inFront, depth], z: [underTop, lap] } as const]
      : []),
  ];
  const turned = ({ x, y, z }: SolidBlock): SolidBlock => ({ x: [width - x[1], width - x[0]], y, z });
  const shelves = dadoes.slice(0, -1).map(
    (from, index): Solid => ({
      part: index === 0 ? 'bottom' : 'shelf',
      x: across,
      y: [0, inFront],
      z: [from, from + t],
    }),
  );
  const backAcross: Span = [t - backRabbet, width - t + backRabbet];
  return {
    name: 'the bookcase',
    solids: [
      { part: 'left side', x: [0, t], y: [0, depth], z: [0, height], cuts: sideCuts },
      { part: 'right side', x: [width - t, width], y: [0, depth], z: [0, height], cuts: sideCuts.map(turned) },
      ...shelves,
      {
        part: 'top',
        x: across,
        y: [0, depth],
        z: [underTop, height],
        cuts: [{ x: backAcross, y: [inFront, depth], z: [underTop, lap] }],
      },
      { part: 'back', x: backAcross, y: [inFront, depth], z: [plinth, lap] },
    ],
    sizes: [
      { view: 'front', side: 'below', from: t, to: width - t, what: 'inside' },
      { view: 'front', side: 'right', from: plinth + t, to: plinth + t + compartment.height, what: 'clear' },
      ...(plinth > 0 ? [{ view: 'front', side: 'right', from: 0, to: plinth, what: 'plinth' } as const] : []),
      { view: 'right side', side: 'above', from: 0, to: compartment.depth, what: 'shelf' },
    ],
    apart: {
      'left side': [-0.45, 0, 0],
      'right side': [0.45, 0, 0],
      top: [0, 0, 0.25],
      bottom: [0, 0, -0.15],
      back: [0, 0.6, 0],
    },
    assembly: `Bottom and shelves go into the dadoes of one side, the top into the rabbet at its upper end, the other side onto their ends; ${held}; the back, screwed into its rabbet all round, makes the carcase square.`,
  };
}
