import type { DrawnPiece, Solid, SolidBlock, Span } from '../drawn-piece.js';
import type { FrameAndPanel } from './frame-and-panel.js';

/**
 * A frame with its panel as it is drawn. The groove runs through from end to end; tenons are as thick as it is wide, with a
 * haunch of a quarter of the rail that fills its end.
 *
 * @param frame  as `sizeFrameAndPanel` returns it; inches
 */
export function drawnFrameAndPanel({ design, parts, overall }: FrameAndPanel): DrawnPiece {
  const { thickness, stileWidth, railWidth, grooveDepth, tenonLength, panelThickness } = design;
  const { width, height } = overall;
  const panel = parts.find(({ name }) => name === 'panel') ?? { length: 0, width: 0 };
  const [left, right] = [stileWidth, width - stileWidth];
  const deep: Span = [0, thickness];
  const groove: Span = [(thickness - panelThickness) / 2, (thickness + panelThickness) / 2];
  const tenon: Span = [railWidth / 4, railWidth - grooveDepth];
  const root: Span = [0, railWidth - grooveDepth];
  const below = ([from, to]: Span): Span => [height - to, height - from];
  const turned = ({ x, y, z }: SolidBlock): SolidBlock => ({ x: [width - x[1], width - x[0]], y, z });
  const bothEnds = (solid: Solid): Solid[] => [solid, { part: solid.part, ...turned(solid) }];

  const stileCuts: SolidBlock[] = [
    { x: [left - grooveDepth, left], y: groove, z: [0, height] },
    { x: [left - tenonLength, left - grooveDepth], y: groove, z: tenon },
    { x: [left - tenonLength, left - grooveDepth], y: groove, z: below(tenon) },
  ];
  const rail = (part: string, at: (span: Span) => Span): Solid[] => [
    {
      part,
      x: [left, right],
      y: deep,
      z: at([0, railWidth]),
      cuts: [{ x: [left, right], y: groove, z: at([railWidth - grooveDepth, railWidth]) }],
    },
    ...bothEnds({ part, x: [left - grooveDepth, left], y: groove, z: at(root) }),
    ...bothEnds({ part, x: [left - tenonLength, left - grooveDepth], y: groove, z: at(tenon) }),
  ];
  // A tenon no longer than the groove is deep is none.
  const isWood = ({ x, z }: SolidBlock) => x[0] < x[1] && z[0] < z[1];
  const solids: Solid[] = [
    { part: 'left stile', x: [0, left], y: deep, z: [0, height], cuts: stileCuts },
    { part: 'right stile', x: [right, width], y: deep, z: [0, height], cuts: stileCuts.map(turned) },
    ...rail('bottom rail', (span) => span),
    ...rail('top rail', below),
    {
      part: 'panel',
      x: [(width - panel.width) / 2, (width + panel.width) / 2],
      y: groove,
      z: [(height - panel.length) / 2, (height + panel.length) / 2],
    },
  ];
  return {
    name: 'the frame',
    solids: solids.filter(isWood),
    sizes: [
      { view: 'front', side: 'below', from: left, to: right, what: 'opening' },
      { view: 'front', side: 'below', from: 0, to: left, what: 'stile' },
      { view: 'front', side: 'right', from: railWidth, to: height - railWidth, what: 'opening' },
      { view: 'front', side: 'right', from: 0, to: railWidth, what: 'rail' },
    ],
    apart: {
      'left stile': [-0.35, 0, 0],
      'right stile': [0.35, 0, 0],
      'top rail': [0, 0, 0.3],
      'bottom rail': [0, 0, -0.3],
    },
    assembly:
      'The rails go into one stile, the finished panel slides dry into its groove, the other stile closes the frame. Glue on the tenons only.',
  };
}
