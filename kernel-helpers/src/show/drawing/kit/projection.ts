import type { SolidBlock, Span, ViewName } from '../../../piece/drawn-piece.js';
import type { Point } from './lines.js';
import type { Shape } from './view.js';

/** A rectangle as it is seen, and how near its nearest face is: the greater, the nearer. */
interface Face {
  across: Span;
  up: Span;
  near: number;
}

/** Less than any saw's kerf: places nearer than this are one. */
const same = 1e-6;

/**
 * Edges of blocks as they are seen along an axis: outlines where nothing stands before them, dashed where something does.
 */
export function projected(solids: readonly SolidBlock[], direction: ViewName): Shape[] {
  const faces = solids.map((solid) => faceOf(solid, direction));
  const edges = faces.flatMap((face) => edgesOf(face).map((edge) => ({ ...edge, face })));
  const pieces = edges.flatMap(({ along, from, to, at, face }) => {
    const before = faces.filter(
      (other) =>
        other.near > face.near + same && (along === 'across' ? within(at, other.up) : within(at, other.across)),
    );
    const covered = before.map((other) => (along === 'across' ? other.across : other.up));
    return split(from, to, covered).map(({ span, hidden }) => ({ along, at, span, hidden }));
  });
  // What is drawn in full need not be dashed again behind it.
  const seen = pieces.filter(({ hidden }) => !hidden);
  const behind = pieces
    .filter(({ hidden }) => hidden)
    .flatMap((piece) => {
      const over = seen.filter(({ along, at }) => along === piece.along && Math.abs(at - piece.at) < same);
      return split(
        ...piece.span,
        over.map(({ span }) => span),
      )
        .filter(({ hidden }) => !hidden)
        .map(({ span }) => ({ ...piece, span }));
    });
  const distinct = new Map(
    [...behind, ...seen].map((piece) => [`${piece.along} ${piece.at} ${piece.span.join()} ${piece.hidden}`, piece]),
  );
  return [...distinct.values()].map(({ along, at, span, hidden }) => ({
    points: span.map((place): Point => (along === 'across' ? [place, at] : [at, place])),
    type: hidden ? 'hidden' : 'outline',
  }));
}

function faceOf({ x, y, z }: SolidBlock, direction: ViewName): Face {
  if (direction === 'plan') return { across: x, up: y, near: z[1] };
  if (direction === 'front') return { across: x, up: z, near: -y[0] };
  return { across: y, up: z, near: x[1] };
}

function edgesOf({ across, up }: Face) {
  return [
    { along: 'across', from: across[0], to: across[1], at: up[0] },
    { along: 'across', from: across[0], to: across[1], at: up[1] },
    { along: 'up', from: up[0], to: up[1], at: across[0] },
    { along: 'up', from: up[0], to: up[1], at: across[1] },
  ] as const;
}

/** Strictly inside: an edge that lies on the outline of what stands before it is seen there anyway. */
function within(at: number, [from, to]: Span): boolean {
  return at > from + same && at < to - same;
}

/** A stretch in pieces that are covered and pieces that are not. */
function split(from: number, to: number, covered: readonly Span[]): { span: [number, number]; hidden: boolean }[] {
  const cuts = [from, to, ...covered.flat().filter((place) => place > from + same && place < to - same)];
  const places = [...new Set(cuts)].sort((a, b) => a - b);
  return places.slice(1).flatMap((end, i) => {
    const start = places[i] as number;
    if (end - start < same) return [];
    const middle = (start + end) / 2;
    return [{ span: [start, end], hidden: covered.some(([low, high]) => middle > low && middle < high) }];
  });
}
