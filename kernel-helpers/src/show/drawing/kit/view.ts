import { element, fontSize, line, quietInk, textWidth } from '../../kit/svg.js';
import {
  type Dimension,
  drawDimension,
  inLanes,
  laneDepth,
  overLines,
  type PlacedDimension,
  reach,
  type Side,
} from './dimension.js';
import { breakLine, type LineType, type Point, strokes } from './lines.js';

/** A stroke or an area of a view. */
export interface Shape {
  points: readonly Point[];
  type: LineType;
  /** An area, closed, where given. */
  fill?: string;
}

/** One view of a piece: inches, x to the right and y up. */
export interface View {
  name: string;
  width: number;
  height: number;
  shapes: readonly Shape[];
  dimensions: readonly Dimension[];
  /** The lower edge is broken off: the board goes on. */
  broken?: boolean;
  /** Under the name, a line each or more. */
  notes?: readonly string[];
}

/** A view at a scale: how far it reaches from its lower left corner, pixels, and its drawing. */
export interface PlacedView {
  left: number;
  right: number;
  above: number;
  below: number;
  /** @param x, y  where its lower left corner stands */
  draw(x: number, y: number): { lines: string; texts: string };
}

const lineHeight = fontSize + 4;
const sides: readonly Side[] = ['left', 'right', 'above', 'below'];

/** Corners of a rectangle. */
export function rectangle(x: readonly [number, number], y: readonly [number, number]): Point[] {
  return [
    [x[0], y[0]],
    [x[1], y[0]],
    [x[1], y[1]],
    [x[0], y[1]],
  ];
}

/**
 * Finds the room a view takes at a scale, its dimensions, name and notes included.
 *
 * @param scale  pixels an inch
 * @param noteWidth  notes are broken to this width or the view's own, whichever is more
 */
export function placeView(view: View, scale: number, noteWidth = 0): PlacedView {
  const [width, height] = [view.width * scale, view.height * scale];
  const lanes = Object.fromEntries(
    sides.map((side) => [side, inLanes(view.dimensions.filter((each) => each.side === side).map(inPixels(scale)))]),
  ) as Record<Side, PlacedDimension[]>;
  const notes = (view.notes ?? []).flatMap((note) => wrapText(note, Math.max(noteWidth, width)));
  const half = Math.max(0, ...[view.name, ...notes].map((text) => textWidth(text) / 2));
  const across = [...lanes.above, ...lanes.below].map(reach);
  const down = [...lanes.left, ...lanes.right].map(reach);
  const overTop = Math.max(0, ...down.map(([, to]) => to - height));
  const underFoot = Math.max(0, ...down.map(([from]) => -from));
  // A size beside the view that reaches over its corner stands clear of all that reaches over it from above and below.
  const beside = overTop + underFoot > 0 ? 1 : 0;
  const clear: Record<Side, number> = {
    left: beside * Math.max(0, ...across.map(([from]) => -from)),
    right: beside * Math.max(0, ...across.map(([, to]) => to - width)),
    above: 0,
    below: 0,
  };
  const nameAt = Math.max(laneDepth(lanes.below), underFoot, 8) + lineHeight / 2;
  const edges = { left: 0, right: width, above: -height, below: 0 };
  const reachOf = (side: 'left' | 'right') =>
    Math.max(
      lanes[side].length > 0 ? clear[side] + laneDepth(lanes[side]) : 0,
      half - width / 2,
      ...across.map(([from, to]) => (side === 'left' ? -from : to - width)),
    );

  return {
    left: reachOf('left'),
    right: width + reachOf('right'),
    above: height + Math.max(laneDepth(lanes.above), overTop) + 2,
    below: nameAt + lineHeight * (notes.length + 0.5) + 2,
    draw(x, y) {
      const shapes = view.shapes.map((shape) => drawShape(shape, x, y, scale));
      const drawn = sides.flatMap((side) =>
        lanes[side].map((each) => {
          const upright = side === 'left' || side === 'right';
          const at = upright ? y : x;
          const [from, to] = upright ? [at - each.to, at - each.from] : [at + each.from, at + each.to];
          return drawDimension(side, { ...each, from, to }, edges[side] + (upright ? x : y), clear[side]);
        }),
      );
      const words = [view.name, ...notes].map((text, i) =>
        overLines(text, x + width / 2, y + nameAt + i * lineHeight, 'middle', {
          fill: quietInk,
          'font-weight': i === 0 && view.name ? 'bold' : undefined,
        }),
      );
      return {
        lines: [...shapes, view.broken ? breakLine(x, x + width, y) : '', ...drawn.map(({ lines }) => lines)].join(''),
        texts: [...drawn.map(({ text }) => text), ...words].join(''),
      };
    },
  };
}

function inPixels(scale: number) {
  return ({ from, to, text }: Dimension) => ({ from: from * scale, to: to * scale, text });
}

function drawShape({ points, type, fill }: Shape, x: number, y: number, scale: number): string {
  const places = points.map(([right, up]) => [x + right * scale, y - up * scale] as const);
  if (fill === undefined)
    return places
      .slice(1)
      .map(([toX, toY], i) => line(places[i]?.[0] ?? 0, places[i]?.[1] ?? 0, toX, toY, strokes[type]))
      .join('');
  const corners = places.map((place) => place.map((each) => Math.round(each * 1000) / 1000).join(',')).join(' ');
  return element('polygon', { points: corners, fill, ...strokes[type] });
}

/** A text in lines that are no wider than given. */
export function wrapText(text: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trim();
    if (lines.length > 0 && textWidth(longer) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
