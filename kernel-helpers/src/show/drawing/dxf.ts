import { DxfWriter, LWPolylineFlags, point3d, Units } from '@tarikjabiri/dxf';
import { type CornerLayout, cornerPieces } from '../../joints/corner.js';
import type { GrooveRun } from '../../joints/groove-runs.js';
import type { Piece } from '../../piece/piece.js';
import type { Point } from './kit/lines.js';
import { rectangle } from './kit/view.js';

/** What the parts drawing needs of a sized piece; see {@link Piece}. Inches. */
export type DrawnParts = Pick<Piece, 'parts'>;

/** Between two outlines, and height of the letters, inches. */
const gap = 1;
const letters = 0.25;

/** Layers and their colours by number: 7 black or white, 8 grey, 1 red, 5 blue. */
const layers = { OUTLINE: 7, MARKS: 8, WASTE: 1, GROOVES: 5, NAMES: 7 };
/** Layers that only lettering has: cut lines, the way of the bit's point, the edge of a flat bottom. */
export const letteringLayers = { LETTERS: 7, CENTRE: 1, FLOOR: 5 };

/**
 * A corner joint as a drawing exchange file (DXF, ASCII), full size, units inches: the face of the first board with the
 * waste between its tails or fingers, and beside it the end of the other board with its sockets.
 *
 * @param layout  dovetails or fingers; inches
 * @returns the file's text; layers OUTLINE, MARKS (the baseline), WASTE, NAMES
 */
export function jointDxf(layout: CornerLayout): string {
  const { boardWidth, gaugeSetting, stockThickness } = layout;
  const { second, sockets, board } = cornerPieces(layout);
  const height = gaugeSetting + stockThickness;
  const drawing = newDrawing();
  drawing.area('OUTLINE', rectangle([0, boardWidth], [0, height]));
  drawing.line('MARKS', [0, stockThickness], [boardWidth, stockThickness]);
  for (const { from, to, baselineFrom, baselineTo } of second)
    drawing.area('WASTE', [
      [from, height],
      [to, height],
      [baselineTo, stockThickness],
      [baselineFrom, stockThickness],
    ]);
  drawing.name(`${board.first}, outside face`, [0, height + letters]);

  const left = boardWidth + gap;
  drawing.area('OUTLINE', rectangle([left, left + boardWidth], [0, stockThickness]));
  for (const { from, to, baselineFrom, baselineTo } of sockets)
    drawing.area('WASTE', [
      [left + from, stockThickness],
      [left + to, stockThickness],
      [left + baselineTo, 0],
      [left + baselineFrom, 0],
    ]);
  drawing.name(`${board.second}, end`, [left, stockThickness + letters]);
  return drawing.text();
}

/**
 * The parts of a piece as a drawing exchange file (DXF, ASCII), full size, units inches: one outline for each kind of part,
 * length across, with the grooves of its inside face from where they start to where they stop.
 *
 * @param piece  as `sizeBox`, `sizeBookcase` and the like return it; inches
 * @param runs  as `grooveRuns` returns them; without them no grooves are drawn, since only they know where one must stop
 * @returns the file's text; layers OUTLINE, GROOVES, NAMES
 */
export function partsDxf(piece: DrawnParts, runs: readonly GrooveRun[] = []): string {
  const drawing = newDrawing();
  let foot = 0;
  for (const { name, count, length, width, thickness } of piece.parts) {
    const low = foot;
    drawing.area('OUTLINE', rectangle([0, length], [low, low + width]));
    for (const { from, to, fromBottom, width: high } of runs.filter(({ board }) => board === name))
      drawing.area('GROOVES', rectangle([from, to], [low + fromBottom, low + fromBottom + high]));
    drawing.name(`${count} x ${name}, ${thickness} in thick`, [0, low + width + letters]);
    foot += width + 2 * letters + gap;
  }
  return drawing.text();
}

/** An empty drawing, units inches, with the layers that it needs. @internal */
export function newDrawing(more: Partial<typeof letteringLayers> = {}) {
  const file = new DxfWriter();
  file.setUnits(Units.Inches);
  for (const [layerName, colour] of Object.entries({ ...layers, ...more }))
    file.addLayer(layerName, colour, 'CONTINUOUS');
  type Layer = keyof typeof layers | keyof typeof letteringLayers;
  return {
    area(layerName: Layer, points: readonly Point[]) {
      const corners = points.map(([x, y]) => ({ point: { x, y } }));
      file.addLWPolyline(corners, { layerName, flags: LWPolylineFlags.Closed });
    },
    line(layerName: Layer, from: Point, to: Point) {
      file.addLine(point3d(from[0], from[1]), point3d(to[0], to[1]), { layerName });
    },
    way(layerName: Layer, points: readonly (readonly [number, number, number])[]) {
      const vertices = points.map(([x, y, z]) => ({ point: point3d(x, y, z) }));
      file.addPolyline3D(vertices, { layerName });
    },
    name(text: string, [x, y]: Point) {
      file.addText(point3d(x, y), letters, text, { layerName: 'NAMES' });
    },
    text: () => file.stringify(),
  };
}
