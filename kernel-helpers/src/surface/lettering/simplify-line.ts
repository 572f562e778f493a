import type { InscribedCircle } from './inscribed-circles.js';

/** Leaves out points that a straight step, with the radius changing evenly, passes by within the tolerance (Douglas and Peucker). */
export function simplifyLine(line: readonly InscribedCircle[], tolerance: number): InscribedCircle[] {
  const kept = new Uint8Array(line.length);
  kept[0] = kept[line.length - 1] = 1;
  const spans: [number, number][] = [[0, line.length - 1]];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [from, to] = span;
    let [worst, at] = [tolerance, 0];
    for (let i = from + 1; i < to; i++) {
      const off = offStep(line[i] as InscribedCircle, line[from] as InscribedCircle, line[to] as InscribedCircle);
      if (off > worst) [worst, at] = [off, i];
    }
    if (at === 0) continue;
    kept[at] = 1;
    spans.push([from, at], [at, to]);
  }
  return line.filter((_, i) => kept[i] === 1);
}

function offStep(point: InscribedCircle, from: InscribedCircle, to: InscribedCircle): number {
  const [dx, dy, dr] = [to.x - from.x, to.y - from.y, to.radius - from.radius];
  const [px, py, pr] = [point.x - from.x, point.y - from.y, point.radius - from.radius];
  const squared = dx * dx + dy * dy + dr * dr;
  const part = squared === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy + pr * dr) / squared));
  return Math.hypot(px - part * dx, py - part * dy, pr - part * dr);
}
