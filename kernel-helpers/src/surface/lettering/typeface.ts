import opentype, { type Glyph } from 'opentype.js';
import type { CurvedPath, LidPoint, PathStep } from './outline.js';

/** One letter of a face. Units of the face, y up from the baseline. */
export interface TypefaceGlyph {
  paths: readonly CurvedPath[];
  /** From its own start to the start of the next. */
  advance: number;
}

/** A face of letters, as lettering needs it. */
export interface Typeface {
  /** Height of its capital H, units of the face. */
  capitalHeight: number;
  /** The glyph of a character; nothing where the face lacks it. */
  glyph(character: string): TypefaceGlyph | undefined;
  /** What is added between two characters, mostly less than zero. */
  kerning(left: string, right: string): number;
}

/**
 * Reads a face out of a font file's bytes.
 *
 * @param bytes  TrueType, OpenType or WOFF
 * @throws Error  bytes that are no font
 */
export function readTypeface(bytes: Uint8Array): Typeface {
  // A copy with a buffer of its own: a Buffer's slice() is a view into the pool that it shares with other files.
  const font = opentype.parse(new Uint8Array(bytes).buffer);
  const found = (character: string): Glyph | undefined => {
    const glyph = font.charToGlyph(character);
    return glyph.index === 0 ? undefined : glyph;
  };
  const heights = (found('H')?.path.commands ?? []).filter(({ type }) => type !== 'Z').map(({ y }) => y);
  return {
    capitalHeight: heights.length > 0 ? Math.max(...heights) : font.unitsPerEm * 0.7,
    glyph(character) {
      const glyph = found(character);
      return glyph && { paths: pathsOf(glyph), advance: glyph.advanceWidth };
    },
    kerning(left, right) {
      const [first, second] = [found(left), found(right)];
      return first && second ? font.getKerningValue(first, second) : 0;
    },
  };
}

function pathsOf(glyph: Glyph): CurvedPath[] {
  const paths: { start: LidPoint; steps: PathStep[] }[] = [];
  for (const { type, x, y, x1, y1, x2, y2 } of glyph.path.commands) {
    if (type === 'M') paths.push({ start: [x, y], steps: [] });
    const steps = paths.at(-1)?.steps;
    if (type === 'L') steps?.push({ to: [x, y] });
    if (type === 'Q') steps?.push({ to: [x, y], bend: [x1, y1] });
    if (type === 'C') steps?.push({ to: [x, y], bend: [x1, y1], secondBend: [x2, y2] });
  }
  return paths.filter(({ steps }) => steps.length > 1);
}
