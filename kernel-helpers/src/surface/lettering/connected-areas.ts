import polygonClipping, { type Polygon } from 'polygon-clipping';
import { type Contour, contourArea, type LidPoint, type Outline } from './outline.js';

/**
 * The connected areas of closed lines, each with its holes: what lies inside an odd number of a figure's lines is wood taken away,
 * and figures that touch or overlap become one.
 *
 * @param figures  the closed lines of each letter or ornament
 */
export function connectedAreas(figures: readonly (readonly Contour[])[]): Outline[] {
  const polygons = figures
    .filter((figure) => figure.length > 0)
    .map((figure) => {
      const [first, ...rest] = figure.map((contour) => [contour.map(([x, y]) => [x, y])] as Polygon);
      return polygonClipping.xor(first as Polygon, ...rest);
    });
  const [first, ...rest] = polygons;
  if (!first) return [];
  return polygonClipping
    .union(first, ...rest)
    .map((polygon) => polygon.map((ring, i) => turned(ring.slice(0, -1) as LidPoint[], i === 0)));
}

/** The same contour, running counterclockwise or clockwise. */
function turned(contour: LidPoint[], counterclockwise: boolean): LidPoint[] {
  return contourArea(contour) > 0 === counterclockwise ? contour : contour.reverse();
}
