import svgpath from 'svgpath';
import { ShopError } from '../../measure/shop-error.js';
import type { CurvedPath, LidPoint, PathStep } from './outline.js';

/**
 * The closed lines of an ornament, from the path data (`d`) of an SVG drawing. Open lines are closed.
 *
 * @param path  path data as SVG 1.1, section 8.3 writes it; y down
 * @returns curves in the drawing's unit, y turned up
 * @throws ShopError  path data that cannot be read, or that encloses nothing
 */
export function ornamentPaths(path: string): CurvedPath[] {
  const possible = 'the d="..." of a path in an SVG drawing, such as "M 0 0 L 10 0 L 5 8 Z"';
  const read = svgpath(String(path)).abs().unarc().unshort();
  const fault = (read as unknown as { err: string }).err;
  if (fault) throw new ShopError(`ornament: "${shortened(path)}" given; possible: ${possible} (${fault})`);
  const paths: { start: LidPoint; steps: PathStep[] }[] = [];
  read.iterate(([letter, ...numbers], _index, x, y) => {
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers as number[];
    if (letter === 'M') paths.push({ start: [a, -b], steps: [] });
    const steps = paths.at(-1)?.steps;
    if (letter === 'L') steps?.push({ to: [a, -b] });
    if (letter === 'H') steps?.push({ to: [a, -y] });
    if (letter === 'V') steps?.push({ to: [x, -a] });
    if (letter === 'Q') steps?.push({ to: [c, -d], bend: [a, -b] });
    if (letter === 'C') steps?.push({ to: [e, -f], bend: [a, -b], secondBend: [c, -d] });
  });
  const closed = paths.filter(({ steps }) => steps.length > 1 || steps.some(({ bend }) => bend));
  if (closed.length === 0)
    throw new ShopError(`ornament: "${shortened(path)}" encloses nothing; possible: ${possible}`);
  return closed;
}

function shortened(path: string): string {
  return path.length > 40 ? `${path.slice(0, 40)}...` : path;
}
