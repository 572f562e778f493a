import { spreadApart } from '../../kit/label-places.js';

/** A rectangle of a picture, pixels: its middle and its size. */
export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Rectangles that are taken already. */
export class Occupied {
  readonly boxes: Box[];

  constructor(boxes: readonly Box[] = []) {
    this.boxes = [...boxes];
  }

  isFree(box: Box): boolean {
    return this.boxes.every(
      (other) =>
        Math.abs(other.x - box.x) >= (other.width + box.width) / 2 ||
        Math.abs(other.y - box.y) >= (other.height + box.height) / 2,
    );
  }

  /** Takes the first of the rectangles that is free; undefined when none is. */
  take(choices: Iterable<Box>): Box | undefined {
    for (const box of choices) {
      if (!this.isFree(box)) continue;
      this.boxes.push(box);
      return box;
    }
    return undefined;
  }
}

/** Places for a label inside an area, its middle first, then outwards; none where the area is too small. */
export function* placesInside(area: Box, label: { width: number; height: number }): Generator<Box> {
  const [spareX, spareY] = [(area.width - label.width) / 2, (area.height - label.height) / 2];
  if (spareX < 0 || spareY < 0) return;
  const steps = [0, -0.5, 0.5, -1, 1];
  for (const up of steps)
    for (const right of steps) yield { ...label, x: area.x + right * spareX, y: area.y + up * spareY };
}

/** A label that found no room by its place: it stands in a row over or under the picture, and a line leads to its place. */
export interface LeaderLabel {
  anchor: { x: number; y: number };
  width: number;
}

/**
 * Where labels with leaders stand: in the order of their places from left to right, so that no two lines cross, spread over as many rows
 * as they need.
 *
 * @param labels  in any order
 * @param rows.first  height of the middle of the first row
 * @param rows.step  from one row to the next: negative upwards
 * @param rows.left, rows.right  how far a row reaches
 * @returns one for each label, in the order given
 */
export function leaderRows(
  labels: readonly LeaderLabel[],
  rows: { first: number; step: number; left: number; right: number; height: number },
): Box[] {
  const gap = Math.max(...labels.map(({ width }) => width)) + 2;
  const room = Math.max(1, Math.floor((rows.right - rows.left) / gap));
  const count = Math.ceil(labels.length / room);
  const order = labels
    .map((_, i) => i)
    .sort((a, b) => (labels[a] as LeaderLabel).anchor.x - (labels[b] as LeaderLabel).anchor.x);
  const boxes: Box[] = [];
  for (let row = 0; row < count; row++) {
    const here = order.filter((_, place) => place % count === row);
    const xs = spreadApart(
      here.map((i) => (labels[i] as LeaderLabel).anchor.x),
      gap,
      rows.left + gap / 2,
      rows.right - gap / 2,
    );
    for (const [k, i] of here.entries())
      boxes[i] = {
        x: xs[k] as number,
        y: rows.first + row * rows.step,
        width: (labels[i] as LeaderLabel).width,
        height: rows.height,
      };
  }
  return boxes;
}
