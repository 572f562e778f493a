import { type DrawnPiece, extent, type Solid, type Span } from '../../piece/drawn-piece.js';
import { capital } from '../kit/capital.js';
import type { DisplayItem } from '../kit/display.js';
import { figure } from '../kit/figure.js';
import { spreadApart } from '../kit/label-places.js';
import { element, fontSize, ink, label, line, svgPicture, textWidth } from '../kit/svg.js';
import { type Point, strokes } from './kit/lines.js';
import { pageWidth } from './kit/sheet.js';

const mostHeight = 620;
const margin = 14;
const leader = 24;
/** Faces to the front, to the right and upwards, told apart in grey print. */
const fills = { front: '#ececec', right: '#cfcfcf', top: '#fff' };

/**
 * A piece taken apart, seen from the front, the right and above (isometric). Parts of one name are labelled once.
 *
 * @param piece  as `drawnBox`, `drawnBookcase` and the like return it; inches
 */
export function explodedView(piece: DrawnPiece): DisplayItem {
  const size = extent(piece.solids);
  const apart = Math.max(size.x[1] - size.x[0], size.z[1] - size.z[0]);
  const moved = (piece.looseSolids ?? piece.solids).map(({ part, ...block }): Solid => {
    const [x, y, z] = piece.apart[part] ?? [0, 0, 0];
    const by = (span: Span, share: number): Span => [span[0] + share * apart, span[1] + share * apart];
    return { part: part.replace(/ \d+$/, ''), x: by(block.x, x), y: by(block.y, y), z: by(block.z, z) };
  });
  const faces = backToFront(moved).flatMap(facesOf);
  const corners = faces.flatMap(({ points }) => points);
  const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const names = [...new Set(moved.map(({ part }) => part))];
  const side = Math.max(...names.map((name) => textWidth(name))) + leader + margin;
  const scale = Math.min((pageWidth - 2 * side) / (right - left), mostHeight / (high - low));
  const height = Math.max((high - low) * scale, 3 * (fontSize + 4)) + 2 * margin;
  const offset = (pageWidth - (right - left) * scale) / 2;
  const px = ([x, y]: Point): Point => [offset + (x - left) * scale, margin + (high - y) * scale];

  const drawn = faces.map(({ points, fill }) =>
    element('polygon', { points: points.map((point) => px(point).map(toPlaces).join(',')).join(' '), fill, ...edge }),
  );
  const targetOf = new Map(names.map((name) => [name, px(inSight(name, faces))]));
  const byPlace = [...names].sort((a, b) => (targetOf.get(a)?.[0] ?? 0) - (targetOf.get(b)?.[0] ?? 0));
  const half = Math.ceil(names.length / 2);
  const labelled = [byPlace.slice(0, half), byPlace.slice(half)].flatMap((names, i) => {
    const column = [...names].sort((a, b) => (targetOf.get(a)?.[1] ?? 0) - (targetOf.get(b)?.[1] ?? 0));
    const targets = column.map((name) => targetOf.get(name) as Point);
    const places = spreadApart(
      targets.map(([, y]) => y),
      fontSize + 4,
      margin,
      height - margin,
    );
    const x = i === 0 ? side - leader : pageWidth - side + leader;
    return column.map((name, j) => {
      const [toX, toY] = targets[j] as Point;
      const y = places[j] as number;
      const text = label(name, i === 0 ? x - 4 : x + 4, y, { 'text-anchor': i === 0 ? 'end' : 'start' });
      return line(x, y, toX, toY, strokes.thin) + element('circle', { cx: toX, cy: toY, r: 2, fill: ink }) + text;
    });
  });
  return figure({
    svg: svgPicture(pageWidth, height, [...drawn, ...labelled]),
    width: pageWidth,
    alt: `${capital(piece.name)} taken apart, from the front, the right and above: ${names.join(', ')}.`,
    caption: `${capital(piece.name)}, its parts as they go together. ${piece.assembly} Joints and grooves are left out.`,
  });
}

const edge = { stroke: ink, 'stroke-width': 1, 'stroke-linejoin': 'round' };

/** Isometric: the eye stands in front, at the right, above. */
function seen(x: number, y: number, z: number): Point {
  return [(x + y) * Math.cos(Math.PI / 6), z + (y - x) * Math.sin(Math.PI / 6)];
}

interface Face {
  part: Solid['part'];
  points: Point[];
  fill: string;
}

function facesOf({ part, x, y, z }: Solid): Face[] {
  return [
    {
      part,
      points: [seen(x[0], y[0], z[0]), seen(x[1], y[0], z[0]), seen(x[1], y[0], z[1]), seen(x[0], y[0], z[1])],
      fill: fills.front,
    },
    {
      part,
      points: [seen(x[1], y[0], z[0]), seen(x[1], y[1], z[0]), seen(x[1], y[1], z[1]), seen(x[1], y[0], z[1])],
      fill: fills.right,
    },
    {
      part,
      points: [seen(x[0], y[0], z[1]), seen(x[1], y[0], z[1]), seen(x[1], y[1], z[1]), seen(x[0], y[1], z[1])],
      fill: fills.top,
    },
  ];
}

/** A place of a part that nothing is painted over: the one nearest the middle of a face. */
function inSight(part: Solid['part'], faces: readonly Face[]): Point {
  const places = faces.flatMap((face, i) => {
    if (face.part !== part) return [];
    const later = faces.slice(i + 1);
    return shares
      .flatMap((a) => shares.map((b) => ({ a, b })))
      .flatMap(({ a, b }) => {
        const place = placeOn(face, 0.5 + a, 0.5 + b);
        return later.some((other) => covers(other, place)) ? [] : [{ place, off: Math.hypot(a, b) / areaOf(face) }];
      });
  });
  const [best] = places.sort((one, other) => one.off - other.off);
  return best?.place ?? placeOn(faces.find((face) => face.part === part) as Face, 0.5, 0.5);
}

/** Shares of a face's width from its middle. */
const shares = [-0.47, -0.4, -0.3, -0.2, -0.1, 0.01, 0.1, 0.2, 0.3, 0.4, 0.47];

function placeOn({ points }: Face, a: number, b: number): Point {
  const [[x, y], [alongX, alongY], , [upX, upY]] = points as [Point, Point, Point, Point];
  return [x + a * (alongX - x) + b * (upX - x), y + a * (alongY - y) + b * (upY - y)];
}

function areaOf({ points }: Face): number {
  const [[x, y], [alongX, alongY], , [upX, upY]] = points as [Point, Point, Point, Point];
  return Math.abs((alongX - x) * (upY - y) - (upX - x) * (alongY - y));
}

/** Whether a convex face lies over a place. */
function covers({ points }: Face, [x, y]: Point): boolean {
  const turns = points.map(([fromX, fromY], i) => {
    const [toX, toY] = points[(i + 1) % points.length] as Point;
    return (toX - fromX) * (y - fromY) - (toY - fromY) * (x - fromX);
  });
  return turns.every((turn) => turn >= 0) || turns.every((turn) => turn <= 0);
}

/** Blocks in an order in which each may be painted over those before it. */
function backToFront(solids: readonly Solid[]): Solid[] {
  const waiting = [...solids];
  const ordered: Solid[] = [];
  while (waiting.length > 0) {
    const next = waiting.findIndex((solid) =>
      waiting.every((other) => other === solid || !mustComeFirst(other, solid)),
    );
    ordered.push(...waiting.splice(Math.max(0, next), 1));
  }
  return ordered;
}

/** Whether `a` lies behind `b` and may be covered by it. */
function mustComeFirst(a: Solid, b: Solid): boolean {
  const behind = (one: Solid, other: Solid) =>
    one.x[1] <= other.x[0] || one.y[0] >= other.y[1] || one.z[1] <= other.z[0];
  return behind(a, b) && !behind(b, a);
}

function toPlaces(value: number): number {
  return Math.round(value * 1000) / 1000;
}
