/** A rectangle of a picture, pixels: its middle and its size. */
export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Rectangles that are taken already. */
export class Taken {
  readonly boxes: Box[] = [];

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

/** Places in rows over a height, each row from above the anchor outwards, between two limits. */
export function* placesInRows(
  anchor: { x: number },
  label: { width: number; height: number },
  rows: { from: number; left: number; right: number },
): Generator<Box> {
  const least = rows.left + label.width / 2;
  const most = rows.right - label.width / 2;
  for (let row = 0; ; row++) {
    const y = rows.from - row * (label.height + 4);
    for (let step = 0; step * 8 <= most - least; step++)
      for (const sign of step === 0 ? [0] : [-1, 1]) {
        const x = Math.min(most, Math.max(least, anchor.x)) + sign * step * 8;
        if (x >= least && x <= most) yield { ...label, x, y };
      }
  }
}
