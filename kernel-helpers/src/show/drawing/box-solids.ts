import type { SizedBox } from '../../box/size-box.js';

/** What the drawings need of a sized box; see {@link SizedBox}. Inches. */
export type DrawnBox = Pick<SizedBox, 'overall' | 'design'>;

/** From and to, inches. */
export type Span = readonly [from: number, to: number];

/** A block of a box as it stands: x from left to right, y from front to back, z upwards. Inches from the lower front corner. */
export interface Solid {
  part: 'front' | 'back' | 'left side' | 'right side' | 'bottom' | 'lid';
  x: Span;
  y: Span;
  z: Span;
}

/**
 * The blocks of a sliding-lid box: four boards, the ends that stand proud, the bottom in its grooves, the lid with its
 * tongue. The sides run from end to end, as they do at their half pins.
 */
export function boxSolids({ overall, design }: DrawnBox): Solid[] {
  const { stockThickness: t, proud, foot, bottomThickness, bottomGrooveDepth, bottomClearance } = design;
  const { lidThickness, tongueThickness, lidGrooveDepth, lidClearance } = design;
  const { width, length, height } = overall;
  const end = proud + t;
  const low = height - lidThickness;
  const inner: Span = [end, width - end];
  const reach = bottomGrooveDepth - bottomClearance / 2;
  const tongue = lidGrooveDepth - lidClearance;
  const boards: Solid[] = [
    { part: 'left side', x: [proud, end], y: [0, length], z: [0, height] },
    { part: 'right side', x: [width - end, width - proud], y: [0, length], z: [0, height] },
    { part: 'front', x: inner, y: [proud, end], z: [0, low] },
    { part: 'back', x: inner, y: [length - end, length - proud], z: [0, height] },
  ];
  // The ends of front and back, which stand past the sides' faces.
  const ends = boards.slice(2).flatMap((board): Solid[] => [
    { ...board, x: [0, proud] },
    { ...board, x: [width - proud, width] },
  ]);
  return [
    ...boards,
    ...(proud > 0 ? ends : []),
    {
      part: 'bottom',
      x: [end - reach, width - end + reach],
      y: [end - reach, length - end + reach],
      z: [foot, foot + bottomThickness],
    },
    { part: 'lid', x: inner, y: [proud, length - end], z: [low, height] },
    {
      part: 'lid',
      x: [end - tongue, width - end + tongue],
      y: [proud, length - end + tongue],
      z: [low, low + tongueThickness],
    },
  ];
}
