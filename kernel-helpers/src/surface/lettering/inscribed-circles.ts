import { Delaunay } from 'd3-delaunay';
import type { LidPoint, Outline } from './outline.js';
import { pointInPolygon } from './point-in-polygon.js';
import { type SampledOutline, sampled } from './sampled-outline.js';

/** A circle inside an outline that touches it in at least two places: centre and radius, in. */
export interface InscribedCircle {
  x: number;
  y: number;
  radius: number;
}

/** The largest circles inside an outline, and which of them are neighbours. */
export interface InscribedCircles {
  samples: SampledOutline;
  /** One for each triangle of the samples; nothing where it lies outside. */
  circles: readonly (InscribedCircle | undefined)[];
  /** Corners of the triangles, three each, as numbers of samples; counterclockwise. */
  corners: Uint32Array;
  /** The same edge seen from the neighbouring triangle; below zero where there is none. */
  halfedges: Int32Array;
}

/**
 * The largest circles that fit inside an outline: their centres are the middle line of every stroke (the medial axis).
 *
 * Points are set along the outline; the corners of the Voronoi diagram of these points that lie inside are the centres. A radius is
 * the distance from the centre to the pieces of outline at the points that touch. Centres stray from the true middle line, and a
 * circle reaches over the outline between two other points, by at most about spacing^2 / (8 radius).
 *
 * @param outline  one connected area, see {@link Outline}; in
 * @param spacing  most distance between the points, in
 * @see Brandt and Algazi 1992, Continuous skeleton computation by Voronoi diagram, CVGIP: Image Understanding 55(3) (from memory)
 */
export function inscribedCircles(outline: Outline, spacing: number): InscribedCircles {
  const samples = sampled(outline, spacing);
  const { places } = samples;
  // The library counts corners clockwise in y-up coordinates: with y turned down they run counterclockwise here.
  const mirrored = places.map((value, i) => (i % 2 === 1 ? -value : value));
  const { triangles, halfedges } = new Delaunay(mirrored);
  const inside = pointInPolygon(outline);
  const circles: (InscribedCircle | undefined)[] = [];
  for (let t = 0; t < triangles.length; t += 3) {
    const corners = [triangles[t], triangles[t + 1], triangles[t + 2]] as [number, number, number];
    const [x, y] = circumcentre(places, corners);
    circles.push(inside(x, y) ? { x, y, radius: clearance(samples, corners, x, y) } : undefined);
  }
  return { samples, circles, corners: triangles, halfedges };
}

/** The largest of them. */
export function largestCircle({ circles }: InscribedCircles): InscribedCircle {
  const none = { x: 0, y: 0, radius: 0 };
  return circles.reduce<InscribedCircle>(
    (most, circle) => (circle && circle.radius > most.radius ? circle : most),
    none,
  );
}

function circumcentre(places: Float64Array, [a, b, c]: readonly [number, number, number]): LidPoint {
  const [ax, ay] = [places[2 * a] as number, places[2 * a + 1] as number];
  const [bx, by] = [(places[2 * b] as number) - ax, (places[2 * b + 1] as number) - ay];
  const [cx, cy] = [(places[2 * c] as number) - ax, (places[2 * c + 1] as number) - ay];
  const twice = 2 * (bx * cy - by * cx);
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  return [ax + (cy * bb - by * cc) / twice, ay + (bx * cc - cx * bb) / twice];
}

/** Distance to the outline: to the pieces that meet at the three samples that touch. */
function clearance(samples: SampledOutline, corners: readonly number[], x: number, y: number): number {
  const { places, next, previous } = samples;
  let least = Infinity;
  for (const corner of corners)
    for (const from of [previous[corner] as number, corner]) {
      const to = next[from] as number;
      const [fromX, fromY] = [places[2 * from] as number, places[2 * from + 1] as number];
      const [alongX, alongY] = [(places[2 * to] as number) - fromX, (places[2 * to + 1] as number) - fromY];
      const part = ((x - fromX) * alongX + (y - fromY) * alongY) / (alongX * alongX + alongY * alongY);
      const held = Math.min(1, Math.max(0, part));
      least = Math.min(least, Math.hypot(fromX + held * alongX - x, fromY + held * alongY - y));
    }
  return least;
}
