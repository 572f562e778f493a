import { sizeBox } from '../../../kernel-helpers/src/piece/box/size-box.js';
import { typeface } from '../../../kernel-helpers/src/record/own/typeface-file.js';
import type { CurvedPath, LidPoint, Outline } from '../../../kernel-helpers/src/surface/lettering/outline.js';
import { straightened } from '../../../kernel-helpers/src/surface/lettering/outline.js';

export const rectangle = (width: number, height: number): Outline => [
  [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ],
];

/** A regular polygon in place of a circle. */
export const circle = (radius: number, corners: number, clockwise = false): LidPoint[] =>
  Array.from({ length: corners }, (_, i): LidPoint => {
    const angle = ((clockwise ? -1 : 1) * 2 * Math.PI * i) / corners;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });

/** A ring: the hole runs clockwise. */
export const annulus = (outer: number, inner: number, corners = 720): Outline => [
  circle(outer, corners),
  circle(inner, corners, true),
];

/** Paths of a letter, an inch to the capital's height. */
export function letterPaths(character: string, face: Parameters<typeof typeface>[0] = 'roman'): CurvedPath[] {
  const { capitalHeight, glyph } = typeface(face);
  const scale = ([x, y]: LidPoint): LidPoint => [x / capitalHeight, y / capitalHeight];
  return (glyph(character)?.paths ?? []).map(({ start, steps }) => ({
    start: scale(start),
    steps: steps.map(({ to, bend, secondBend }) => ({
      to: scale(to),
      bend: bend && scale(bend),
      secondBend: secondBend && scale(secondBend),
    })),
  }));
}

/** Closed lines of a letter, an inch to the capital's height. */
export const letterLines = (character: string, face?: Parameters<typeof typeface>[0]): LidPoint[][] =>
  letterPaths(character, face).map((path) => straightened(path, 0.0005));

/** The tea chest of the demonstration. */
export const chest = sizeBox({
  insideLength: '9 1/2 in',
  insideWidth: '6 1/4 in',
  insideDepth: '4 in',
  species: 'walnut-black',
  proud: '1/8 in',
});
